import { type IncomingMessage } from 'node:http';
import { type Result, ok, problem } from '@latchwork/core/base/result';

/** A project at its limit, with the escapes of JSON around it. */
export const MAX_BODY_BYTES = 400 * 1024 * 1024;

export interface BodyProblem {
  readonly status: 400 | 413 | 415;
  readonly error: string;
}

/** The parsed body of a call. Counts while it reads, so that a false length cannot fill the memory. */
export async function readJsonBody(
  request: IncomingMessage,
  limitBytes: number = MAX_BODY_BYTES,
): Promise<Result<unknown, BodyProblem>> {
  if (request.headers['content-type']?.split(';')[0]?.trim() !== 'application/json')
    return problem({ status: 415, error: 'JSON only.' });
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request) {
    const bytes = chunk as Buffer;
    length += bytes.length;
    if (length > limitBytes) return problem({ status: 413, error: 'Too large.' });
    chunks.push(bytes);
  }
  try {
    return ok(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks))));
  } catch {
    return problem({ status: 400, error: 'Not JSON.' });
  }
}
