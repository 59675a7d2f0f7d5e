import type { Conductor } from '../../model/parts/wire';
import type { Project } from '../../model/project';
import { conductorOfWire } from './conductor';

/** A cavity of a placed connector. */
export interface Place {
  readonly connector: string;
  readonly cavity: string;
}

/** A wire end in a cavity, as the project stores it. */
export interface EndAt {
  readonly wire: string;
  readonly index: 0 | 1;
  readonly contact: string | undefined;
  readonly conductor: Conductor | undefined;
}

/** The wire ends in a cavity, in wire order. */
export function endsAt(project: Project, place: Place): readonly EndAt[] {
  return project.wires.flatMap((w) =>
    ([0, 1] as const).flatMap((index) => {
      const e = w.ends[index];
      return e.at === 'cavity' && e.connector === place.connector && e.cavity === place.cavity
        ? [{ wire: w.id, index, contact: e.contact, conductor: conductorOfWire(project, w) }]
        : [];
    }),
  );
}
