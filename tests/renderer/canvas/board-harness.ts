import { tiny } from '@latchwork/core/model/tiny';
import type { Project } from '@latchwork/core/model/project';

/**
 * The tiny harness with more on its formboard: N1 at 0/0, N2 at 300/0, a branch S2 from N1 up to N3 at 0/-80, on S1 a tie at
 * 60 mm, a clamp at 150 mm, a label at 220 mm and a sleeve from 100 to 200 mm.
 */
export const boardHarness = (): Project =>
  tiny(({ project: p, newId }) => {
    const common = { maker: 'Invented', catalogue: undefined };
    const part = (kind: string, partNumber: string, more: object) => {
      const id = newId();
      p.parts.push({
        kind, id, maker: common.maker, partNumber, description: `${kind} for tests`, ...more,
      } as Project['parts'][number]); // prettier-ignore
      return id;
    };
    const [s1] = p.segments;
    const n1 = p.nodes[0]!.id;
    const n3 = newId();
    p.nodes.push({ id: n3, designator: 'N3', position: { x: 0, y: -80 } });
    p.segments.push({ id: newId(), designator: 'S2', from: n1, to: n3 });
    const at = (atMm: number) => ({ segment: s1!.id, atMm });
    p.ties.push({ id: newId(), part: part('tie', 'TIE', { bundleMaxMm: 20 }), station: at(60) });
    p.fixings.push({
      id: newId(), designator: 'FX1', part: part('clamp', 'CLAMP', { bundleMaxMm: 9 }), station: at(150),
    }); // prettier-ignore
    p.labels.push({ id: newId(), text: 'MAIN', on: { at: 'station', station: at(220) } });
    p.coverings.push({
      id: newId(), designator: 'CV1', part: part('covering', 'SLEEVE', { form: 'sleeve', wallMm: 0.4 }),
      from: at(100), to: at(200), layer: 1,
    }); // prettier-ignore
    // The drawn length: nothing is typed.
    delete s1!.lengthMm;
  });
