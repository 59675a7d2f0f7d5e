import { tiny, type TinyDraft } from '../model/tiny';
import { must } from '../base/assert-never';
import type { ObjectRef } from './finding';
import { partRef } from './refs';
import type { Report, Rule } from './rule';
import { partFact, partNeed } from './shared/evidence';
import { addCable } from './shared/example-shield';
import { shieldsOf, type Shield } from './shared/shields';

/**
 * Speaks of shielded cables whose cores are in use. The drain is a wire in the core of that name, or one that carries a signal
 * of class shield in the same group. Where the shield is stated to be connected at no end, `shield-ends` speaks.
 */
export const drainWire: Rule<'project'> = {
  meta: {
    id: 'drain-wire',
    revision: 1,
    severity: 'minor',
    summary: 'The drain wire of a cable is drawn as a wire like any other.',
    why: 'A drain wire needs a contact, a cavity, a sleeve and a row in the cut list. Where nobody drew it the parts are not ordered, and the shop cuts it off.',
    source: 'common practice: a drain wire is a conductor and is counted as one',
    message: '{{cable}} has a drain wire that ends nowhere',
    unknown: 'Whether the drain wire of {{cable}} is counted cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report) {
    for (const shield of shieldsOf(harness)) judge(shield, report);
  },
  examples: () => ({
    good: [
      { name: 'no cable', project: tiny() },
      { name: 'a shield without a drain wire', project: tiny((t) => addCable(t, false)) },
      { name: 'a drain wire in a cavity', project: tiny((t) => withDrain(t)) },
    ],
    bad: [{ name: 'a drain wire that nobody drew', project: tiny((t) => addCable(t, true)), expect: ['W9'] }],
    unknown: [
      { name: 'the record does not tell', project: tiny((t) => addCable(t, undefined)), expect: ['W9'] },
    ],
  }),
};

function withDrain(t: TinyDraft): void {
  addCable(t, true);
  const like = t.wire('W2');
  const ends = like.ends.map((e) =>
    e.at === 'cavity' ? { at: e.at, connector: e.connector, cavity: '3' } : e,
  );
  const { id } = must(t.project.cables[0], 'cable');
  t.project.wires.push({
    id: t.newId(),
    designator: 'W3',
    core: { cable: id, name: 'drain' },
    ends: [must(ends[0], 'end'), must(ends[1], 'end')],
  });
}

function judge({ cable, cablePart, group, drains }: Shield, report: Report): void {
  if (!cable || !cablePart || cablePart.drainWire === false || group?.shieldEnds === 'none') return;
  const at: ObjectRef[] = [{ type: 'cable', id: cable.id }, partRef(cablePart)];
  const data = { cable: cable.designator };
  const ends = drains.flatMap((d) => [d.from.end, d.to.end]);
  if (ends.some((e) => e.at !== 'free' || e.terminal !== undefined)) return report.pass();
  if (cablePart.drainWire === undefined)
    return report.cannotVerify({
      at,
      data,
      needs: [partNeed(cablePart, 'drainWire', 'whether there is a drain wire')],
    });
  report.fail({ at, data, evidence: partFact(cablePart, 'drain wire', 'yes') });
}
