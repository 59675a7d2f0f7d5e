import type { Connector } from '../../model/connector';
import type { TinyDraft } from '../../model/tiny';
import type { Wire } from '../../model/wire';

/**
 * A second harness beside that of the tiny project, of the same parts: X6 (header on A1) = X5 –W3, W4– X7 = X8 (on A2). It
 * carries DATA and its return GND, both fed by X6. Node N3 at X5 and N4 at X7, away from the first one by `apartMm`, joined by
 * segment S2 of 300 mm.
 */
export function addTwin(t: TinyDraft, apartMm = 20): void {
  const ids = new Map(['X5', 'X6', 'X7', 'X8', 'data', 'gnd', 'n3', 'n4'].map((n) => [n, t.newId()]));
  const id = (name: string): string => ids.get(name) ?? '';
  const twin = (like: string, designator: string, more: Partial<Connector> = {}): void => {
    const c = t.connector(like);
    t.project.connectors.push({
      ...c,
      id: id(designator),
      designator,
      position: { x: c.position.x, y: 40 },
      accessories: c.accessories.map((a) => ({ ...a, id: t.newId() })),
      cavities: c.cavities.map((e) =>
        e.signal === undefined
          ? { ...e }
          : { cavity: e.cavity, signal: id(e.cavity === '1' ? 'data' : 'gnd') },
      ),
      ...more,
    });
  };
  t.project.nodes.push(
    { id: id('n3'), designator: 'N3', position: { x: 0, y: apartMm } },
    { id: id('n4'), designator: 'N4', position: { x: 300, y: apartMm } },
  );
  t.project.segments.push({ id: t.newId(), designator: 'S2', from: id('n3'), to: id('n4') });
  twin('X1', 'X5', { node: id('n3') });
  twin('X3', 'X6');
  twin('X2', 'X7', { node: id('n4') });
  twin('X4', 'X8');
  const source = (cavity: string) => ({ connector: id('X6'), cavity });
  t.project.signals.push(
    { id: id('data'), name: 'DATA', class: 'signal', voltageV: 5, currentA: 0.01, source: source('1') },
    { id: id('gnd'), name: 'GND', class: 'return', voltageV: 0, currentA: 0.01, source: source('2') },
  );
  t.project.mates.push(
    { id: t.newId(), a: id('X5'), b: id('X6') },
    { id: t.newId(), a: id('X7'), b: id('X8') },
  );
  for (const [like, designator, signal, base] of [
    ['W1', 'W3', 'data', 'BU'],
    ['W2', 'W4', 'gnd', 'BK'],
  ] as const) {
    const w = t.wire(like);
    const ends = w.ends.map((e, i) => {
      if (e.at !== 'cavity') return e;
      const contact = t.newId();
      t.project.contacts.push({ id: contact, part: t.part('contact', i === 0 ? 'C-SOCKET' : 'C-PIN').id });
      return { ...e, connector: id(i === 0 ? 'X5' : 'X7'), contact };
    }) as Wire['ends'];
    t.project.wires.push({ ...w, id: t.newId(), designator, colour: { base }, signal: id(signal), ends });
  }
}
