import type { TinyDraft } from '../../model/tiny';

/** A second, thinner wire in the crimp of W1 at X1:1. */
export function shareCrimp(t: TinyDraft): void {
  const [from] = t.wire('W1').ends;
  t.project.wires.push({
    id: t.newId(),
    designator: 'W3',
    part: t.part('wire', 'WIRE-26').id,
    colour: { base: 'BU' },
    signal: t.wire('W1').signal,
    ends: [{ ...from }, { at: 'free', position: { x: 60, y: 40 } }],
    lengthMm: 200,
  });
}
