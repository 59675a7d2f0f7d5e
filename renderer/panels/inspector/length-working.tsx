import type { ReactNode } from 'react';
import { byId } from '@latchwork/core/base/by-id';
import type { ResolvedEnd, ResolvedWire } from '@latchwork/core/derive/harness';
import { segmentLengthMm } from '@latchwork/core/derive/route';
import type { Project } from '@latchwork/core/model/project';
import { type Working, type WorkingLine, inMm } from '../../ui/worked-number';

const sub = (letter: string, index: string): ReactNode => (
  <msub>
    <mi>{letter}</mi>
    <mi>{index}</mi>
  </msub>
);

/** L = ⌈ sum of segments + allowance of each end + twist take-up + extra ⌉ */
const ROUTED = (
  <math display="block">
    <mrow>
      <mi>L</mi>
      <mo>=</mo>
      <mo>⌈</mo>
      <mo>∑</mo>
      <mi>s</mi>
      <mo>+</mo>
      {sub('a', '1')}
      <mo>+</mo>
      {sub('a', '2')}
      <mo>+</mo>
      <mi>t</mi>
      <mo>+</mo>
      <mi>e</mi>
      <mo>⌉</mo>
    </mrow>
  </math>
);

/** How the cut length of a wire came about. */
export function lengthWorking(wire: ResolvedWire, project: Project): Working {
  const { length, wire: w } = wire;
  const title = `Cut length of ${w.designator}`;
  if (length.kind === 'typed')
    return {
      title,
      lines: [
        { label: 'Typed length', value: inMm(w.lengthMm ?? 0), source: 'typed at the wire' },
        ...(length.routeMm === undefined
          ? []
          : [{ label: 'Route, not used', value: inMm(length.routeMm), source: 'formboard' }]),
      ],
      result: length.cutMm === undefined ? undefined : inMm(length.cutMm),
      method: 'A typed length stands as it is. Take it away to have the length from the route.',
    };
  const nodes = byId(project.nodes);
  const segments = wire.route.found
    ? wire.route.segments.flatMap((id): WorkingLine[] => {
        const segment = byId(project.segments).get(id);
        if (!segment) return [];
        const typed = segment.lengthMm !== undefined;
        return [
          {
            symbol: <mi>s</mi>,
            label: `Segment ${segment.designator}`,
            value: inMm(segmentLengthMm(segment, nodes)),
            source: typed ? 'typed' : 'drawn on the formboard',
          },
        ];
      })
    : [];
  return {
    title,
    formula: ROUTED,
    lines: [
      ...segments,
      ...allowanceLines(wire.from, sub('a', '1')),
      ...allowanceLines(wire.to, sub('a', '2')),
      ...(length.takeUpMm
        ? [
            {
              symbol: <mi>t</mi>,
              label: `Twist take-up of ${wire.group?.designator ?? 'the group'}`,
              value: inMm(length.takeUpMm),
              source: `lay ${wire.group?.layMm ?? '?'} mm and diameters of its wires`,
            },
          ]
        : []),
      ...(length.extraMm
        ? [{ symbol: <mi>e</mi>, label: 'Extra', value: inMm(length.extraMm), source: 'typed at the wire' }]
        : []),
    ],
    ...(length.cutMm === undefined ? {} : { result: inMm(length.cutMm) }),
    needs: length.needs,
    method:
      'Shortest way over the segments, plus what each end reaches into its housing, plus what a twist takes up, plus the extra; rounded up to a whole millimetre (common practice).',
  };
}

/** Parts of one end's allowance, as far as they are stated. */
function allowanceLines(end: ResolvedEnd, symbol: ReactNode): WorkingLine[] {
  const c = end.connector;
  if (end.end.at !== 'cavity' || !c) return [];
  const name = `${c.connector.designator}:${end.end.cavity}`;
  const lines: WorkingLine[] = [];
  if (c.part?.kind === 'housing' && c.part.datumMm !== undefined)
    lines.push({
      symbol,
      label: `Into the housing at ${name}`,
      value: inMm(c.part.datumMm),
      source: `record of ${c.part.partNumber}`,
    });
  if (end.contactPart?.allowanceMm !== undefined)
    lines.push({
      symbol,
      label: `Contact at ${name}`,
      value: inMm(end.contactPart.allowanceMm),
      source: `record of ${end.contactPart.partNumber}`,
    });
  if (c.connector.serviceLoopMm !== undefined)
    lines.push({
      symbol,
      label: `Service loop at ${c.connector.designator}`,
      value: inMm(c.connector.serviceLoopMm),
      source: `typed at ${c.connector.designator}`,
    });
  return lines;
}
