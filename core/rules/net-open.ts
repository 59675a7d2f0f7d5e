import { must } from '../base/assert-never';
import type { Net, ResolvedWire } from '../derive/harness';
import { tiny, type TinyDraft } from '../model/tiny';
import type { ObjectRef } from './finding';
import { wireRef } from './refs';
import type { Rule } from './rule';
import { fact } from './shared/evidence';

/**
 * Speaks of nets with wires. An end in the air is meant to be one where it has a terminal or a text that says where it goes;
 * a splice joins two ends or more. Ends in cavities are for `net-ends`.
 */
export const netOpen: Rule<'net'> = {
  meta: {
    id: 'net-open',
    revision: 1,
    severity: 'major',
    summary:
      'Every wire leads from one stated end to another: none stops in the air or in a splice by itself.',
    why: 'An end that nobody finished is cut to some length, left bare, and found by a short.',
    source:
      'mission-assurance practice: complete connectivity diagrams without open segments; common practice',
    message: '{{where}} is an open end: {{problem}}',
    unknown: 'Whether {{where}} leads anywhere cannot be verified; not stated: {{needs}}',
  },
  scope: 'net',
  check(net, report) {
    if (net.wires.length === 0) return;
    const open = [...freeEnds(net), ...lonelySplices(net)];
    for (const { at, where, problem } of open)
      report.fail({
        open: true,
        at,
        data: { where, problem },
        evidence: fact('wires of the net', net.wires.map((w) => w.wire.designator).join(', '), 'project'),
      });
    if (open.length === 0) report.pass();
  },
  examples: () => ({
    good: [
      { name: 'from cavity to cavity', project: tiny() },
      { name: 'a free end that says where it goes', project: tiny((t) => free(t, 'To the chassis')) },
      {
        name: 'a splice of two wires',
        project: tiny((t) => {
          splice(t, 'W1', 1);
          splice(t, 'W2', 1);
        }),
      },
    ],
    bad: [
      { name: 'a wire that ends in the air', project: tiny((t) => free(t)), expect: ['W1'] },
      { name: 'a splice with one wire', project: tiny((t) => splice(t, 'W2', 0)), expect: ['XS1'] },
    ],
    unknown: [],
  }),
};

interface OpenEnd {
  readonly at: readonly ObjectRef[];
  readonly where: string;
  readonly problem: string;
}

const endsOf = (w: ResolvedWire) => [w.from, w.to] as const;

function freeEnds(net: Net): OpenEnd[] {
  return net.wires.flatMap((w) => {
    const open = endsOf(w).filter(
      ({ end }) => end.at === 'free' && end.terminal === undefined && !end.text?.trim(),
    );
    if (open.length === 0) return [];
    const problem = 'neither a terminal nor a text says what it is for';
    return [{ at: [wireRef(w)], where: `${w.wire.designator} in the air`, problem }];
  });
}

function lonelySplices(net: Net): OpenEnd[] {
  return net.splices.flatMap((s) => {
    const wires = net.wires.filter((w) => endsOf(w).some((e) => e.splice?.id === s.id));
    const ends = wires.flatMap((w) => endsOf(w).filter((e) => e.splice?.id === s.id));
    if (ends.length !== 1) return [];
    const at = [{ type: 'splice' as const, id: s.id }, ...wires.map(wireRef)];
    return [{ at, where: s.designator, problem: 'one wire ends in it' }];
  });
}

/** The far end of W1 in the air. */
function free(t: TinyDraft, text?: string): void {
  t.wire('W1').ends[1] = { at: 'free', position: { x: 80, y: 0 }, ...(text ? { text } : {}) };
}

/** An end of a wire into the one splice XS1. */
function splice(t: TinyDraft, wire: string, end: 0 | 1): void {
  if (t.project.splices.length === 0)
    t.project.splices.push({ id: t.newId(), designator: 'XS1', position: { x: 60, y: 20 } });
  t.wire(wire).ends[end] = { at: 'splice', splice: must(t.project.splices[0], 'splice').id };
}
