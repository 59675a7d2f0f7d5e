import { labelCarrier, labelPlace } from '../../derive/label-carrier';
import { compareNatural } from '../../base/stable-order';
import { lengthTolerance } from '../../calc/length-tolerance';
import { dimensionValues, nameOfDatum } from '../../derive/formboard/dimension-values';
import { testModelOf } from '../../derive/harness-test/test-model';
import type { Harness } from '../../derive/harness';
import { limitValue } from '../../derive/wire-ampacity';
import { roundTo } from '../../model/length-text';
import { segmentRef } from '../../rules/refs';
import { cutPlan } from '../cut-list/cut-plan';
import type { Characteristic } from './characteristic';

const RECORD = 'record sheets, first article';
const DEFAULT_TOLERANCE = 'IPC/WHMA-A-620 B (final draft, 2012), table 11-1';

/** Lengths, twists, labels, what lies on the bundle, and the electrical test. */
export const harnessCharacteristics = (harness: Harness): Characteristic[] => [
  ...cutLengths(harness),
  ...segments(harness),
  ...dimensions(harness),
  ...twists(harness),
  ...labels(harness),
  ...coverings(harness),
  ...electrical(harness),
];

function cutLengths(harness: Harness): Characteristic[] {
  const minus = limitValue(harness.project.limitSet, 'cut-length-minus');
  return cutPlan(harness)
    .lines.map((line): Characteristic => {
      const mm = line.jobs[0]?.wire.length.cutMm;
      const standard = mm === undefined ? undefined : lengthTolerance.run({ lengthMm: mm });
      const plus = standard?.ok ? standard.value.plusMm : undefined;
      const known = mm !== undefined && plus !== undefined && minus !== undefined;
      return {
        what: 'cut length',
        at: line.jobs.map((j) => j.wire.wire.designator).join(', '),
        requirement: known ? `${mm} mm +${plus} -${minus}` : 'not known',
        min: known ? mm - minus : undefined,
        max: known ? roundTo(mm + plus, 1) : undefined,
        unit: 'mm',
        class: 'minor',
        method: 'rule',
        perHarness: line.jobs.length,
        sampling: 'plan',
        source: `cut list; ${DEFAULT_TOLERANCE}, and limit set`,
        record: RECORD,
        missing: known ? [] : ['cut length with tolerance'],
        objects: line.jobs.map((j) => ({ type: 'wire', id: j.wire.wire.id })),
      };
    })
    .sort((a, b) => compareNatural(a.at, b.at));
}

function segments({ segments: uses }: Harness): Characteristic[] {
  return [...uses]
    .filter((u) => u.wires.length > 0)
    .sort((a, b) => compareNatural(a.segment.designator, b.segment.designator))
    .map((use): Characteristic => {
      const { segment, lengthMm } = use;
      const typed = segment.plusMm !== undefined && segment.minusMm !== undefined;
      const standard = typed || lengthMm <= 0 ? undefined : lengthTolerance.run({ lengthMm });
      const plus = typed ? segment.plusMm : standard?.ok ? standard.value.plusMm : undefined;
      const minus = typed ? segment.minusMm : standard?.ok ? standard.value.minusMm : undefined;
      const nominal = roundTo(lengthMm, 1);
      return {
        what: 'length between nodes',
        at: `${segment.designator} (${use.fromNode?.designator ?? '?'} to ${use.toNode?.designator ?? '?'})`,
        requirement: `${nominal} mm +${plus ?? '?'} -${minus ?? '?'}`,
        min: minus === undefined ? undefined : roundTo(lengthMm - minus, 1),
        max: plus === undefined ? undefined : roundTo(lengthMm + plus, 1),
        unit: 'mm',
        class: 'minor',
        method: 'on the formboard, between the reference marks',
        perHarness: 1,
        sampling: 'plan',
        source: typed ? 'tolerance of the segment' : DEFAULT_TOLERANCE,
        record: RECORD,
        missing: plus === undefined ? ['tolerance of the segment'] : [],
        objects: [segmentRef(use)],
      };
    });
}

/** Lengths that the formboard states from datum to datum. */
function dimensions(harness: Harness): Characteristic[] {
  const { project } = harness;
  return project.dimensions.flatMap((d) =>
    dimensionValues(harness, d).map(({ from, to, valueMm, needs }): Characteristic => {
      const typed = d.plusMm !== undefined || d.minusMm !== undefined;
      const standard = typed || !valueMm ? undefined : lengthTolerance.run({ lengthMm: valueMm });
      const plus = typed ? d.plusMm : standard?.ok ? standard.value.plusMm : undefined;
      const minus = typed ? d.minusMm : standard?.ok ? standard.value.minusMm : undefined;
      const known = valueMm !== undefined && plus !== undefined && minus !== undefined;
      return {
        what: 'dimension of the formboard',
        at: `${nameOfDatum(project, from)} to ${nameOfDatum(project, to)}`,
        requirement:
          valueMm === undefined
            ? 'cannot be measured'
            : `${roundTo(valueMm, 1)} mm +${plus ?? '?'} -${minus ?? '?'}`,
        min: known ? roundTo(valueMm - minus, 1) : undefined,
        max: known ? roundTo(valueMm + plus, 1) : undefined,
        unit: 'mm',
        class: 'major',
        method: 'on the formboard, between the datums',
        perHarness: 1,
        sampling: 'plan',
        source: typed ? 'tolerance of the dimension' : DEFAULT_TOLERANCE,
        record: RECORD,
        missing: [...needs, ...(valueMm !== undefined && !known ? ['tolerance of the dimension'] : [])],
        objects: [{ type: 'dimension', id: d.id }],
      };
    }),
  );
}

const twists = ({ project, wireById }: Harness): Characteristic[] =>
  project.groups
    .filter((g) => g.form !== 'bundled')
    .map((g) => ({
      what: g.form.includes('twisted') ? 'twist' : 'shield',
      at: `${g.designator}: ${g.wires.map((w) => wireById.get(w)?.wire.designator ?? '?').join(', ')}`,
      requirement: [
        ...(g.form.includes('twisted') ? [`lay ${g.layMm ?? 'not stated'} mm`] : []),
        ...(g.form.includes('shielded') ? [`shield ended at ${g.shieldEnds ?? 'an end not stated'}`] : []),
        `open ends at most ${g.exposedMm ?? 'not stated'} mm`,
      ].join(', '),
      max: g.exposedMm,
      unit: 'mm',
      class: 'major',
      method: 'rule: ten turns, and the open ends',
      perHarness: 1,
      sampling: 'plan',
      source: 'project; no tolerance of the lay is stated',
      record: RECORD,
      missing: [
        ...(g.form.includes('twisted') && g.layMm === undefined ? ['lay'] : []),
        ...(g.exposedMm === undefined ? ['length of the open ends'] : []),
      ],
      objects: [{ type: 'group', id: g.id }],
    }));

function labels({ project, parts }: Harness): Characteristic[] {
  return project.labels.map((l): Characteristic => {
    const distance = l.datumDistanceMm === undefined ? '' : `, ${l.datumDistanceMm} mm from the datum`;
    return {
      what: 'label',
      at: labelPlace(project, l.on),
      requirement: `"${l.text}"${distance}, readable`,
      class: 'major',
      method: 'by eye, or with a reader',
      perHarness: 1,
      sampling: 'every',
      source: 'labels of the project',
      record: RECORD,
      missing: parts.get(l.part ?? '') ? [] : ['label part'],
      objects: [labelCarrier(l.on)],
    };
  });
}

function coverings({ project }: Harness): Characteristic[] {
  const count = project.coverings.length + project.ties.length + project.fixings.length;
  if (count === 0) return [];
  return [
    {
      what: 'coverings, ties, clamps',
      at: 'formboard',
      requirement: `${project.coverings.length} coverings, ${project.ties.length} ties, ${project.fixings.length} clamps and grommets as on the formboard; no cut insulation, no sharp stubs`,
      class: 'minor',
      method: 'by eye on the formboard',
      perHarness: count,
      sampling: 'plan',
      source: 'formboard',
      record: RECORD,
      missing: [],
      objects: [
        ...project.coverings.map((c) => ({ type: 'covering' as const, id: c.id })),
        ...project.ties.map((t) => ({ type: 'segment' as const, id: t.station.segment })),
      ],
    },
  ];
}

function electrical(harness: Harness): Characteristic[] {
  const { nets } = testModelOf(harness);
  const blind = nets.filter((n) => n.points.length < 2).length;
  const common = {
    at: 'harness',
    class: 'critical' as const,
    method: 'tester, by the test table of this baseline',
    perHarness: 1,
    sampling: 'every' as const,
    record: 'result of the tester',
    objects: [{ type: 'project' as const, id: harness.project.id }],
  };
  return [
    {
      ...common,
      what: 'continuity',
      requirement: `${nets.length} nets, limits of the test table`,
      source: 'IPC/WHMA-A-620 B, table 19-1: always',
      missing: blind > 0 ? [`${blind} nets with fewer than two points`] : [],
    },
    {
      ...common,
      what: 'isolation',
      requirement: 'each net against all other points and positions',
      source: 'IPC/WHMA-A-620 B, table 19-1: unless withstand or insulation resistance is tested',
      missing: [],
    },
    {
      ...common,
      what: 'insulation resistance and withstand',
      requirement: 'where agreed; never above the ratings in the test table',
      source: 'IPC/WHMA-A-620 B, table 19-1: class 3 and some of class 2',
      missing: ['agreed values'],
    },
  ];
}
