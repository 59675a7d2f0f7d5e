import type { Project } from '../../model/project';
import type { Label } from '../../model/topology';
import { missing } from './draft-object';
import { noStation } from './stations';

/** Why a label cannot be there, or null. */
export function noLabelPlace(project: Project, on: Label['on']): string | null {
  if (on.at === 'wire-end') return missing(project, 'wires', [on.wire], 'wire');
  if (on.at === 'cable-end') return missing(project, 'cables', [on.cable], 'cable');
  return on.at === 'connector'
    ? missing(project, 'connectors', [on.connector], 'connector')
    : noStation(project, on.station);
}
