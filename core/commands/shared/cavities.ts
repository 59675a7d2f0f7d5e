import type { Draft } from 'immer';
import type { CavityEntry, Connector } from '../../model/connector';
import { isMatingHalf } from '../../model/parts/part';
import type { Project } from '../../model/project';
import { cavityLayoutOf } from '../../derive/cavity-layout';
import { objectIn } from './draft-object';

/** The entry of a cavity in the draft, made if there is none. */
export function entryOf(connector: Draft<Connector>, cavity: string): Draft<CavityEntry> {
  const found = connector.cavities.find((e) => e.cavity === cavity);
  if (found) return found;
  connector.cavities.push({ cavity });
  return connector.cavities.at(-1) as Draft<CavityEntry>;
}

/** Takes state, plug and spare contact away; the entry goes too when it then says nothing. */
export function clearState(connector: Draft<Connector>, cavity: string): void {
  const at = connector.cavities.findIndex((e) => e.cavity === cavity);
  const entry = connector.cavities[at];
  if (!entry) return;
  delete entry.state;
  delete entry.plug;
  delete entry.contact;
  dropIfBare(connector, at);
}

export function dropIfBare(connector: Draft<Connector>, at: number): void {
  const entry = connector.cavities[at];
  if (entry && Object.keys(entry).length === 1) connector.cavities.splice(at, 1);
}

/** Why a wire or a state cannot go to that place, or null. */
export function refusePlace(project: Project, connectorId: string, cavity: string): string | null {
  const connector = objectIn(project, 'connectors', connectorId);
  if (!connector) return `There is no connector with id ${connectorId}.`;
  const part = objectIn(project, 'parts', connector.part);
  if (!isMatingHalf(part)) return null;
  return cavityLayoutOf(part).byCavity.has(cavity)
    ? null
    : `${connector.designator} has no cavity ${cavity} (it has ${part.ways}).`;
}

/** Whether a wire ends there. */
export const isWired = (project: Project, connector: string, cavity: string): boolean =>
  project.wires.some((w) =>
    w.ends.some((e) => e.at === 'cavity' && e.connector === connector && e.cavity === cavity),
  );
