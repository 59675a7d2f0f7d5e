import { byId } from '../../base/by-id';
import { colourText } from '../../model/colour';
import { crimpsOf } from '../crimps';
import { crimpToolFor } from '../crimp-tool';
import { labelsByEnd } from '../end-labels';
import type { Harness, ResolvedWire } from '../harness';
import { isTwisted } from '../twist';
import type { BuildOp, OpNeed, OpObject } from './build-op';
import { endOf, opId, wireClosingOf } from './op-ids';

const wireObject = (w: ResolvedWire): OpObject => ({ type: 'wire', id: w.wire.id });
const PREPARED: string = 'the wire must be cut and stripped';

/** What is done to single wires: cut, thread on, crimp, twist. */
export function prepareOps(harness: Harness): BuildOp[] {
  return [
    ...cuts(harness),
    ...threaded(harness),
    ...crimps(harness),
    ...terminals(harness),
    ...groups(harness),
  ];
}

function cuts(harness: Harness): BuildOp[] {
  const cables = harness.project.cables.map((c): BuildOp => ({
    id: opId.cutCable(c.id),
    stage: 'cut',
    gather: '0 cable',
    what: 'Cut cables to length and take off the jacket',
    place: c.designator,
    objects: [{ type: 'cable', id: c.id }],
    parts: [],
    needs: [],
  }));
  const wires = harness.wires.map((w): BuildOp => {
    const core = w.wire.core;
    const part = w.part?.partNumber ?? 'a wire that is not chosen';
    const colour = w.wire.colour ? colourText(w.wire.colour) : 'colour not chosen';
    return {
      id: opId.cut(w.wire.id),
      stage: 'cut',
      gather: core ? `2 core ${core.cable}` : `1 ${part}`,
      what: core
        ? `Strip the cores of ${byId(harness.project.cables).get(core.cable)?.designator ?? part}`
        : `Cut and strip ${part} by the cut list`,
      place: core ? w.wire.designator : `${w.wire.designator} ${colour}`,
      objects: [wireObject(w)],
      parts: [],
      needs: core
        ? [{ op: opId.cutCable(core.cable), because: 'cores are stripped after the jacket is off' }]
        : [],
    };
  });
  return [...cables, ...wires];
}

/** Labels and seals that go on over the bare end. */
function threaded(harness: Harness): BuildOp[] {
  const wires = harness.wireById;
  const labels = harness.project.labels.flatMap((l): BuildOp[] => {
    const w = l.on.at === 'wire-end' ? wires.get(l.on.wire) : undefined;
    if (!w || l.on.at !== 'wire-end') return [];
    return [
      {
        id: opId.label(l.id),
        stage: 'slide-on-wire',
        gather: 'label',
        what: 'Slide labels onto the wires',
        place: `${w.wire.designator} end ${l.on.end === 0 ? 'A' : 'B'}: ${l.text}`,
        objects: [wireObject(w)],
        parts: [{ part: harness.parts.get(l.part ?? '')?.partNumber ?? null, quantity: 1 }],
        needs: [{ op: opId.cut(w.wire.id), because: PREPARED }],
      },
    ];
  });
  const seals = harness.wires.flatMap((w) =>
    ([0, 1] as const).flatMap((end): BuildOp[] => {
      const e = endOf(w, end).end;
      if (e.at !== 'cavity' || e.seal === undefined) return [];
      const part = harness.parts.get(e.seal)?.partNumber ?? null;
      return [
        {
          id: opId.seal(w.wire.id, end),
          stage: 'slide-on-wire',
          gather: `seal ${part ?? ''}`,
          what: `Thread wire seals ${part ?? 'that are not known'} onto the wires`,
          place: `${w.wire.designator} at ${endPlace(w, end)}`,
          objects: [wireObject(w)],
          parts: [{ part, quantity: 1 }],
          needs: [{ op: opId.cut(w.wire.id), because: PREPARED }],
        },
      ];
    }),
  );
  return [...labels, ...seals];
}

export function endPlace(w: ResolvedWire, index: 0 | 1): string {
  const e = endOf(w, index);
  switch (e.end.at) {
    case 'cavity':
      return `${e.connector?.connector.designator ?? '?'}:${e.end.cavity}`;
    case 'splice':
      return e.splice?.designator ?? '?';
    case 'free':
      return e.end.text ?? 'free end';
  }
}

/** What must be on a wire before its end is closed: labels and seals of that end. */
export function onBefore(harness: Harness, w: ResolvedWire, end: 0 | 1): OpNeed[] {
  const closing = wireClosingOf(w, end);
  if (closing === undefined) return [];
  const e = endOf(w, end).end;
  const needs: OpNeed[] = (labelsByEnd(harness.project.labels).get(`${w.wire.id} ${end}`) ?? []).map(
    ({ id }) => ({
      op: opId.label(id),
      because: 'a label does not go on over a closed end',
    }),
  );
  if (e.at === 'cavity' && e.seal !== undefined)
    needs.push({ op: opId.seal(w.wire.id, end), because: 'the seal is crimped with the contact' });
  return needs;
}

function crimps(harness: Harness): BuildOp[] {
  return harness.connectors.flatMap((use) =>
    use.cavities.flatMap((cavity) =>
      crimpsOf(cavity).flatMap(({ contact, part, ends }): BuildOp[] => {
        const [first] = ends;
        if (!contact || !first) return [];
        const { wire } = first;
        const tool = crimpToolFor(harness.project, part, wire.conductor, wire.part?.partNumber)?.partNumber;
        const wires = [...new Set(ends.map((e) => e.wire.part?.partNumber ?? 'wire not chosen'))].join(' + ');
        return [
          {
            id: opId.crimp(contact.id),
            stage: 'crimp',
            gather: `${part.partNumber} ${wires} ${ends.length}`,
            what: `Crimp ${part.partNumber} on ${wires}${ends.length > 1 ? `, ${ends.length} wires together` : ''}, ${tool ?? 'tool not stated'}, by the crimp sheet`,
            place: `${ends.map((e) => e.wire.wire.designator).join(' + ')} for ${use.resolved.connector.designator}:${cavity.cavity}`,
            objects: ends.map((e) => wireObject(e.wire)),
            parts: [{ part: part.partNumber, quantity: 1 }],
            needs: ends.flatMap((e) => [
              { op: opId.cut(e.wire.wire.id), because: PREPARED },
              ...onBefore(harness, e.wire, e.index),
            ]),
          },
        ];
      }),
    ),
  );
}

function terminals(harness: Harness): BuildOp[] {
  return harness.wires.flatMap((w) =>
    ([0, 1] as const).flatMap((index): BuildOp[] => {
      const e = endOf(w, index).end;
      if (e.at !== 'free' || e.terminal === undefined) return [];
      const part = harness.parts.get(e.terminal)?.partNumber ?? null;
      return [
        {
          id: opId.terminal(w.wire.id, index),
          stage: 'terminal',
          gather: part ?? '',
          what: `Crimp terminals ${part ?? 'that are not known'}`,
          place: `${w.wire.designator} at ${endPlace(w, index)}`,
          objects: [wireObject(w)],
          parts: [{ part, quantity: 1 }],
          needs: [{ op: opId.cut(w.wire.id), because: PREPARED }, ...onBefore(harness, w, index)],
        },
      ];
    }),
  );
}

/** Twisting and shielding, each group once. */
function groups(harness: Harness): BuildOp[] {
  return harness.project.groups.flatMap((g): BuildOp[] => {
    const wires = g.wires.flatMap((id) => harness.wireById.get(id) ?? []);
    const common = {
      place: `${g.designator}: ${wires.map((w) => w.wire.designator).join(', ')}`,
      objects: [{ type: 'group' as const, id: g.id }, ...wires.map(wireObject)],
      parts: [],
    };
    const cut = wires.map((w) => ({
      op: opId.cut(w.wire.id),
      because: 'every wire of the group must be there',
    }));
    const twisted = isTwisted(g);
    const shielded = g.form === 'shielded' || g.form === 'twisted-shielded';
    return [
      ...(twisted
        ? [
            {
              id: opId.twist(g.id),
              stage: 'twist' as const,
              gather: '0',
              what: `Twist, lay ${g.layMm === undefined ? 'not stated' : `${g.layMm} mm`}, the ends left open ${g.exposedMm === undefined ? 'as short as can be' : `${g.exposedMm} mm at most`}`,
              ...common,
              needs: cut,
            },
          ]
        : []),
      ...(shielded
        ? [
            {
              id: opId.shield(g.id),
              stage: 'twist' as const,
              gather: '1',
              what: 'Put the shield over the group and end it as the drawing says',
              ...common,
              needs: twisted
                ? [{ op: opId.twist(g.id), because: 'the shield lies over the twisted wires' }]
                : cut,
            },
          ]
        : []),
    ];
  });
}

/** Operations on the groups of a wire that must be done before its ends are held. */
export function groupNeeds(w: ResolvedWire): OpNeed[] {
  const g = w.group;
  if (!g) return [];
  return [
    ...(isTwisted(g)
      ? [{ op: opId.twist(g.id), because: 'wires are twisted while their ends are free' }]
      : []),
    ...(g.form === 'shielded' || g.form === 'twisted-shielded'
      ? [{ op: opId.shield(g.id), because: 'a shield does not go on over a housing' }]
      : []),
  ];
}
