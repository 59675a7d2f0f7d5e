import { describe, expect, it } from 'vitest';
import { Catalogue } from '@latchwork/core/catalogue/catalogue';
import { chooseContact, contactFit } from '@latchwork/core/derive/contact-fit';
import { geometryMapOf } from '@latchwork/core/derive/mate-map';
import { matingObstacles } from '@latchwork/core/derive/mating';
import { colourText } from '@latchwork/core/model/colour';
import type { HousingPart } from '@latchwork/core/model/parts/housing';
import {
  isMatingHalf,
  partOfKind,
  type MatingHalf,
  type Part,
  type PartKind,
} from '@latchwork/core/model/parts/part';
import { fileText } from './demo-files';

const catalogue = Catalogue.parse(JSON.parse(fileText('assets/catalogues/workbench.json')));
const { parts } = catalogue;

function ofKind<K extends PartKind>(kind: K): Extract<Part, { kind: K }>[] {
  return parts.flatMap((p) => partOfKind(p, kind) ?? []);
}
function byNumber<K extends PartKind>(kind: K, partNumber: string): Extract<Part, { kind: K }> {
  const found = ofKind(kind).find((p) => p.partNumber === partNumber);
  if (!found) throw new Error(`no ${kind} ${partNumber}`);
  return found;
}
const halves: MatingHalf[] = parts.filter(isMatingHalf);
const families = [...new Set(halves.map((h) => h.family ?? ''))];

describe('the workbench catalogue', () => {
  it('says that it is invented, and so does every maker and supplier in it', () => {
    expect(catalogue.note).toContain('invented');
    for (const p of parts) {
      expect(p.maker).toContain('(invented)');
      for (const offer of p.offers ?? []) expect(offer.supplier).toContain('(invented)');
    }
  });

  it('has no id and no part number twice', () => {
    expect(new Set(parts.map((p) => p.id)).size).toBe(parts.length);
    expect(new Set(parts.map((p) => `${p.maker} ${p.partNumber}`)).size).toBe(parts.length);
  });

  it('states its name and revision on each record, so that an embedded one tells where it is from', () => {
    for (const p of parts)
      expect(p.catalogue).toEqual({ name: catalogue.name, revision: catalogue.revision });
  });

  it('has parts of every kind', () => {
    const kinds = new Set(parts.map((p) => p.kind));
    expect([...kinds].sort()).toEqual([
      'cable', 'cavity-plug', 'clamp', 'contact', 'covering', 'fuse', 'grommet', 'header', 'housing', 'label', 'secondary-lock',
      'splice', 'strain-relief', 'terminal', 'tie', 'tool', 'wire', 'wire-seal',
    ]); // prettier-ignore
  });

  it('prices most of what it lists', () => {
    expect(parts.filter((p) => p.offers?.length).length / parts.length).toBeGreaterThan(0.9);
  });
});

describe('its connector families', () => {
  it('are three or more', () => {
    expect(families.length).toBeGreaterThanOrEqual(3);
  });

  it.each(families)('%s: free, panel and board halves, pins and sockets, two keys or more', (family) => {
    const mine = halves.filter((h) => h.family === family);
    expect(new Set(mine.map((h) => h.mounting))).toEqual(new Set(['free', 'panel', 'board']));
    expect(new Set(mine.map((h) => h.contactKind))).toEqual(new Set(['pin', 'socket']));
    expect(new Set(mine.map((h) => h.keying)).size).toBeGreaterThanOrEqual(2);
  });

  it('have headers of both orientations and terminations, with plastic and metal board locks', () => {
    const headers = ofKind('header');
    const forms = new Set(headers.map((h) => `${h.orientation} ${h.termination}`));
    expect(forms.size).toBe(4);
    const locks = new Set(headers.flatMap((h) => h.boardLocks?.map((l) => l.material) ?? []));
    expect(locks).toEqual(new Set(['plastic', 'metal']));
    for (const h of headers.filter((x) => x.processes?.includes('reflow')))
      expect(h.description, h.partNumber).toContain('high-temperature resin');
  });

  it('have one and two rows, and cavities that take a contact one way round and both', () => {
    expect(new Set(halves.map((h) => h.rows))).toEqual(new Set([1, 2]));
    const orientations = new Set(ofKind('housing').map((h) => h.contactOrientations));
    expect(orientations).toEqual(new Set([1, 2]));
  });

  it('name locks, plugs and seals that are in the catalogue', () => {
    for (const h of ofKind('housing')) {
      if (h.secondaryLock) byNumber('secondary-lock', h.secondaryLock);
      if (h.cavityPlug) byNumber('cavity-plug', h.cavityPlug);
      if (h.wireSeal) byNumber('wire-seal', h.wireSeal);
      expect([h.sealed, h.cavityPlug !== undefined, h.wireSeal !== undefined]).toEqual(
        h.sealed ? [true, true, true] : [false, false, false],
      );
    }
  });

  it('give every housing for sockets a half that it mates with, equal numbers facing each other', () => {
    const plain = ofKind('housing').filter((h) => h.contactKind === 'socket');
    for (const h of plain) {
      const mates = halves.filter((o) => matingObstacles(h, o).obstacles.length === 0);
      expect(mates.length, h.partNumber).toBeGreaterThan(0);
      expect(
        mates.some((o) => geometryMapOf(h, o).isIdentity),
        h.partNumber,
      ).toBe(true);
    }
  });

  it('keep the keys apart: a half mates with no half of another key', () => {
    for (const h of ofKind('housing'))
      for (const o of halves)
        if (o.keying !== h.keying) expect(matingObstacles(h, o).obstacles.length).toBeGreaterThan(0);
  });
});

describe('its contacts', () => {
  it('come in two size bands or more for each series, tin and gold, on a strip and loose, pin and socket', () => {
    const contacts = ofKind('contact');
    for (const series of new Set(contacts.map((c) => c.series))) {
      const mine = contacts.filter((c) => c.series === series);
      expect(new Set(mine.map((c) => `${c.areaMinMm2} ${c.areaMaxMm2}`)).size).toBeGreaterThanOrEqual(2);
      expect(new Set(mine.map((c) => `${c.contactKind} ${c.finish} ${c.form}`)).size).toBe(8);
      expect(new Set(mine.map((c) => c.sizeMin?.system))).toEqual(new Set(['awg', 'mm2']));
    }
  });

  it('have a series that some housing takes, and tools that are in the catalogue', () => {
    for (const c of ofKind('contact')) {
      expect(ofKind('housing').some((h) => h.acceptedSeries?.includes(c.series ?? ''))).toBe(true);
      for (const tool of c.tools ?? []) byNumber('tool', tool);
    }
  });

  it('fit every stranded wire of the catalogue in some housing', () => {
    const housings = ofKind('housing').filter((h) => h.ways === 3 && h.keying === 'A');
    for (const wire of ofKind('wire').filter((w) => w.stranding?.strands !== 1)) {
      const takes = housings.filter((h) => chooseContact(h, [wire], parts) !== null);
      // Thick insulation is for terminals and splices only, and is here to be refused.
      const fat = ['TW-22-160', 'TW-20-180', 'TW-18-210', 'TW-24-140'].includes(wire.partNumber);
      if (!fat) expect(takes.length, wire.partNumber).toBeGreaterThan(0);
    }
  });

  // Facts of the trade, common practice, on the parts that the demos use.
  const verdict = (housing: HousingPart, contact: string, wire: string): string =>
    contactFit(housing, byNumber('contact', contact), [byNumber('wire', wire)]).verdict;
  it.each([
    ['22 AWG of 1.2 mm in the 20 to 24 AWG socket', 'AL3-03-FS-A', 'AL3-S2024-01', 'TW-22-120', 'fits'],
    ['22 AWG of 1.6 mm is too thick for it', 'AL3-03-FS-A', 'AL3-S2024-01', 'TW-22-160', 'does-not-fit'],
    ['26 AWG is too thin for it', 'AL3-03-FS-A', 'AL3-S2024-01', 'TW-26-095', 'does-not-fit'],
    ['a pin in the housing for sockets', 'AL3-03-FS-A', 'AL3-P2024-01', 'TW-22-120', 'does-not-fit'],
    ['26 AWG in the 26 to 30 AWG socket', 'AL3-03-FS-A', 'AL3-S2630-01', 'TW-26-095', 'fits'],
    [
      'solid wire in a contact for stranded wire',
      'AL3-03-FS-A',
      'AL3-S2024-01',
      'TW-22-120-1',
      'does-not-fit',
    ],
  ] as const)('%s', (_name, housing, contact, wire, expected) => {
    expect(verdict(byNumber('housing', housing), contact, wire)).toBe(expected);
  });
});

describe('its wires', () => {
  it('come in 12 colours or more, striped ones among them', () => {
    for (const w of ofKind('wire')) {
      const colours = (w.colours ?? []).map(colourText);
      expect(new Set(colours).size).toBeGreaterThanOrEqual(12);
      expect(colours.some((c) => c.includes('/'))).toBe(true);
    }
  });

  it('keep green-yellow for 20 AWG, 0.5 mm2 and thicker', () => {
    for (const w of ofKind('wire'))
      if (w.colours?.some((c) => c.base === 'GNYE')) expect(w.areaMm2).toBeGreaterThan(0.48);
  });

  it('come in 22 AWG of 1.2 and of 1.6 mm insulation', () => {
    const diameters = ofKind('wire')
      .filter((w) => w.size.system === 'awg' && w.size.gauge === 22)
      .map((w) => w.odMm);
    expect(diameters).toEqual(expect.arrayContaining([1.2, 1.6]));
  });

  const conductors = [...ofKind('wire'), ...ofKind('cable').flatMap((c) => c.cores)];

  it('have the metal area of their strands: n times pi/4 d2', () => {
    for (const { areaMm2, stranding } of conductors) {
      if (!areaMm2 || !stranding) throw new Error('a conductor without area or stranding');
      const exact = stranding.strands * Math.PI * (stranding.strandDiameterMm / 2) ** 2;
      expect(areaMm2).toBeCloseTo(exact, 4);
    }
  });

  // ASTM B258: d = 0.127 mm * 92^((36 - n) / 39). Stranded conductors hold up to about a tenth more metal than the
  // solid wire of their gauge (seven-strand constructions; common practice).
  it('have about the area of their gauge (ASTM B258)', () => {
    for (const { areaMm2, size } of conductors) {
      if (size.system !== 'awg' || !areaMm2) continue;
      const diameterMm = 0.127 * 92 ** ((36 - size.gauge) / 39);
      const ratio = areaMm2 / ((Math.PI / 4) * diameterMm ** 2);
      expect(ratio, `${size.gauge} AWG`).toBeGreaterThan(0.98);
      expect(ratio, `${size.gauge} AWG`).toBeLessThan(1.13);
    }
  });

  // IEC 60228, Table 3 (class 5 flexible conductors, tinned, maximum at 20 degrees C): 0.5 mm2 40.1 ohm/km.
  it('have no more resistance than a tinned 0.5 mm2 conductor may (IEC 60228)', () => {
    const wire = ofKind('wire').find((w) => w.size.system === 'mm2' && w.size.areaMm2 === 0.5);
    expect(wire?.resistanceOhmPerKm).toBeLessThanOrEqual(40.1);
    expect(wire?.resistanceOhmPerKm).toBeGreaterThan(30);
  });
});
