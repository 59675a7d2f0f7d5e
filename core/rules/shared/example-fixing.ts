import { must } from '../../base/assert-never';
import type { Part } from '../../model/parts/part';
import type { TinyDraft } from '../../model/tiny';

type PartOf<K extends Part['kind']> = Extract<Part, { kind: K }>;

const record = (t: TinyDraft, partNumber: string) => ({
  id: t.newId(),
  maker: 'Example Works (invented)',
  partNumber,
  description: partNumber,
});

const station = (t: TinyDraft) => ({ segment: must(t.project.segments[0], 'segment').id, atMm: 150 });

/** A clamp or grommet in the middle of the segment of the tiny project. */
export function addFixing<K extends 'clamp' | 'grommet'>(
  t: TinyDraft,
  kind: K,
  part: Partial<PartOf<K>>,
): void {
  const bare = record(t, kind === 'clamp' ? 'CLAMP' : 'GROMMET');
  const fixing = { ...bare, kind, ...part } as PartOf<K>;
  t.project.parts.push(fixing);
  t.project.fixings.push({ id: t.newId(), part: bare.id, station: station(t) });
}

/** A label around the harness in the middle of the segment of the tiny project. */
export function addStationLabel(t: TinyDraft, part: Partial<PartOf<'label'>>): void {
  const label = { ...record(t, 'LABEL'), kind: 'label' as const, ...part };
  t.project.parts.push(label);
  t.project.labels.push({
    id: t.newId(),
    part: label.id,
    text: 'HARNESS 1',
    on: { at: 'station', station: station(t) },
  });
}

/** A strain relief at X1 of the tiny project. */
export function addStrainRelief(t: TinyDraft, part: Partial<PartOf<'strain-relief'>>): void {
  const relief = { ...record(t, 'RELIEF'), kind: 'strain-relief' as const, ...part };
  t.project.parts.push(relief);
  t.connector('X1').accessories.push({ id: t.newId(), part: relief.id, quantity: 1 });
}
