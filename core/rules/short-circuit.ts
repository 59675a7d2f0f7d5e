import { shortCircuit as adiabatic } from '../calc/short-circuit';
import type { ResolvedWire, Supply } from '../derive/harness';
import type { Limit } from '../model/limit-set';
import { tiny } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { partSource, wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { addFuse } from './shared/example-fuse';
import { limitFact, partFact, partNeed } from './shared/evidence';
import { fuseWays, wayNeeds, type FuseWay } from './shared/fuse-ways';
import { metalAreaMm2, metalAreaNeed } from './shared/metal-area';
import { figures3, fusePart, fuseRef, limitsOf } from './shared/supply-words';

/**
 * Takes the wire to be at its rated temperature when the fault comes, and no heat to leave it: the cautious end. Asked of fuses;
 * a source that limits its own current lets no fault current through.
 */
export const shortCircuit: Rule<'supply'> = {
  meta: {
    id: 'short-circuit',
    revision: 1,
    severity: 'critical',
    summary: 'A fuse clears a short circuit before the insulation of any wire behind it is beyond its limit.',
    why: 'In a short circuit all heat stays in the wire. A fuse that clears too slowly for a thin branch leaves a bare wire inside a bundle.',
    source: 'IEC 60364-4-43: I2 t at most k2 S2 (from memory)',
    message: '{{fuse}} lets {{through}} A2s through, {{wires}} can take {{limit}} A2s',
    unknown:
      'Whether the wires behind {{fuse}} stand a short circuit cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    const { limits, needs } = limitsOf(context, ['fault-temperature-max']);
    for (const way of fuseWays(supply)) {
      // A fuse that other wires lead around is a matter of fuse-protects-wire.
      if (way.behind?.isBypassed) continue;
      judge(way, supply, limits?.['fault-temperature-max'], needs, report, context);
    }
  },
  examples: () => ({
    good: [{ name: '40 A2s into 22 AWG', project: tiny((t) => void addFuse(t, 2)) }],
    bad: [
      {
        name: 'a slow fuse before 22 AWG',
        project: tiny((t) => void (addFuse(t, 2).part.clearingA2s = 2000)),
        expect: ['F1'],
      },
      {
        name: 'the same fuse before a thinner wire',
        project: tiny((t) => {
          addFuse(t, 2).part.clearingA2s = 200;
          t.wire('W1').part = t.part('wire', 'WIRE-26').id;
        }),
        expect: ['F1'],
      },
    ],
    unknown: [
      {
        name: 'the fuse states no clearing I2t',
        project: tiny((t) => void delete addFuse(t, 2).part.clearingA2s),
        expect: ['F1'],
      },
      {
        name: 'a fuse without a record',
        project: tiny((t) => void delete addFuse(t, 2).fuse.part),
        expect: ['F1'],
      },
      {
        name: 'a wire rated above the fault limit, whose own limit is not known',
        project: tiny((t) => {
          addFuse(t, 2);
          t.part('wire', 'WIRE-22').temperatureMaxC = 200;
        }),
        expect: ['F1'],
      },
    ],
  }),
};

function judge(
  way: FuseWay,
  supply: Supply,
  faultLimit: Limit | undefined,
  limitNeeds: readonly Need[],
  report: Report,
  context: RuleContext,
): void {
  const { fuse, behind } = way;
  const part = fusePart(supply, fuse);
  const through = part?.clearingA2s;
  const open: Need[] = [
    ...limitNeeds,
    ...(part ? [] : [{ what: `part of ${fuse.designator}`, at: fuseRef(fuse), field: 'part' }]),
    ...(part && through === undefined ? [partNeed(part, 'clearingA2s', 'clearing I2t')] : []),
    ...(behind ? [] : wayNeeds(way)),
  ];
  const evidence: Evidence[] = [
    ...(part ? partFact(part, `I2t that ${fuse.designator} lets through`, through, 'A2s') : []),
    ...limitFact('insulation in a fault', faultLimit, context.limitSet),
  ];
  const weak: { readonly wire: ResolvedWire; readonly withstandA2s: number }[] = [];
  if (through !== undefined && faultLimit)
    for (const wire of behind?.wires ?? []) {
      const stands = withstand(wire, faultLimit.value, through);
      if ('need' in stands) open.push(stands.need);
      else {
        evidence.push(stands.evidence);
        if (stands.share > 1) weak.push({ wire, withstandA2s: stands.withstandA2s });
      }
    }
  if (weak.length > 0 && through !== undefined)
    report.fail({
      at: [fuseRef(fuse), ...weak.map((w) => wireRef(w.wire))],
      data: {
        fuse: fuse.designator,
        through,
        wires: weak.map((w) => w.wire.wire.designator).join(', '),
        limit: figures3(Math.min(...weak.map((w) => w.withstandA2s))),
      },
      evidence,
    });
  else if (open.length > 0)
    report.cannotVerify({ at: [fuseRef(fuse)], data: { fuse: fuse.designator }, needs: open, evidence });
  else report.pass();
}

type Withstand =
  | { readonly need: Need }
  | { readonly withstandA2s: number; readonly share: number; readonly evidence: Evidence };

function withstand(wire: ResolvedWire, limitC: number, letThroughA2s: number): Withstand {
  const areaMm2 = metalAreaMm2(wire);
  const startC = wire.part?.temperatureMaxC;
  if (areaMm2 === undefined || !wire.part) return { need: metalAreaNeed(wire) };
  if (startC === undefined) return { need: partNeed(wire.part, 'temperatureMaxC', 'temperature rating') };
  if (startC >= limitC)
    return {
      need: {
        what: `a fault temperature above the ${startC} degC of ${wire.part.partNumber}`,
        at: { type: 'part', id: wire.part.id },
        field: 'limitSet.fault-temperature-max',
      },
    };
  const result = adiabatic.run({ areaMm2, startC, limitC, letThroughA2s });
  if (!result.ok) return { need: metalAreaNeed(wire) };
  const { withstandA2s, share, k } = result.value;
  return {
    withstandA2s,
    share,
    evidence: {
      label: `${wire.wire.designator} stands`,
      value: Number(withstandA2s.toPrecision(4)),
      unit: 'A2s',
      source: `k2 S2 with k = ${k.toFixed(1)} from ${startC} to ${limitC} degC, S = ${areaMm2} mm2 (${partSource(wire.part)})`,
    },
  };
}
