import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { BEND_RULES, WORST_MEMBER, type BendRule, type BendRuleId } from './data/bend-radius';

export interface BendRadius extends Answer {
  /** To the inside of the bend. */
  readonly leastMm: number;
  readonly preferredMm: number | undefined;
  /** What decides: the bundle, or a member by its place in the list. */
  readonly governs: string;
}

const RULES: Readonly<Record<BendRuleId, BendRule>> = BEND_RULES;
const RuleId = z.enum(Object.keys(BEND_RULES) as [BendRuleId, ...BendRuleId[]]);

const inputs = z.strictObject({
  bundleDiameterMm: field(z.number().positive(), 'Outside diameter with covering', 'mm'),
  bundleRule: field(RuleId.default('ac-43-bundle'), 'Rule of the bundle'),
  bundleFactor: field(z.number().positive().optional(), 'Own factor of the bundle'),
  members: field(
    z
      .array(
        z.strictObject({
          diameterMm: z.number().positive(),
          rule: RuleId.optional(),
          factor: z.number().positive().optional(),
        }),
      )
      .default([]),
    'Members with a rule or factor of their own',
    'mm',
  ),
});

/**
 * Least inside radius of a bend: factor x outside diameter, of the bundle with its coverings and of every member by its
 * own rule; the largest decides. A factor entered (a catalogue's) wins over the rule. The least radius holds for the
 * installed harness where the source tells; the preferred one is for the long term.
 */
export const bendRadius = calculation<typeof inputs, BendRadius>({
  id: 'bend-radius',
  title: 'Least bend radius',
  about: 'The larger of what the bundle and each of its members ask for, to the inside of the bend.',
  inputs,
  outputs: {
    leastMm: { label: 'Least radius', unit: 'mm' },
    preferredMm: { label: 'Preferred radius', unit: 'mm' },
    governs: { label: 'Decided by', unit: '' },
  },
  sources: [WORST_MEMBER, ...Object.values(RULES).map((r) => r.source)],
  run({ bundleDiameterMm, bundleRule, bundleFactor, members }) {
    const missing = members.findIndex((m) => m.factor === undefined && m.rule === undefined);
    if (missing >= 0)
      return { ok: false, problem: { code: 'needs', inputs: [`rule or factor of member ${missing + 1}`] } };
    const radius = (
      name: string,
      diameterMm: number,
      id: BendRuleId | undefined,
      own: number | undefined,
    ) => {
      const rule = own === undefined && id !== undefined ? RULES[id] : undefined;
      const factor = own ?? rule!.least;
      return {
        name,
        factor,
        leastMm: factor * diameterMm,
        preferredMm: rule?.preferred === undefined ? undefined : rule.preferred * diameterMm,
        source: rule?.source ?? ({ title: 'factor entered', verified: true } satisfies CalcSource),
      };
    };
    const all = [
      radius('bundle', bundleDiameterMm, bundleRule, bundleFactor),
      ...members.map((m, i) => radius(`member ${i + 1}`, m.diameterMm, m.rule, m.factor)),
    ];
    const most = all.reduce((a, b) => (b.leastMm > a.leastMm ? b : a));
    const preferred = all.flatMap((a) => (a.preferredMm === undefined ? [] : [a.preferredMm]));
    return answer({
      leastMm: most.leastMm,
      preferredMm: preferred.length ? Math.max(most.leastMm, ...preferred) : undefined,
      governs: most.name,
      working: {
        formula: 'R = largest of (factor x outside diameter)',
        figures: all.map((a) => figure(`${a.name}: ${a.factor} x diameter`, a.leastMm, 'mm')),
        sources: [...new Set([...all.map((a) => a.source), WORST_MEMBER])],
        notes: ['Radius to the inside of the bend.'],
      },
    });
  },
});
