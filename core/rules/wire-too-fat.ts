import type { CavityUse, EndInCavity } from '../derive/harness';
import { band, bandText } from '../derive/fit-band';
import type { HousingPart } from '../model/parts/housing';
import type { Part } from '../model/parts/part';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { cavityName, cavityRef, partRef, wireRef } from './refs';
import type { Report, Rule } from './rule';
import { partFact, partNeed } from './shared/evidence';

/**
 * Speaks of wires in housings that state how thick a wire may be, and of wires with a seal. Many records state no such
 * limit, since the contact's own band is narrower; about those it says nothing.
 */
export const wireTooFat: Rule<'cavity'> = {
  meta: {
    id: 'wire-too-fat',
    revision: 1,
    severity: 'major',
    summary: 'The insulation of a wire enters the cavity, and the seal on it closes around it.',
    why: 'A wire that is too thick stops before its contact latches, or bends its neighbour; in a seal that is too tight or too wide water follows the wire.',
    source: 'common practice: largest outside diameter against the limits that housing and seal state',
    message: '{{wire}} is {{measured}} thick; {{what}} at {{cavity}} takes {{limit}}',
    unknown: 'Whether {{wire}} fits {{what}} at {{cavity}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check(cavity, report) {
    const housing = cavity.connector.part?.kind === 'housing' ? cavity.connector.part : undefined;
    for (const end of cavity.ends) {
      if (housing?.wireOdMaxMm !== undefined) checkHousing(cavity, end, housing, report);
      if (end.end.seal) checkSeal(cavity, end, report);
    }
  },
  examples: () => ({
    good: [
      { name: '1.2 mm in a cavity for 1.8 mm', project: tiny() },
      {
        name: 'exactly as thick as allowed',
        project: tiny((t) => void (t.part('housing', 'H-PIN').wireOdMaxMm = 1.2)),
      },
      { name: 'a seal of the right band', project: tiny((t) => seal(t, { odMinMm: 1, odMaxMm: 1.4 })) },
      {
        name: 'no limit stated: nothing is asked of the wire',
        project: tiny((t) => {
          for (const h of ['H-PIN', 'H-SOCKET']) delete t.part('housing', h).wireOdMaxMm;
        }),
      },
    ],
    bad: [
      {
        name: 'thicker than the cavity',
        project: tiny((t) => void (t.part('housing', 'H-PIN').wireOdMaxMm = 1.1)),
        expect: ['X2:1', 'X2:2'],
      },
      {
        name: 'nominal within, largest diameter beyond',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').odMaxMm = 1.9)),
        expect: ['X1:1', 'X1:2', 'X2:1', 'X2:2'],
      },
      {
        name: 'thinner than the seal grips',
        project: tiny((t) => seal(t, { odMinMm: 1.3, odMaxMm: 1.8 })),
        expect: ['X1:1'],
      },
    ],
    unknown: [
      {
        name: 'a wire without its diameter',
        project: tiny((t) => delete t.part('wire', 'WIRE-22').odMm),
        expect: ['X1:1', 'X1:2', 'X2:1', 'X2:2'],
      },
      {
        name: 'a seal without its band',
        project: tiny((t) => seal(t, { odMinMm: 1 })),
        expect: ['X1:1'],
      },
    ],
  }),
};

function checkHousing(cavity: CavityUse, end: EndInCavity, housing: HousingPart, report: Report): void {
  const { conductor } = end.wire;
  const high = conductor?.odMaxMm ?? conductor?.odMm;
  if (band(0, high, 0, housing.wireOdMaxMm) === 'inside') return report.pass();
  judge(cavity, end, report, {
    part: housing,
    what: housing.partNumber,
    answer: band(0, high, 0, housing.wireOdMaxMm),
    measured: `${high ?? '?'} mm`,
    limit: bandText(undefined, housing.wireOdMaxMm, 'mm'),
    evidence: partFact(housing, 'largest insulation diameter', housing.wireOdMaxMm, 'mm'),
    needs: [],
  });
}

function checkSeal(cavity: CavityUse, end: EndInCavity, report: Report): void {
  const { seal } = end.end;
  const { conductor } = end.wire;
  if (!seal) return;
  const low = conductor?.odMinMm ?? conductor?.odMm;
  const high = conductor?.odMaxMm ?? conductor?.odMm;
  judge(cavity, end, report, {
    part: seal,
    what: `the seal ${seal.partNumber}`,
    answer: band(low, high, seal.odMinMm, seal.odMaxMm),
    measured: low === high ? `${low ?? '?'} mm` : bandText(low, high, 'mm'),
    limit: bandText(seal.odMinMm, seal.odMaxMm, 'mm'),
    evidence: [
      ...partFact(seal, 'thinnest wire', seal.odMinMm, 'mm'),
      ...partFact(seal, 'thickest wire', seal.odMaxMm, 'mm'),
    ],
    needs: [
      ...(seal.odMinMm === undefined ? [partNeed(seal, 'odMinMm', 'thinnest wire')] : []),
      ...(seal.odMaxMm === undefined ? [partNeed(seal, 'odMaxMm', 'thickest wire')] : []),
    ],
  });
}

interface Case {
  /** Housing or seal. */
  readonly part: Part;
  readonly what: string;
  readonly answer: ReturnType<typeof band>;
  readonly measured: string;
  readonly limit: string;
  readonly evidence: readonly Evidence[];
  readonly needs: readonly Need[];
}

function judge(cavity: CavityUse, end: EndInCavity, report: Report, c: Case): void {
  if (c.answer === 'inside') return report.pass();
  const { wire, part, conductor } = end.wire;
  const at = [cavityRef(cavity), wireRef(end.wire), partRef(c.part)];
  const data = { wire: wire.designator, cavity: cavityName(cavity), what: c.what };
  const evidence = [
    ...(part ? partFact(part, 'smallest insulation diameter', conductor?.odMinMm, 'mm') : []),
    ...(part ? partFact(part, 'insulation diameter', conductor?.odMm, 'mm') : []),
    ...(part ? partFact(part, 'largest insulation diameter', conductor?.odMaxMm, 'mm') : []),
    ...c.evidence,
  ];
  if (c.answer === 'outside')
    return report.fail({ at, data: { ...data, measured: c.measured, limit: c.limit }, evidence });
  const ofWire: Need[] = !part
    ? [{ what: `record of ${wire.designator}`, at: wireRef(end.wire), field: 'part' }]
    : conductor?.odMm === undefined
      ? [partNeed(part, 'odMm', 'outside diameter')]
      : [];
  report.cannotVerify({ at, data, evidence, needs: [...ofWire, ...c.needs] });
}

/** Puts a seal on W1 at X1. */
function seal(t: TinyDraft, range: { readonly odMinMm?: number; readonly odMaxMm?: number }): void {
  const id = t.newId();
  const record = { maker: 'Example Works (invented)', partNumber: 'SEAL', description: 'Wire seal' };
  t.project.parts.push({ kind: 'wire-seal', id, ...record, ...range });
  const end = t.wire('W1').ends[0];
  if (end.at === 'cavity') end.seal = id;
}
