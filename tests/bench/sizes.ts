import type { Project } from '@latchwork/core/model/project';
import { generateProject } from '../generate/harness-generator';

/** Numbers of wires at which the program is timed. */
export const SIZES = [100, 1_000, 10_000] as const;

const made = new Map<number, Project>();

/** The generated harness of that many wires, made once. */
export function projectOf(wires: number): Project {
  let project = made.get(wires);
  if (!project) made.set(wires, (project = generateProject({ wires })));
  return project;
}
