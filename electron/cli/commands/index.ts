import { type CliCommand } from '../command';
import { calc } from './calc';
import { check } from './check';
import { compare } from './compare';
import { exportCommand } from './export';
import { importCommand } from './import';
import { info } from './info';
import { release } from './release';
import { rescue } from './rescue';
import { rules } from './rules';
import { whereUsed } from './where-used';

/** In the order in which --help shows them. */
export const cliCommands: readonly CliCommand[] = [
  check,
  exportCommand,
  importCommand,
  rules,
  info,
  whereUsed,
  release,
  compare,
  rescue,
  calc,
];
