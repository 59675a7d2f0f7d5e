import { must } from '../../base/assert-never';
import type { Group } from '../../model/wire';
import type { TinyDraft } from '../../model/tiny';

/** Puts the wires of the tiny project into a shield, which a wire W3 in the third cavities brings to X1, X2 or both. */
export function addShield(t: TinyDraft, shieldEnds: Group['shieldEnds'], drain?: 'a' | 'b' | 'both'): void {
  const wires = [t.wire('W1').id, t.wire('W2').id];
  if (drain) {
    const shield = t.newId();
    t.project.signals.push({ id: shield, name: 'SHIELD', class: 'shield' });
    const ends = t.wire('W1').ends.map((end, i) => {
      const isThere = drain === 'both' || drain === (i === 0 ? 'a' : 'b');
      if (!isThere || end.at !== 'cavity') return { at: 'free' as const, position: { x: 0, y: 0 } };
      const contact = t.newId();
      t.project.contacts.push({ id: contact, part: t.part('contact', i === 0 ? 'C-SOCKET' : 'C-PIN').id });
      return { ...end, cavity: '3', contact };
    });
    const id = t.newId();
    const [from, to] = ends;
    t.project.wires.push({
      id,
      designator: 'W3',
      part: t.part('wire', 'WIRE-22').id,
      colour: { base: 'BU' },
      signal: shield,
      lengthMm: 300,
      ends: [must(from, 'end'), must(to, 'end')],
    });
    wires.push(id);
  }
  const group: Group = { id: t.newId(), designator: 'WG1', form: 'shielded', wires };
  t.project.groups.push(shieldEnds === undefined ? group : { ...group, shieldEnds });
}

/** Makes the wires of the tiny project the cores of a shielded cable W9 with a drain wire. */
export function addCable(t: TinyDraft, drainWire: boolean | undefined): void {
  const { size, areaMm2, stranding, odMm } = t.part('wire', 'WIRE-22');
  const part = t.newId();
  const cores = ['1', '2', 'drain'].map((name) => ({
    name,
    size,
    ...(areaMm2 === undefined ? {} : { areaMm2 }),
    ...(stranding ? { stranding } : {}),
    ...(odMm === undefined ? {} : { odMm }),
  }));
  t.project.parts.push({
    kind: 'cable',
    id: part,
    maker: 'Example Works (invented)',
    partNumber: 'CABLE',
    description: 'Cable of two cores, braid',
    odMm: 4,
    voltageMaxV: 300,
    temperatureMaxC: 105,
    cores,
    shield: 'braid',
    ...(drainWire === undefined ? {} : { drainWire }),
  });
  const cable = t.newId();
  t.project.cables.push({ id: cable, designator: 'W9', part });
  for (const [designator, name] of [
    ['W1', '1'],
    ['W2', '2'],
  ] as const) {
    const w = t.wire(designator);
    w.core = { cable, name };
    delete w.part;
  }
}
