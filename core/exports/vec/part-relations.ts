import type { Part } from '../../model/parts/part';
import type { XmlElement } from '../xml/xml';
import { partIds } from './part-shape';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';

/** Parts that belong to a housing: its lock, the seals and plugs of its cavities, as far as the project has their records. */
export function partRelations({ harness }: VecContext, part: Part): XmlElement[] {
  if (part.kind !== 'housing') return [];
  return (['secondaryLock', 'wireSeal', 'cavityPlug'] as const).flatMap((field) => {
    const other = harness.project.parts.find((p) => p.maker === part.maker && p.partNumber === part[field]);
    if (!other || other.kind === 'wire' || other.kind === 'tool') return [];
    return node('PartRelation', { id: partIds(part.id).of('relation', field) }, [
      value('RelationType', field === 'secondaryLock' ? 'Mandatory' : 'Optional'),
      refs('AccessoryPart', partIds(other.id).version),
    ]);
  });
}
