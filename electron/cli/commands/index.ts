import { type CliCommand } from '../command';

/** In the order in which --help shows them. */
export const cliCommands: readonly CliCommand[] = [];
