import type { ResolvedWire } from '../derive/harness';
import { must } from '../base/assert-never';
import type { WirePart } from '../model/parts/wire';
import { tiny, type TinyDraft } from '../model/tiny';
import { partRef, segmentRef, wireRef } from './refs';
import type { Rule } from './rule';
import { fact, partFact } from './shared/evidence';

/** Speaks of segments that state which styles of wire are approved where they lie. */
export const wireClass: Rule<'segment'> = {
  meta: {
    id: 'wire-class',
    revision: 1,
    severity: 'critical',
    summary:
      'Where a run states the styles of wire that are approved for its place, its wires are of these styles.',
    why: 'A place that is hot, wet with fuel, or full of people has a list of wires that stand it. One other wire in the bundle carries the fire along.',
    source: 'common practice: zones with a list of approved wires; the list is that of the project',
    message: '{{wires}} in {{segment}}: {{style}} is not approved there',
    unknown: 'Whether {{wires}} may lie in {{segment}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'segment',
  check(use, report) {
    const approved = use.segment.wireStyles;
    if (!approved || use.wires.length === 0) return;
    const strange = new Map<string | undefined, ResolvedWire[]>();
    for (const w of use.wires) {
      const style = styleOf(w);
      if (style !== undefined && approved.includes(style)) continue;
      strange.set(style, [...(strange.get(style) ?? []), w]);
    }
    if (strange.size === 0) return report.pass();
    for (const [style, wires] of strange) {
      const at = [segmentRef(use), ...wires.map(wireRef)];
      const names = wires.map((w) => w.wire.designator).join(', ');
      const data = { wires: names, segment: use.segment.designator };
      const evidence = fact('approved styles', approved.join(', ') || 'none', 'typed');
      if (style !== undefined) {
        const styles = wires.flatMap((w) =>
          w.part ? partFact(w.part, `style of ${w.wire.designator}`, style) : [],
        );
        report.fail({ at, data: { ...data, style }, evidence: [...evidence, ...styles] });
      } else report.cannotVerify({ at, data, needs: needsOf(wires), evidence });
    }
  },
  examples: () => ({
    good: [
      { name: 'nothing stated for the run', project: tiny() },
      { name: 'both wires of an approved style', project: tiny((t) => zone(t, 'thin wall')) },
    ],
    bad: [{ name: 'wires of another style', project: tiny((t) => zone(t, 'PVC')), expect: ['S1'] }],
    unknown: [
      { name: 'the record states no style', project: tiny((t) => zone(t, undefined)), expect: ['S1'] },
    ],
  }),
};

const styleOf = ({ part }: ResolvedWire): string | undefined =>
  part?.kind === 'wire' || part?.kind === 'cable' ? part.style : undefined;

function needsOf(wires: readonly ResolvedWire[]) {
  const needs = wires.map((w) =>
    w.part
      ? { what: `style of ${w.part.partNumber}`, at: partRef(w.part), field: 'style' }
      : { what: `part of ${w.wire.designator}`, at: wireRef(w), field: 'part' },
  );
  return [...new Map(needs.map((n) => [n.what, n])).values()];
}

function zone(t: TinyDraft, style: WirePart['style']): void {
  must(t.project.segments[0], 'segment').wireStyles = ['thin wall', 'cross-linked'];
  if (style !== undefined) t.part('wire', 'WIRE-22').style = style;
}
