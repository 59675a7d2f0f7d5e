import { pullForce as pullForceCalc } from '../calc/pull-force';
import { crimpSpecFor } from '../derive/crimp-spec';
import { crimpsOf, type Crimp } from '../derive/crimps';
import type { CavityUse, EndInCavity } from '../derive/harness';
import { roundTo } from '../model/length-text';
import type { Conductor } from '../model/parts/wire';
import { tiny, type TinyDraft } from '../model/tiny';
import { wireSizeText } from '../model/wire-size';
import { cavityName, cavityRef, wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { fact, limitNeed, partFact } from './shared/evidence';

const TABLE = 'pull-force';

/**
 * Speaks of crimps whose specification states a least pull force for the size of the wire. Whether there is a specification
 * at all is for another rule. A maker may prove a lower force for an own contact: then a decision says so.
 */
export const pullForce: Rule<'cavity'> = {
  meta: {
    id: 'pull-force',
    revision: 1,
    severity: 'major',
    summary: 'A crimp specification asks for no less pull force than the table that the project goes by.',
    why: 'A crimp that passes a lower limit may hold by the insulation alone, and comes apart under the first pull or by heat.',
    source:
      'the table named in the limit set: IEC 60352-2, UL 486A-486B, SAE AS7928, NASA-STD-8739.4; they differ by a factor of up to 2.3',
    message:
      'The crimp of {{wire}} at {{cavity}} is specified with {{measured}} N, {{needed}} N is the least for {{size}}',
    unknown:
      'Whether the pull force for {{wire}} at {{cavity}} is enough cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check(cavity, report, context) {
    for (const crimp of crimpsOf(cavity))
      for (const end of crimp.ends) checkEnd(cavity, crimp, end, report, context);
  },
  examples: () => ({
    good: [
      { name: 'no crimp specification', project: tiny() },
      // IEC 60352-2, table 1, from memory: 40 N for 22 AWG.
      { name: 'exactly the least force', project: tiny((t) => specify(t, 40)) },
      { name: 'a specification of another size', project: tiny((t) => specify(t, 20, 24)) },
    ],
    bad: [
      { name: '30 N for 22 AWG', project: tiny((t) => specify(t, 30)), expect: ['X1:1', 'X1:2'] },
      {
        name: 'enough by one table, not by the one of the project',
        project: tiny((t) => {
          specify(t, 50);
          t.project.limitSet.tables = [{ id: TABLE, table: 'nasa-8739-4' }];
        }),
        expect: ['X1:1', 'X1:2'],
      },
      {
        // 0.6 x 37 000 psi x 0.355 mm2 = 54.3 N.
        name: 'no row for 23 AWG: 60 % of what the wire bears',
        project: tiny((t) => {
          specify(t, 54, 23);
          t.project.limitSet.tables = [{ id: TABLE, table: 'nasa-8739-4' }];
          t.part('wire', 'WIRE-22').size = { system: 'awg', gauge: 23 };
        }),
        expect: ['X1:1', 'X1:2'],
      },
    ],
    unknown: [
      {
        name: 'no table chosen',
        project: tiny((t) => {
          specify(t, 40);
          delete t.project.limitSet.tables;
        }),
        expect: ['X1:1', 'X1:2'],
      },
      {
        name: 'no row for the size',
        project: tiny((t) => {
          specify(t, 40, 23);
          t.project.limitSet.tables = [{ id: TABLE, table: 'contact-size-20' }];
          t.part('wire', 'WIRE-22').size = { system: 'awg', gauge: 23 };
        }),
        expect: ['X1:1', 'X1:2'],
      },
    ],
  }),
};

function checkEnd(
  cavity: CavityUse,
  crimp: Crimp,
  end: EndInCavity,
  report: Report,
  context: RuleContext,
): void {
  const { conductor, part: wirePart } = end.wire;
  if (!conductor) return;
  const spec = crimpSpecFor(crimp.part, conductor.size, wirePart?.partNumber);
  if (spec?.pullForceMinN === undefined) return;
  const table = context.table(TABLE);
  const at = [cavityRef(cavity), wireRef(end.wire)];
  const size = wireSizeText(conductor.size);
  const data = { wire: end.wire.wire.designator, cavity: cavityName(cavity) };
  const least = leastForce(table, conductor);
  if (least && spec.pullForceMinN >= least.neededN) return report.pass();
  const evidence = [
    ...partFact(crimp.part, `pull force for ${size}`, spec.pullForceMinN, 'N'),
    ...fact('source of the specification', spec.source, 'crimp specification'),
  ];
  if (!least) {
    const need = table
      ? { ...limitNeed(TABLE, context.limitSet), what: `row for ${size} in the table ${table}` }
      : limitNeed(TABLE, context.limitSet);
    return report.cannotVerify({ at, data, evidence, needs: [need] });
  }
  report.fail({
    at,
    data: { ...data, measured: spec.pullForceMinN, needed: least.neededN, size },
    evidence: [...evidence, ...fact(`least pull force for ${size}`, least.neededN, least.source, 'N')],
  });
}

interface Least {
  readonly neededN: number;
  readonly source: string;
}

/**
 * What the table asks for, to a tenth of a newton; undefined without a table, or where it has no row for the size. What
 * NASA-STD-8739.4 does not list it asks to hold 60 % of what the wire bears (13.7).
 */
function leastForce(table: string | undefined, { size, areaMm2 }: Conductor): Least | undefined {
  const ask = (by: string | undefined): Least | undefined => {
    const input = pullForceCalc.inputs.safeParse({ table: by, size, areaMm2 });
    const found = input.success ? pullForceCalc.run(input.data) : undefined;
    if (!found?.ok) return undefined;
    const { minimumN, tableTitle, verified } = found.value;
    const source = `${tableTitle}${verified === 'yes' ? '' : ' (not verified)'}`;
    return { neededN: roundTo(minimumN, 1), source };
  };
  return ask(table) ?? (table === 'nasa-8739-4' ? ask('sixty-percent') : undefined);
}

const specify = (t: TinyDraft, pullForceMinN: number, gauge = 22): void =>
  void (t.part('contact', 'C-SOCKET').crimps = [{ size: { system: 'awg', gauge }, pullForceMinN }]);
