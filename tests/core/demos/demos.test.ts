import { describe, expect, it } from 'vitest';
import { checkAlternates, withAlternates } from '@latchwork/core/decisions/check-alternates';
import { STANDINGS, standingsOf } from '@latchwork/core/decisions/standing';
import { RULES } from '@latchwork/core/rules/index';
import { refText } from '@latchwork/core/rules/refs';
import { faultText, FAULTS } from '../../generate/demos/workshop-faults/faults';
import { workbenchParts } from '../../generate/catalogue/catalogue';
import { products } from '../../generate/products';
import { checked, demoFromFile, fileText, sentences } from './demo-files';
import { crossings, drawn, inside, meeting } from './layout';

const DEMOS = ['bench-lamp', 'weather-station', 'workshop-faults'] as const;
const CLEAN = ['bench-lamp', 'weather-station'] as const;

/** The rules that the faulty demo shows one by one. */
const FIRST_RULES = [
  'mate-interface', 'mate-body-form', 'mate-contact-kind', 'mate-keying', 'mate-number-map', 'mate-missing', 'mate-plating',
  'contact-kind', 'contact-series', 'contact-missing', 'conductor-range', 'insulation-range', 'conductor-solid',
  'double-crimp', 'strip-length', 'cavity-unknown', 'cavity-shared', 'cavity-state', 'cavity-plug', 'secondary-lock',
  'net-conflict', 'net-ends', 'length-missing', 'panel-mount', 'panel-thickness', 'solder-process', 'tail-length',
  'designator-unique', 'colour-repeat', 'part-unknown',
  // Geometry and process.
  'bundle-fit', 'bend-radius', 'first-bend', 'length-stack', 'length-tolerance', 'service-loop', 'wire-too-fat', 'pull-force',
  'pitch-mix', 'board-lock', 'tie-spacing', 'untwist',
  // Electrical.
  'contact-current', 'wire-current', 'fuse-protects-wire', 'fuse-distance', 'short-circuit', 'voltage-drop', 'voltage-rating',
  'creepage', 'return-path', 'parallel-wires', 'inrush', 'contact-temperature',
  // Mating, marking, buying.
  'mate-cycles', 'mate-force', 'mate-clearance', 'mate-finger-room', 'connector-through-hole', 'cut-out', 'pin-one',
  'crimp-spec', 'contact-form', 'tooling', 'end-label', 'key-plug', 'net-open', 'spares', 'unit-suspect', 'part-lifecycle',
  'alternate-checked', 'compliance', 'offer-missing', 'part-changed',
  // Kept apart, kept together, and plugged where it belongs.
  'wrong-plug', 'live-pins-exposed', 'mate-under-power', 'protective-earth', 'reserved-colour', 'pair-kept', 'shield-ends',
  'drain-wire', 'noise-classes', 'redundant-together', 'voltage-classes', 'wire-class',
  // What holds and marks the harness, and what it is made with.
  'fixing-fit', 'strain-relief', 'tool-ready',
]; // prettier-ignore

describe.each(products().map((p) => [p.path, p] as const))('the generated file %s', (_path, product) => {
  it('is what its generator makes', () => {
    // Not toBe: a failing comparison of half a megabyte helps nobody.
    const same = fileText(product.path) === product.text();
    expect(same, `run: npx tsx tests/generate/write.ts`).toBe(true);
  });
});

describe.each(DEMOS)('the demo %s', (name) => {
  it('says that it is invented, in the title block and in the notes', () => {
    const project = demoFromFile(name);
    expect(project.titleBlock.supplementaryTitle).toContain('invented example');
    expect(project.notes.join(' ')).toContain('Invented example');
  });

  it('uses parts of invented makers only', () => {
    for (const part of demoFromFile(name).parts) expect(part.maker).toContain('(invented)');
  });

  it('draws no symbol over another, on a grid of 5 mm, each inside its equipment', () => {
    const { symbols, areas } = drawn(demoFromFile(name));
    expect(meeting(symbols)).toEqual([]);
    for (const s of symbols) {
      expect([s.box.minX % 5, s.box.minY % 5], s.designator).toEqual([0, 0]);
      for (const [designator, area] of areas)
        if (s.equipment === designator)
          expect(inside(s.box, area), `${s.designator} in ${designator}`).toBe(true);
        else expect(meeting([s, { designator, box: area }])).toEqual([]);
    }
    expect(meeting([...areas].map(([designator, box]) => ({ designator, box })))).toEqual([]);
  });

  it('has a formboard without crossings', () => {
    expect(crossings(demoFromFile(name))).toEqual([]);
  });
});

describe.each(CLEAN)('the clean demo %s', (name) => {
  it('has no finding at all', () => {
    expect(sentences(checked(demoFromFile(name)))).toEqual([]);
  });

  it('has none either once its alternates are tried in the place of their parts', () => {
    const check = checked(demoFromFile(name));
    const alternates = checkAlternates(check, workbenchParts());
    if (name === 'weather-station') expect(alternates.checks.length).toBeGreaterThan(0);
    expect(sentences(withAlternates(check, alternates))).toEqual([]);
  });

  it('is looked at by the rules, not passed over', () => {
    const tally = checked(demoFromFile(name)).tally();
    const asked = FIRST_RULES.filter((id) => (tally.get(id)?.pass ?? 0) > 0);
    // A lamp has no sealed housing, shared crimp, panel, fuse or pair; the station has no shared crimp, parallel wire, inrush,
    // stated tolerance, or tie near a housing. Neither asks for service loops, or has a voltage that asks for creepage.
    expect(asked.length).toBeGreaterThanOrEqual(name === 'bench-lamp' ? 43 : 45);
  });

  it('gets every wire length from its route', () => {
    const { harness } = checked(demoFromFile(name));
    for (const w of harness.wires) expect(w.length.kind, w.wire.designator).toBe('routed');
  });
});

describe('the small demo', () => {
  it('is small: one board, one device, 4 connectors, 6 wires', () => {
    const p = demoFromFile('bench-lamp');
    expect(p.equipment.map((e) => e.kind)).toEqual(['board', 'device']);
    expect([p.connectors.length, p.wires.length]).toEqual([4, 6]);
  });
});

describe('the medium demo', () => {
  it('has a board, a panel, a splice, a twisted pair, 8 connectors and 40 wires or more', () => {
    const p = demoFromFile('weather-station');
    const kinds = p.equipment.map((e) => e.kind);
    expect(kinds).toEqual(expect.arrayContaining(['board', 'panel', 'device']));
    expect(p.splices.length).toBeGreaterThanOrEqual(1);
    expect(p.groups.some((g) => g.form === 'twisted' && g.wires.length === 2)).toBe(true);
    expect(p.connectors.length).toBeGreaterThanOrEqual(8);
    expect(p.wires.length).toBeGreaterThanOrEqual(40);
    expect(p.coverings.length).toBeGreaterThan(0);
    expect(p.labels.length).toBeGreaterThan(0);
  });
});

describe('the demo with faults', () => {
  it('has a decision of each standing, by people who are said to be invented', () => {
    const project = demoFromFile('workshop-faults');
    const { findings } = checked(project);
    const states = [...standingsOf(project, findings, '2026-11-25').values()].map((s) => s.state);
    for (const state of STANDINGS)
      if (state !== 'open') expect(states.filter((s) => s === state), state).toHaveLength(1); // prettier-ignore
    expect(project.decisions).toHaveLength(4);
    for (const d of project.decisions)
      for (const name of [d.requester, ...d.approvals.map((a) => a.name)])
        expect(name).toContain('(invented)');
  });

  const project = demoFromFile('workshop-faults');
  const result = checked(project);

  it('shows every rule at least once', () => {
    const seen = new Set(result.findings.map((f) => f.rule));
    expect(FIRST_RULES.filter((id) => !seen.has(id))).toEqual([]);
    expect(FIRST_RULES.filter((id) => !RULES.some((r) => r.meta.id === id))).toEqual([]);
  });

  it('names each fault in the notes of the project and of its object', () => {
    expect(FAULTS.map((f) => f.rule).sort()).toEqual([...FIRST_RULES].sort());
    const notes = [...project.connectors, ...project.wires].map((o) => o.note ?? '').join('\n');
    for (const { rule, at } of FAULTS) {
      expect(project.notes).toContain(`${at}: ${faultText(rule)}`);
      if (/^[WX]\d/.test(at)) expect(notes).toContain(faultText(rule));
    }
  });

  it('has no finding of these rules that no note announces', () => {
    const noteOf = new Map<string, string>();
    for (const o of [...project.connectors, ...project.wires]) noteOf.set(o.id, o.note ?? '');
    const silent = result.findings
      .filter((f) => FIRST_RULES.includes(f.rule))
      .filter((f) => {
        const here = f.objects.map((o) => noteOf.get(o.id) ?? '').join(' ');
        const listed = f.objects.some((o) =>
          project.notes.some((n) => n.startsWith(`${refText(project, o)}: `) && n.includes(f.rule)),
        );
        return !here.includes(f.rule) && !listed;
      });
    expect(silent.map((f) => f.key)).toEqual([]);
  });

  it('is a release stopper: some findings are major or worse', () => {
    expect(result.findings.some((f) => f.severity === 'critical' || f.severity === 'major')).toBe(true);
  });
});
