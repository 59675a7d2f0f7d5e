import fc from 'fast-check';
import { expect, it } from 'vitest';
import { importHarness } from '@latchwork/core/import/import-harness';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { generateProject } from '../../generate/harness-generator';
import { importByCommands } from './import-by-commands';
import { workbenchCatalogue } from '../../generate/catalogue/catalogue';
import type { Part } from '@latchwork/core/model/parts/part';
import { tiny } from '@latchwork/core/model/tiny';
import { tablesOfProject } from '../../generate/tables-of-project';

const importOf = (connectors: string, fromTo: string, catalogue: readonly Part[]) => {
  const files = {
    title: 'Sample',
    fromTo: { file: 'wires.csv', text: fromTo },
    connectors: { file: 'places.csv', text: connectors },
    catalogue,
  };
  const result = importHarness(files);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return { imported: serialiseProject(result.value), drawn: () => serialiseProject(importByCommands(files)) };
};

/** Housings, headers and wires that are drawn from at random, with wires of one size that contacts take and do not take. */
function variedParts(): readonly Part[] {
  const sealed = workbenchCatalogue().parts;
  const wire = tiny().parts.find((p) => p.partNumber === 'WIRE-22') as Extract<Part, { kind: 'wire' }>;
  const other = (n: number, odMm: number): Part => ({ ...wire, partNumber: `WIRE-22-${n}`, id: `00000000-0000-4000-8000-0000000009${n}`, odMm }); // prettier-ignore
  return [...tiny().parts, other(10, 0.7), other(11, 1), ...sealed];
}

it('gives to the byte what the commands draw, for any tables', () => {
  const catalogue = variedParts();
  const numbers = new Map<string, number>();
  for (const p of catalogue) numbers.set(p.partNumber, (numbers.get(p.partNumber) ?? 0) + 1);
  const single = catalogue.filter((p) => numbers.get(p.partNumber) === 1);
  const housings = single.filter((p) => p.kind === 'housing');
  const headers = single.filter((p) => p.kind === 'header');
  const wires = single.filter((p) => p.kind === 'wire');
  const pick = fc.nat();
  const at = <T>(list: readonly T[], n: number): T => list[n % list.length]!;
  const row = fc.record({ a: pick, b: pick, cavityA: pick, cavityB: pick, wire: pick, how: fc.nat(5), signal: fc.nat(4), named: fc.boolean(), spliced: fc.boolean() }); // prettier-ignore
  fc.assert(
    fc.property(fc.array(pick, { minLength: 2, maxLength: 5 }), fc.array(row, { minLength: 1, maxLength: 10 }), (parts, rows) => {
      const placed = parts.map((n) => at(housings, n));
      const places = [
        'designator,part,mates_with,equipment',
        ...placed.map((p, i) => `X${i},${p.partNumber},Y${i},${i % 3 === 0 ? 'A1' : ''}`),
        ...parts.map((n, i) => `Y${i},${at([...headers, ...housings], n >> 3).partNumber},,${i % 2 ? `D${i}` : ''}`),
      ];
      const lines = rows.flatMap((r, i) => {
        const a = r.a % placed.length;
        const b = (a + 1 + (r.b % (placed.length - 1))) % placed.length;
        const wire = at(wires, r.wire);
        const say = [
          r.named ? `N${i}` : '',
          r.signal ? `SIG${r.signal}` : '',
          `X${a},${1 + (r.cavityA % placed[a]!.ways)}`,
          r.spliced ? 'S1,' : `X${b},${1 + (r.cavityB % placed[b]!.ways)}`,
          r.how < 2 ? wire.partNumber : '',
          r.how === 2 ? '22 AWG' : '',
          r.how === 3 ? 'RD' : '',
          r.how === 4 ? '120' : '',
          r.signal ? String(r.cavityA % 5) : '',
          rows.length > 1 ? 'G1' : '',
        ].join(',');
        // A splice joins two wires or more.
        return r.spliced ? [say, `,,S1,,X${b},1,,,,,,`] : [say];
      });
      const head = 'wire,signal,from,from_cavity,to,to_cavity,wire_part,size,colour,length_mm,current_a,group';
      const { imported, drawn } = importOf(places.join('\n'), [head, ...lines].join('\n'), catalogue);
      expect(imported).toBe(drawn());
    }),
    { numRuns: 60 },
  ); // prettier-ignore
});

it('gives the same for the tables of a large harness', () => {
  const project = generateProject({ wires: 300 });
  const { connectors, fromTo } = tablesOfProject(project);
  const { imported, drawn } = importOf(connectors, fromTo, project.parts);
  expect(imported).toBe(drawn());
  expect(imported).toContain('"W300"');
});
