import { type Command } from 'commander';
import { type ExitCode, type Io } from './io';

/**
 * One subcommand, in a file of its own under commands/. `describe` names its arguments and options;
 * `run` gets what commander parsed: the arguments in order, then the options.
 */
export interface CliCommand {
  readonly name: string;
  readonly summary: string;
  describe(command: Command): void;
  run(args: readonly unknown[], options: Record<string, unknown>, io: Io): Promise<ExitCode>;
}
