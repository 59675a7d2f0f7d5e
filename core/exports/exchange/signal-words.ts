import { byId } from '../../base/by-id';
import type { Signal } from '../../model/electrical';
import type { Project } from '../../model/project';
import type { FieldText } from './field-text';

/** Fields of a signal that name other objects, in names instead of ids. */
export function signalWords(
  project: Project,
  fields: readonly FieldText[],
  signal: Signal,
): readonly FieldText[] {
  const names: Readonly<Record<string, string | undefined>> = {
    pairedWith: nameOf(project, signal.pairedWith),
    returnsOn: nameOf(project, signal.returnsOn),
    redundantTo: nameOf(project, signal.redundantTo),
    source: signal.source && `${connectorName(project, signal.source.connector)}:${signal.source.cavity}`,
  };
  return fields.map(([key, text]) => [key, names[key] ?? text] as const);
}

const nameOf = (project: Project, id: string | undefined): string | undefined =>
  id === undefined ? undefined : byId(project.signals).get(id)?.name;

const connectorName = (project: Project, id: string): string =>
  byId(project.connectors).get(id)?.designator ?? id;
