import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness } from '@latchwork/core/derive/harness';
import type { Project } from '@latchwork/core/model/project';
import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import type { AnyRule, Scope } from '@latchwork/core/rules/rule';
import fc from 'fast-check';
import { produce, type Draft } from 'immer';
import { describe, expect, it } from 'vitest';

type Edit = (p: Draft<Project>, pick: number) => void;
const one = <T>(list: readonly T[], pick: number): T | undefined => list[pick % Math.max(1, list.length)];
const uuid = (n: number): string => `00000000-0000-4000-9000-${String(n).padStart(12, '0')}`;

/** Small edits, good and bad, that together touch every collection a rule reads. */
const EDITS: Record<string, Edit> = {
  colour(p, n) {
    const w = one(p.wires, n);
    if (w) w.colour = n % 3 ? { base: n % 2 ? 'RD' : 'BU' } : undefined;
  },
  signal(p, n) {
    const w = one(p.wires, n);
    if (w) w.signal = n % 3 ? one(p.signals, n >> 2)?.id : undefined;
  },
  wirePart(p, n) {
    const w = one(p.wires, n);
    if (w) w.part = one(p.parts, n >> 2)?.id;
  },
  cavity(p, n) {
    const end = one(one(p.wires, n)?.ends ?? [], n >> 2);
    if (end?.at === 'cavity') end.cavity = String(1 + ((n >> 3) % 4));
  },
  strip(p, n) {
    const end = one(one(p.wires, n)?.ends ?? [], n >> 2);
    if (end) end.stripLengthMm = n % 3 ? 2 + (n % 4) / 2 : undefined;
  },
  contact(p, n) {
    const end = one(one(p.wires, n)?.ends ?? [], n >> 2);
    if (end?.at === 'cavity') end.contact = n % 2 ? one(p.contacts, n >> 3)?.id : undefined;
  },
  contactPart(p, n) {
    const c = one(p.contacts, n);
    const part = one(
      p.parts.filter((x) => x.kind === 'contact'),
      n >> 2,
    );
    if (c && part) c.part = part.id;
  },
  addWire(p, n) {
    const like = one(p.wires, n);
    if (like)
      p.wires.push({ ...like, id: uuid(p.wires.length * 100_000 + (n % 1000)), designator: `W${n % 5}` });
  },
  removeWire(p, n) {
    if (p.wires.length > 1) p.wires.splice(n % p.wires.length, 1);
  },
  connectorPart(p, n) {
    const c = one(p.connectors, n);
    const part = one(p.parts, n >> 2);
    if (c && part) c.part = part.id;
  },
  designator(p, n) {
    const c = one(p.connectors, n);
    if (c) c.designator = `X${1 + ((n >> 2) % 5)}`;
  },
  declare(p, n) {
    const c = one(p.connectors, n);
    if (c) c.cavities = [{ cavity: String(1 + (n % 3)), signal: one(p.signals, n >> 2)?.id }];
  },
  unmate(p, n) {
    if (n % 2) p.mates.splice(n % 3, 1);
    else if (p.connectors.length > 1)
      p.mates.push({ id: uuid(n), a: p.connectors[0]!.id, b: one(p.connectors, n >> 2)!.id });
  },
  node(p, n) {
    const c = one(p.connectors, n);
    if (c) c.node = n % 3 ? one(p.nodes, n >> 2)?.id : undefined;
  },
  segment(p, n) {
    const s = one(p.segments, n);
    if (s) s.lengthMm = 10 + n;
  },
  route(p, n) {
    const s = one(p.segments, n);
    if (!s) return;
    s.via = n % 3 ? [{ x: 150, y: n % 90 }] : undefined;
    s.bendRadiusMm = n % 5 ? undefined : 5 + (n % 20);
    s.plusMm = n % 4 ? undefined : (n % 30) / 2;
    s.minusMm = n % 8 ? undefined : (n % 30) / 2;
  },
  branch(p, n) {
    const from = one(p.nodes, n);
    if (!from) return;
    const node = uuid(700_000 + p.nodes.length);
    p.nodes.push({ id: node, designator: `N${p.nodes.length + 1}`, position: { x: n % 400, y: 80 } });
    p.segments.push({ id: uuid(800_000 + p.segments.length), designator: 'S', from: from.id, to: node });
    const c = one(p.connectors, n >> 2);
    if (c && n % 2) c.node = node;
  },
  cut(p, n) {
    if (n % 3 || p.segments.length < 2) return;
    const [gone] = p.segments.splice(n % p.segments.length, 1);
    p.coverings = p.coverings.filter((c) => c.from.segment !== gone?.id && c.to.segment !== gone?.id);
    p.ties = p.ties.filter((x) => x.station.segment !== gone?.id);
  },
  covering(p, n) {
    const [a, b] = [one(p.segments, n), one(p.segments, n >> 2)];
    const part = one(
      p.parts.filter((x) => x.kind === 'covering'),
      n >> 3,
    );
    if (!a || !b || !part) return;
    const station = (segment: string, atMm: number) => ({ segment, atMm });
    p.coverings.push({
      id: uuid(900_000 + n),
      part: part.id,
      from: station(a.id, n % 200),
      to: station(b.id, (n * 7) % 300),
      layer: 1 + (n % 3),
    });
  },
  tie(p, n) {
    const [s, part] = [one(p.segments, n), p.parts.find((x) => x.kind === 'tie')];
    if (n % 4 === 0) p.ties.splice(n % 3, 1);
    else if (s && part)
      p.ties.push({ id: uuid(600_000 + n), part: part.id, station: { segment: s.id, atMm: n % 350 } });
  },
  group(p, n) {
    if (n % 3 === 0 || p.wires.length < 2) p.groups = [];
    else {
      const wires = p.wires.slice(0, 2).map((w) => w.id);
      const exposed = n % 4 ? { exposedMm: n % 150 } : {};
      p.groups = [{ id: uuid(500_000), designator: 'WG1', form: 'twisted', wires, layMm: 20, ...exposed }];
    }
  },
  wireRecord(p, n) {
    for (const part of p.parts) if (part.kind === 'wire') part.odMm = n % 4 ? 1 + (n % 12) / 10 : undefined;
  },
  slack(p, n) {
    const [c, w] = [one(p.connectors, n), one(p.wires, n >> 2)];
    if (c) c.serviceLoopMm = n % 3 ? 1 + (n % 30) : undefined;
    if (w) w.lengthMm = n % 2 ? 200 + (n % 200) : undefined;
  },
  limitSet(p, n) {
    p.limitSet = { ...LIMIT_SETS[n % LIMIT_SETS.length]! } as typeof p.limitSet;
  },
  contactRecord(p, n) {
    for (const part of p.parts)
      if (part.kind === 'contact') part.insulationMaxMm = n % 3 ? 1 + (n % 5) / 10 : undefined;
  },
  thickness(p, n) {
    const e = one(p.equipment, n);
    if (e?.kind === 'board') e.thicknessMm = n % 3 ? 1 + (n % 4) : undefined;
  },
  current(p, n) {
    const s = one(p.signals, n);
    if (s) s.currentA = n % 3 ? (n % 70) / 10 : undefined;
  },
  source(p, n) {
    const [s, c] = [one(p.signals, n), one(p.connectors, n >> 2)];
    if (s && c) s.source = n % 3 ? { connector: c.id, cavity: String(1 + ((n >> 4) % 3)) } : undefined;
  },
  returns(p, n) {
    const s = one(p.signals, n);
    if (s) s.returnsOn = n % 3 ? one(p.signals, n >> 2)?.id : undefined;
  },
  fuse(p, n) {
    const w = one(p.wires, n);
    if (n % 3 === 0) p.fuses.splice(0, 1);
    else if (w)
      p.fuses.push({ id: uuid(900_000 + p.fuses.length), designator: 'F', wire: w.id, ratedA: 1 + (n % 5) });
  },
  high(p, n) {
    const s = one(p.signals, n);
    if (s) s.voltageV = [12, 60, 400, -325][n % 4];
  },
  build(p, n) {
    p.buildQuantities = [1, 1 + (n % 60)];
    p.titleBlock.dateOfIssue = n % 3 ? `2026-0${1 + (n % 9)}-01` : undefined;
  },
  room(p, n) {
    const c = one(p.connectors, n);
    if (!c) return;
    c.plannedCycles = n % 3 ? 1 + (n % 40) : undefined;
    c.mateRoomMm = n % 4 ? n % 60 : undefined;
    c.latchRoomMm = n % 5 ? n % 20 : undefined;
    c.footprint =
      n % 2 ? { padOneCorner: n % 3 ? 'top-left' : 'top-right', seenFrom: 'far-side' } : undefined;
  },
  block(p, n) {
    const c = one(p.connectors, n);
    if (c) c.cavities = [{ cavity: String(1 + (n % 3)), state: n % 2 ? 'blocked' : 'empty' }];
  },
  hole(p, n) {
    const s = one(p.segments, n);
    if (s) s.holeMm = n % 3 ? 1 + (n % 30) : undefined;
  },
  label(p, n) {
    const [w, c] = [one(p.wires, n), one(p.connectors, n >> 2)];
    const id = uuid(400_000 + n);
    if (n % 4 === 0) p.labels.splice(0, 1);
    else if (n % 2 && w)
      p.labels.push({ id, text: 'L', on: { at: 'wire-end', wire: w.id, end: n % 3 ? 0 : 1 } });
    else if (c) p.labels.push({ id, text: 'L', on: { at: 'connector', connector: c.id } });
  },
  freeEnd(p, n) {
    const w = one(p.wires, n);
    if (w) w.ends[n % 2 ? 1 : 0] = { at: 'free', position: { x: n, y: 0 }, ...(n % 3 ? {} : { text: 'To' }) };
  },
  bodies(p, n) {
    for (const part of p.parts)
      if (part.kind === 'housing') {
        part.body =
          n % 3 ? { widthMm: 5 + (n % 20), heightMm: 8, lengthMm: n % 2 ? 12 : undefined } : undefined;
        part.mateForceN = n % 4 ? n % 90 : undefined;
        part.cycles = n % 5 ? 1 + (n % 40) : undefined;
        part.keyPositions = n % 7 ? undefined : ['3'];
      }
  },
  buying(p, n) {
    const part = one(p.parts, n);
    if (!part) return;
    part.lifecycle = (['active', 'obsolete', undefined] as const)[n % 3];
    part.alternates = n % 4 ? undefined : [one(p.parts, n >> 2)!.partNumber];
    part.compliance = n % 5 ? undefined : [{ regime: 'RoHS', status: 'declared', expires: '2026-05-01' }];
    if (part.kind === 'contact') part.tools = n % 2 ? ['PRESS'] : undefined;
    if (part.kind === 'contact') part.form = n % 3 ? 'loose' : 'strip';
  },
  tool(p, n) {
    p.parts = p.parts.filter((x) => x.kind !== 'tool');
    if (n % 3)
      p.parts.push({
        kind: 'tool', id: uuid(300_000), maker: 'Example Works (invented)', partNumber: 'PRESS', description: 'Press',
        ...(n % 2 ? { form: 'press' as const } : {}),
      }); // prettier-ignore
  },
  limit(p, n) {
    const l = one(p.limitSet.limits, n);
    if (l) l.value = (n % 7) / 10;
  },
};

/** The tiny project with records of what lies on segments. */
const covered = (): Project =>
  tiny((t: TinyDraft) => {
    const record = (partNumber: string) => ({
      id: t.newId(),
      maker: 'Example Works (invented)',
      partNumber,
      description: partNumber,
    });
    t.project.parts.push(
      { kind: 'tie', ...record('TIE'), bundleMinMm: 1, bundleMaxMm: 3 },
      { kind: 'covering', form: 'sleeve', ...record('SLEEVE'), innerMinMm: 2, innerMaxMm: 4, wallMm: 0.4 },
      { kind: 'covering', form: 'tape', ...record('TAPE'), wallMm: 0.2, tapeOverlap: 0.5 },
    );
    t.part('contact', 'C-PIN').crimps = [{ size: { system: 'awg', gauge: 22 }, pullForceMinN: 45 }];
  });

const edits = fc.array(fc.tuple(fc.constantFrom(...Object.keys(EDITS)), fc.nat(10_000)), {
  minLength: 1,
  maxLength: 12,
});

it('finds step by step what it finds at once', () => {
  fc.assert(
    fc.property(edits, (steps) => {
      let project = covered();
      let harness: Harness = deriveHarness(project);
      let result: CheckResult = checkHarness(harness, RULES);
      for (const [name, pick] of steps) {
        project = produce(project, (draft) => EDITS[name]!(draft, pick));
        harness = deriveHarness(project, harness);
        result = checkHarness(harness, RULES, result);
        const afresh = checkHarness(deriveHarness(project), RULES);
        expect(result.findings).toEqual(afresh.findings);
        expect(result.tally()).toEqual(afresh.tally());
      }
    }),
    { numRuns: 100 },
  );
}, 60_000);

it('holds the records of the project against another catalogue, and asks no other rule for it', () => {
  const project = tiny();
  const harness = deriveHarness(project);
  const later = project.parts.map((p) => ({
    ...p,
    massG: 7,
    catalogue: { name: 'Example parts', revision: '2' },
  }));
  const before = checkHarness(harness, RULES);
  const now = checkHarness(harness, RULES, before, { catalogue: later });
  expect(before.findings).toEqual([]);
  expect(now.findings).toHaveLength(project.parts.length);
  expect([...new Set(now.findings.map((f) => f.rule))]).toEqual(['part-changed']);
  expect(now.findings).toEqual(checkHarness(harness, RULES, undefined, { catalogue: later }).findings);
  expect(checkHarness(harness, RULES, now).findings).toEqual(now.findings);
  expect(checkHarness(harness, RULES, now, { catalogue: [] }).findings).toEqual([]);
});

describe('asking again', () => {
  /** One rule per scope that counts how often it is asked, and passes. */
  function counting(): { rules: readonly AnyRule[]; asked: Record<Scope, number>; reset(): void } {
    const scopes: readonly Scope[] = [
      'project',
      'part',
      'connector',
      'cavity',
      'wire',
      'mate',
      'net',
      'segment',
    ];
    const asked = Object.fromEntries(scopes.map((s) => [s, 0])) as Record<Scope, number>;
    const meta = { ...RULES[0]!.meta };
    const rules = scopes.map((scope) => ({
      meta: { ...meta, id: scope },
      scope,
      check: (_: object, report: { pass(): void }) => {
        asked[scope]++;
        report.pass();
      },
      examples: () => ({ good: [], bad: [], unknown: [] }),
    })) as readonly AnyRule[];
    return { rules, asked, reset: () => scopes.forEach((s) => (asked[s] = 0)) };
  }

  function afterEdit(change: (p: Draft<Project>) => void): Record<Scope, number> {
    const { rules, asked, reset } = counting();
    const project = tiny();
    const before = deriveHarness(project);
    const first = checkHarness(before, rules);
    expect(asked).toEqual({
      project: 1,
      part: 9,
      connector: 4,
      cavity: 4,
      wire: 2,
      mate: 2,
      net: 2,
      segment: 1,
    });
    reset();
    const result = checkHarness(deriveHarness(produce(project, change), before), rules, first);
    expect([...result.tally().values()].map((t) => t.pass)).toEqual([1, 9, 4, 4, 2, 2, 2, 1]);
    return asked;
  }

  it('asks again only about what a wire touches: itself, its cavities and connectors, their mates, its net', () => {
    const asked = afterEdit((p) => {
      p.wires[0]!.colour = { base: 'BU' };
    });
    expect(asked).toEqual({
      project: 1,
      part: 0,
      connector: 2,
      cavity: 2,
      wire: 1,
      mate: 2,
      net: 1,
      segment: 1,
    });
  });

  it('asks about nothing but the whole when a note changes', () => {
    const asked = afterEdit((p) => {
      p.notes.push('Tinned ends only');
    });
    expect(asked).toEqual({
      project: 1,
      part: 0,
      connector: 0,
      cavity: 0,
      wire: 0,
      mate: 0,
      net: 0,
      segment: 0,
    });
  });

  it('asks about one part record and those who use it', () => {
    const asked = afterEdit((p) => {
      p.parts.find((x) => x.partNumber === 'WIRE-26')!.description = 'Wire 26 AWG, unused';
    });
    expect(asked).toEqual({
      project: 1,
      part: 1,
      connector: 0,
      cavity: 0,
      wire: 0,
      mate: 0,
      net: 0,
      segment: 0,
    });
  });

  it('asks everything anew when a limit changes', () => {
    const asked = afterEdit((p) => {
      p.limitSet.limits[0]!.value += 1;
    });
    expect(asked).toEqual({
      project: 1,
      part: 9,
      connector: 4,
      cavity: 4,
      wire: 2,
      mate: 2,
      net: 2,
      segment: 1,
    });
  });

  it('remembers an answer over an edit and its undo', () => {
    const { rules, asked, reset } = counting();
    const project = tiny();
    const one = deriveHarness(project);
    const first = checkHarness(one, rules);
    const two = deriveHarness(
      produce(project, (p) => void p.notes.push('x')),
      one,
    );
    const second = checkHarness(two, rules, first);
    reset();
    checkHarness(deriveHarness(project, two), rules, second);
    expect(asked).toEqual({
      project: 1,
      part: 0,
      connector: 0,
      cavity: 0,
      wire: 0,
      mate: 0,
      net: 0,
      segment: 0,
    });
  });
});

describe('findings', () => {
  it('keep their key when the project is saved and opened', () => {
    const project = tiny((t) => delete t.wire('W1').ends[0].stripLengthMm);
    const again = JSON.parse(JSON.stringify(project)) as Project;
    const keys = (p: Project) => checkHarness(deriveHarness(p), RULES).findings.map((f) => f.key);
    expect(keys(project).length).toBe(1);
    expect(keys(again)).toEqual(keys(project));
  });
});
