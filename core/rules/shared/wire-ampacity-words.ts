import type { CalcProblem } from '../../calc/calc-problem';
import { calcProblemText } from '../../calc/calc-problem';
import type { ResolvedWire } from '../../derive/harness';
import type { WireAmpacity } from '../../derive/wire-ampacity';
import type { LimitSet } from '../../model/limit-set';
import type { Evidence, Need } from '../finding';
import { partRef, wireRef } from '../refs';

/** What a wire may carry, with the table and its conditions beside the number. */
export const ampacityFact = (wire: ResolvedWire, may: WireAmpacity): Evidence => ({
  label: `${wire.wire.designator} may carry`,
  value: Number(may.currentA.toPrecision(6)),
  unit: 'A',
  source: `${may.text}; air ${may.ambientC} degC, conductor ${may.ratedC} degC${may.verified ? '' : ' (not verified)'}`,
});

/** What keeps the current of a wire from being known, with the place to fill it in. */
export function ampacityNeeds(wire: ResolvedWire, p: CalcProblem, set: LimitSet): Need[] {
  if (p.code !== 'needs')
    return [
      {
        what: `a table of limit set ${set.name} that holds for ${wire.wire.designator} (${calcProblemText(p)})`,
        at: wire.part ? partRef(wire.part) : wireRef(wire),
        field: 'limitSet.ampacity',
      },
    ];
  return p.inputs.map((what) => {
    if (what.includes('limit set'))
      return { what, at: { type: 'project' as const, id: set.name }, field: 'limitSet.ampacity' };
    return wire.part && !what.startsWith('part of')
      ? { what, at: partRef(wire.part), field: 'temperatureMaxC' }
      : { what, at: wireRef(wire), field: wire.wire.core ? 'core' : 'part' };
  });
}
