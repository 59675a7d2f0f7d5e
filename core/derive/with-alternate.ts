import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';

/**
 * The project as if the alternate had been bought: its record stands under the id of the part, so that everything that
 * names the part means it, and findings keep their keys. The same records give the same objects.
 */
export function withAlternate(project: Project, partId: string, alternate: Part): Project {
  return { ...project, parts: partsWith(project.parts, partId, alternate) };
}

const records = new WeakMap<Part, Map<string, Part>>();

/** The record of the alternate under the id of the part. */
function recordAs(alternate: Part, partId: string): Part {
  let byPart = records.get(alternate);
  if (!byPart) records.set(alternate, (byPart = new Map()));
  let record = byPart.get(partId);
  if (!record) byPart.set(partId, (record = { ...alternate, id: partId }));
  return record;
}

const lists = new WeakMap<readonly Part[], Map<Part, Part[]>>();

function partsWith(parts: readonly Part[], partId: string, alternate: Part): Part[] {
  const record = recordAs(alternate, partId);
  let byRecord = lists.get(parts);
  if (!byRecord) lists.set(parts, (byRecord = new Map()));
  let list = byRecord.get(record);
  if (!list) byRecord.set(record, (list = parts.map((p) => (p.id === partId ? record : p))));
  return list;
}
