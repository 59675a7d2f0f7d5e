import { type Result, ok, problem } from '../base/result';
import { type Channel, channels } from './channels';
import { type Handlers, contract } from './contract';

export type CallProblem =
  { code: 'unknown-channel'; channel: string } | { code: 'bad-request'; channel: Channel; issues: string[] };

/**
 * The host's end of the bridge: parses the question, asks the handler, parses the answer.
 * An answer that does not parse is our bug and throws.
 */
export async function serveCall(
  handlers: Handlers,
  channel: string,
  request: unknown,
): Promise<Result<unknown, CallProblem>> {
  if (!isChannel(channel)) return problem({ code: 'unknown-channel', channel });
  const asked = contract[channel].request.safeParse(request);
  if (!asked.success)
    return problem({
      code: 'bad-request',
      channel,
      issues: asked.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`),
    });
  const handler = handlers[channel] as (request: unknown) => Promise<unknown>;
  return ok(contract[channel].response.parse(await handler(asked.data)));
}

const isChannel = (name: string): name is Channel => (channels as readonly string[]).includes(name);
