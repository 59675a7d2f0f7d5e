import { memoByIdentity } from '../../base/memo-by-identity';
import { compareNatural } from '../../base/stable-order';
import type { Harness } from '../../derive/harness';
import { roundTo } from '../../model/length-text';
import type { PartKind } from '../../model/parts/part';
import type { ObjectRef } from '../../rules/finding';
import { countConnectors } from './count-connectors';
import { countRoute } from './count-route';
import { countWires } from './count-wires';
import { PartLines, type PartLine } from './part-lines';

/** Lines come in the order in which a harness is put together, then by maker and part number. */
const KIND_ORDER: readonly PartKind[] = [
  'housing', 'header', 'contact', 'wire-seal', 'cavity-plug', 'secondary-lock', 'strain-relief', 'grommet', 'terminal', 'splice',
  'wire', 'cable', 'covering', 'clamp', 'tie', 'label', 'fuse', 'tool',
]; // prettier-ignore

/** Everything that one harness is made of, counted from the model, in the order of its documents. */
export const harnessLines = memoByIdentity((harness: Harness): readonly PartLine[] => {
  const lines = new PartLines();
  countConnectors(harness, lines);
  countWires(harness, lines);
  countRoute(harness, lines);
  return lines.list().sort(compareLines);
});

/** Pieces, or metres to the millimetre. Null when nothing of it is known: never zero. */
export function lineQuantity(line: PartLine): number | null {
  const known = line.uses.flatMap((u) => (u.amount === undefined ? [] : [u.amount]));
  if (known.length === 0) return null;
  const sum = known.reduce((a, b) => a + b, 0);
  return line.unit === 'm' ? roundTo(sum / 1000, 3) : sum;
}

/** Designators of a line in natural order, each once. */
export const lineDesignators = (line: PartLine): string => listed(line.uses.map((u) => u.designator));

/** What is to be said of a line: what is not known of it, and what its objects say. */
export function lineRemarks(line: PartLine): string[] {
  const remarks: string[] = [];
  const unknown = line.uses.filter((u) => u.amount === undefined).map((u) => u.designator);
  if (unknown.length === line.uses.length) remarks.push(`length not known: ${listed(unknown)}`);
  else if (unknown.length) remarks.push(`quantity incomplete, length not known: ${listed(unknown)}`);
  if (line.colour === '') remarks.push('colour not chosen');
  const said = new Map<string, string[]>();
  for (const u of line.uses) {
    if (!u.remark) continue;
    const where = said.get(u.remark);
    if (where) where.push(u.designator);
    else said.set(u.remark, [u.designator]);
  }
  for (const [remark, where] of said) remarks.push(`${remark}: ${listed(where)}`);
  if (line.part?.replacedBy) remarks.push(`replaced by ${line.part.replacedBy}`);
  return remarks;
}

/** The objects of a line, each once. */
export function lineObjects(line: PartLine): ObjectRef[] {
  const seen = new Map<string, ObjectRef>();
  for (const u of line.uses) seen.set(`${u.object.type} ${u.object.id} ${u.object.cavity ?? ''}`, u.object);
  return [...seen.values()];
}

const listed = (names: readonly string[]): string => [...new Set(names)].sort(compareNatural).join(', ');

function compareLines(a: PartLine, b: PartLine): number {
  return (
    KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind) ||
    Number(a.part === undefined) - Number(b.part === undefined) ||
    compareNatural(a.part?.maker ?? '', b.part?.maker ?? '') ||
    compareNatural(a.part?.partNumber ?? '', b.part?.partNumber ?? '') ||
    compareNatural(a.part?.id ?? '', b.part?.id ?? '') ||
    Number(a.supply === 'equipment') - Number(b.supply === 'equipment') ||
    compareNatural(a.colour ?? '', b.colour ?? '')
  );
}
