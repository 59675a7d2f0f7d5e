import { parseArgs } from 'node:util';
import { type Result, ok, problem } from '@latchwork/core/base/result';

export interface HostArguments {
  readonly port: number;
  readonly window: boolean;
  readonly folder: string | null;
  readonly data: string | null;
  readonly demo: string | null;
  readonly file: string | null;
}

/** `[FILE] [--demo NAME] [--folder DIR] [--data DIR] [--port N] [--window]` */
export function hostArguments(argv: readonly string[]): Result<HostArguments, string> {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        port: { type: 'string', default: '0' },
        window: { type: 'boolean', default: false },
        folder: { type: 'string' },
        data: { type: 'string' },
        demo: { type: 'string' },
      },
    });
    const port = Number(values.port);
    if (!Number.isInteger(port) || port < 0 || port > 65535) return problem(`No port: ${values.port}`);
    if (positionals.length > 1) return problem('One file at most.');
    return ok({
      port,
      window: values.window,
      folder: values.folder ?? null,
      data: values.data ?? null,
      demo: values.demo ?? null,
      file: positionals[0] ?? null,
    });
  } catch (error) {
    return problem(error instanceof Error ? error.message : String(error));
  }
}
