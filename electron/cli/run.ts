import { Command, CommanderError } from 'commander';
import { version } from '../package.json';
import { type CliCommand } from './command';
import { cliCommands } from './commands/index';
import { CLEAN, COULD_NOT_RUN, type ExitCode, type Io } from './io';

/** Runs one command line. Ends in an exit code, never in process.exit. */
export async function run(
  argv: readonly string[],
  io: Io,
  commands: readonly CliCommand[] = cliCommands,
): Promise<ExitCode> {
  let code: ExitCode = CLEAN;
  const program = new Command('latchwork')
    .description('Checks, exports and imports wire harness projects.')
    .version(version)
    .helpCommand(false)
    .exitOverride()
    .configureOutput({ writeOut: io.out, writeErr: io.err });
  for (const command of commands) {
    const sub = program.command(command.name).description(command.summary);
    command.describe(sub);
    sub.action(async () => {
      code = await command.run(sub.processedArgs, sub.opts(), io);
    });
  }
  try {
    if (argv.length === 0) {
      io.err(program.helpInformation());
      return COULD_NOT_RUN;
    }
    await program.parseAsync([...argv], { from: 'user' });
    return code;
  } catch (error) {
    // Help and version end this way too, with a code of 0. What commander has to say it has said.
    if (error instanceof CommanderError) return error.exitCode === 0 ? CLEAN : COULD_NOT_RUN;
    io.err(`${error instanceof Error ? error.stack : String(error)}\nThis is a fault of the program.\n`);
    return COULD_NOT_RUN;
  }
}
