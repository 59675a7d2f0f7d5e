import { checkHarness } from '@latchwork/core/rules/check-harness';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { generateProject } from '../../../generate/harness-generator';
import { demoFromFile } from '../../demos/demo-files';
import { sampleProject } from '../../model/sample-file';

/** Projects that an exchange file is made of: whole ones, and a small one with one thing odd. */
export const CASES: readonly (readonly [name: string, make: () => Project])[] = [
  ['bench lamp', () => demoFromFile('bench-lamp')],
  ['weather station', () => demoFromFile('weather-station')],
  ['workshop faults', () => demoFromFile('workshop-faults')],
  ['the sample with every field', sampleProject],
  ['a tiny one', () => tiny()],
  ['one wire', () => generateProject({ wires: 1 })],
  ['a generated one of 25 wires', () => generateProject({ wires: 25, seed: 2 })],
  ['a generated one of 90 wires', () => generateProject({ wires: 90, seed: 7 })],
  ['an empty one', () => tiny((t) => emptied(t.project))],
  [
    'a wire without part, length and colour',
    () =>
      tiny((t) => {
        const w = t.wire('W1');
        delete w.part;
        delete w.colour;
        t.project.segments = [];
      }),
  ],
  [
    'contacts that are not chosen',
    () =>
      tiny((t) => {
        for (const end of t.wire('W1').ends) if (end.at === 'cavity') delete end.contact;
      }),
  ],
  [
    'two wires in one crimp',
    () =>
      tiny((t) => {
        const [a, b] = [t.wire('W1').ends[0], t.wire('W2').ends[0]];
        if (a.at === 'cavity' && b.at === 'cavity')
          Object.assign(b, { cavity: a.cavity, contact: a.contact });
      }),
  ],
  [
    'wires in a cavity that is not there, loose, in a lug and in a splice',
    () =>
      tiny((t) => {
        const end = t.wire('W1').ends[0];
        if (end.at === 'cavity') end.cavity = '77';
        const splice = t.newId();
        t.project.splices.push({ id: splice, designator: 'X1', position: { x: 0, y: 0 } });
        const ring = t.newId();
        t.project.parts.push({
          id: ring,
          kind: 'terminal',
          form: 'ring',
          maker: 'M',
          partNumber: 'RING',
          description: '',
          studMm: 4,
        });
        const base = { part: t.wire('W2').part, colour: { base: 'BU' as const } };
        const node = t.project.nodes[0]?.id;
        const at = { at: 'free' as const, position: { x: 0, y: 0 }, ...(node ? { node } : {}) };
        t.project.wires.push(
          { ...base, id: t.newId(), designator: 'W3', ends: [{ at: 'splice', splice }, { ...at, terminal: ring }] },
          { ...base, id: t.newId(), designator: 'W3', lengthMm: 12.5, ends: [{ at: 'splice', splice }, { ...at, text: 'to the lamp' }] },
        ); // prettier-ignore
        t.wire('W2').ends[1] = { at: 'splice', splice };
      }),
  ],
  [
    'parts of the wrong kind',
    () =>
      tiny((t) => {
        const wire = t.part('wire', 'WIRE-22').id;
        const housing = t.part('housing', 'H-PIN').id;
        t.connector('X1').part = wire;
        t.wire('W1').part = housing;
        for (const c of t.project.contacts) c.part = wire;
        const segment = t.project.segments[0]?.id ?? '';
        const station = { segment, atMm: 20 };
        t.project.coverings.push({
          id: t.newId(),
          part: wire,
          from: station,
          to: { segment, atMm: 90 },
          layer: 1,
        });
        t.project.ties.push({ id: t.newId(), part: wire, station });
        t.project.fixings.push({ id: t.newId(), part: wire, station });
        t.project.labels.push({ id: t.newId(), part: wire, text: 'L', on: { at: 'station', station } });
        t.project.cables.push({ id: t.newId(), designator: 'K1', part: wire });
        t.connector('X2').accessories.push({ id: t.newId(), part: wire, quantity: 3 });
        t.project.fuses.push({ id: t.newId(), designator: 'F1', part: wire, wire: t.wire('W2').id });
      }),
  ],
  [
    'names that stand twice',
    () =>
      tiny((t) => {
        t.connector('X2').designator = 'X1';
        t.wire('W2').designator = 'W1';
        for (const n of t.project.nodes) n.designator = 'N';
        const [part] = t.project.parts;
        if (part)
          for (const p of t.project.parts) Object.assign(p, { maker: 'M', partNumber: part.partNumber });
        t.connector('X3').designator = 'W1';
      }),
  ],
  [
    'coverings over each other, at the ends and over two segments',
    () =>
      tiny((t) => {
        const tube = t.newId();
        t.project.parts.push({ id: tube, kind: 'covering', form: 'tube', maker: 'M', partNumber: 'TUBE', description: '' });
        const [s] = t.project.segments;
        if (!s) return;
        const [far, other] = [t.newId(), t.newId()];
        t.project.nodes.push({ id: far, designator: 'N3', position: { x: 0, y: 500 } });
        t.project.segments.push({ id: other, designator: 'S2', from: far, to: s.to, via: [{ x: 5, y: 250 }], plusMm: 3 });
        const covering = (from: [string, number], to: [string, number], layer: number) =>
          t.project.coverings.push({ id: t.newId(), part: tube, from: { segment: from[0], atMm: from[1] }, to: { segment: to[0], atMm: to[1] }, layer });
        covering([s.id, 0], [s.id, 9999], 1);
        covering([s.id, 120], [s.id, 20], 2);
        covering([s.id, 100], [other, 100], 3);
        covering([s.id, 50], [s.id, 50], 1);
      }), // prettier-ignore
  ],
  ['a released revision', () => tiny((t) => released(t.project))],
];

function emptied(project: Project): void {
  for (const [key, value] of Object.entries(project))
    if (Array.isArray(value) && key !== 'revisions' && key !== 'buildQuantities') value.length = 0;
}

function released(project: Project): void {
  const [revision] = project.revisions;
  if (revision) Object.assign(revision, { status: 'released', date: '2026-05-04', baseline: 'abc' });
  Object.assign(project.titleBlock, {
    approvalPerson: 'A. Prover',
    dateOfIssue: '2026-05-05',
    responsibleDepartment: 'Harnesses',
    language: 'de',
    documentType: 'Assembly',
  });
}

export const inputOf = (project: Project): DocumentInput => {
  const harness = deriveHarness(project);
  return { harness, check: checkHarness(harness, []), date: '2026-03-01' };
};

export function fileOf(exporter: Exporter, project: Project): string {
  const text = exporter.xml?.text(inputOf(project));
  if (!text?.ok) throw new Error(text?.problem ?? `${exporter.id} makes no XML`);
  return text.value;
}
