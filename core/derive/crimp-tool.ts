import { memoByIdentity } from '../base/memo-by-identity';
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
  readonly form: ToolRecord['form'];
}

type ToolRecord = Extract<Part, { kind: 'tool' }>;

const toolsByNumber = memoByIdentity(
  (parts: readonly Part[]): ReadonlyMap<string, ToolRecord> =>
    new Map(parts.flatMap((p) => (p.kind === 'tool' ? [[p.partNumber, p] as const] : []))),
);

/** The tool that the crimp specification was proved with, else a crimp tool on the list that the contact names. */
export function crimpToolFor(
  project: Project,
  contact: ContactPart,
  conductor: Conductor | undefined,
  wirePart: string | undefined,
): CrimpTool | undefined {
  const tools = toolsByNumber(project.parts);
  const spec = conductor && crimpSpecFor(contact, conductor.size, wirePart);
  const crimps = (form: CrimpTool['form']): boolean => form === 'press' || form === 'hand';
  const partNumber = spec?.tool ?? contact.tools?.find((t) => crimps(tools.get(t)?.form));
  if (partNumber === undefined) return undefined;
  const record = tools.get(partNumber);
  return { partNumber, die: spec?.die, onList: record !== undefined, form: record?.form };
}
