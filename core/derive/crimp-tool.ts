import { byId } from '../base/by-id';
import type { ContactPart } from '../model/parts/contact';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import type { Conductor } from '../model/parts/wire';
import { crimpSpecFor } from './crimp-spec';

export interface CrimpTool {
  readonly partNumber: string;
  readonly die: string | undefined;
  /** Whether its record is in the project, that is, on the tool list. */
  readonly onList: boolean;
  readonly form: Extract<Part, { kind: 'tool' }>['form'];
}

/** The tool that the crimp specification was proved with, else a crimp tool on the list that the contact names. */
export function crimpToolFor(
  project: Project,
  contact: ContactPart,
  conductor: Conductor | undefined,
  wirePart: string | undefined,
): CrimpTool | undefined {
  const tools = new Map(
    [...byId(project.parts).values()].flatMap((p) => (p.kind === 'tool' ? [[p.partNumber, p] as const] : [])),
  );
  const spec = conductor && crimpSpecFor(contact, conductor.size, wirePart);
  const crimps = (form: CrimpTool['form']): boolean => form === 'press' || form === 'hand';
  const partNumber = spec?.tool ?? contact.tools?.find((t) => crimps(tools.get(t)?.form));
  if (partNumber === undefined) return undefined;
  const record = tools.get(partNumber);
  return { partNumber, die: spec?.die, onList: record !== undefined, form: record?.form };
}
