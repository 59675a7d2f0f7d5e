import type { ColourCode } from '@latchwork/core/model/colour';
import type { Connector, Contact } from '@latchwork/core/model/connector';
import { idFromText } from '@latchwork/core/model/ids';
import { newProject } from '@latchwork/core/model/new-project';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import type { CavityEnd, Wire } from '@latchwork/core/model/wire';
import { WIRE_COLOURS } from '../ui/wire-colours';
import type { BenchScene } from './scene';

/** The scene's cavities stand 18 px apart, a symbol's 6 mm. */
export const PX_PER_MM = 3;

const maker = 'Bench (invented)';
const series = 'BENCH';
const awg = (gauge: number) => ({ system: 'awg' as const, gauge });

/** A scene as a project like any other: two-row housings, a contact in each wired cavity, wires with typed lengths. */
export function projectOfScene(scene: BenchScene): Project {
  const id = (name: string): string => idFromText(`bench ${scene.size} ${name}`);
  const project = newProject({ id: id('project'), revisionId: id('revision'), title: `Bench ${scene.size}` });
  const parts = new Map<number, Part>();
  const cavity = new Map<string, string>();
  const connectors = scene.connectors.map((c): Connector => {
    const ways = c.cavities.length;
    if (!parts.has(ways)) parts.set(ways, housing(id(`housing ${ways}`), ways));
    for (const v of c.cavities) cavity.set(v.id, String(v.n));
    return {
      id: id(c.id),
      designator: c.label,
      part: id(`housing ${ways}`),
      position: { x: c.x / PX_PER_MM, y: c.y / PX_PER_MM },
      // Turned so that the first row lies at the left, as in the scene.
      exit: 'left',
      view: 'mating-face',
      supply: 'harness',
      cavities: [],
      accessories: [],
    };
  });
  const contacts = new Map<string, Contact>();
  const end = (e: { readonly connector: string; readonly cavity: string }): CavityEnd => {
    const contact = id(`contact ${e.cavity}`);
    contacts.set(contact, { id: contact, part: id('contact') });
    return {
      at: 'cavity',
      connector: id(e.connector),
      cavity: cavity.get(e.cavity) ?? '?',
      contact,
      stripLengthMm: 2.5,
    };
  };
  const wires = scene.wires.map((w, i): Wire => ({
    id: id(w.id),
    designator: `W${i + 1}`,
    part: id('wire'),
    colour: { base: nearestColour(w.color) },
    ends: [end(w.from), end(w.to)],
    lengthMm: 400,
  }));
  return {
    ...project,
    parts: [...parts.values(), contactPart(id('contact')), wirePart(id('wire'))],
    connectors,
    contacts: [...contacts.values()],
    wires,
  };
}

/** The id of a connector of the scene in the project made from it. */
export const benchId = (scene: BenchScene, id: string): string => idFromText(`bench ${scene.size} ${id}`);

const housing = (id: string, ways: number): Part => ({
  kind: 'housing',
  id,
  maker,
  partNumber: `BENCH-${ways}`,
  description: `Housing with ${ways} ways in 2 rows`,
  bodyForm: 'receptacle',
  contactKind: 'socket',
  mounting: 'free',
  ways,
  rows: 2,
  pitchMm: 3,
  rowPitchMm: 3,
  numbering: 'row-wise',
  cavityOneCorner: 'top-left',
  keying: 'none',
  acceptedSeries: [series],
  datumMm: 4,
});

const contactPart = (id: string): Part => ({
  kind: 'contact',
  id,
  maker,
  partNumber: 'BENCH-C',
  description: 'Socket contact',
  series,
  contactKind: 'socket',
  sizeMin: awg(24),
  sizeMax: awg(20),
  stripLengthMm: 2.5,
});

const wirePart = (id: string): Part => ({
  kind: 'wire',
  id,
  maker,
  partNumber: 'BENCH-W',
  description: 'Wire 22 AWG',
  size: awg(22),
  odMm: 1.2,
});

function nearestColour(css: string): ColourCode {
  const [r, g, b] = rgb(css);
  let best: ColourCode = 'BK';
  let least = Infinity;
  for (const [code, value] of Object.entries(WIRE_COLOURS) as [ColourCode, string][]) {
    const [x, y, z] = rgb(value);
    const d = (r - x) ** 2 + (g - y) ** 2 + (b - z) ** 2;
    if (d < least && code !== 'GNYE') [best, least] = [code, d];
  }
  return best;
}

const rgb = (css: string): [number, number, number] =>
  [1, 3, 5].map((i) => parseInt(css.slice(i, i + 2), 16)) as [number, number, number];
