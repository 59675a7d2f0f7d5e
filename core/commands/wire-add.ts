import { z } from 'zod';
import { Id } from '../model/ids';
import { type CablePart, WirePart } from '../model/parts/wire';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { Wire } from '../model/wire';
import { command } from './command';
import { chooseColour, chooseWire } from './shared/choose-wire';
import { nextWire } from './shared/designators';
import { faceFirstWire } from './shared/face-wires';
import { missing } from './shared/draft-object';
import { candidateParts, embedPart } from './shared/embed-part';
import {
  contactFor,
  declaredSignal,
  isTaken,
  prepareEnd,
  refuseTarget,
  sealFor,
  WireTarget,
} from './shared/wire-target';

const { designator, colour, signal, lengthMm, extraMm, note, core } = Wire.shape;

const Args = z.strictObject({
  from: WireTarget,
  to: WireTarget,
  /** Absent: one that fits is chosen. Null: none, to be said later. A core of a placed cable names no part. */
  part: WirePart.nullable().optional(),
  core,
  designator: designator.optional(),
  colour,
  signal,
  lengthMm,
  extraMm,
  note,
  id: Id.optional(),
});

/**
 * A wire from one place to another, with the contact that fits at each end. Where none fits the wire is drawn all
 * the same and a finding says why.
 */
export const wireAdd = command({
  id: 'wire.add',
  label: 'Add wire',
  args: Args,
  refuse: (project, { from, to, signal, core }) =>
    refuseTarget(project, from) ??
    refuseTarget(project, to) ??
    (JSON.stringify(from) === JSON.stringify(to) ? 'A wire needs two different ends.' : null) ??
    missing(project, 'signals', [signal], 'signal') ??
    missing(project, 'cables', [core?.cable], 'cable'),
  run(draft, args, { newId, catalogue }, project) {
    const { from, to } = args;
    const candidates = candidateParts(project, catalogue);
    const part =
      args.part ??
      (args.part === undefined && !args.core ? chooseWire(project, [from, to], candidates) : null);
    const core = coreOf(project, args.core);
    const conductor = part ?? core;
    faceFirstWire(draft, project, from, to);
    faceFirstWire(draft, project, to, from);
    const ends = [from, to].map((target) => {
      const taken = isTaken(project, target);
      const contact = conductor && !taken ? contactFor(project, target, [conductor], candidates) : null;
      return prepareEnd(
        draft,
        project,
        target,
        { contact, seal: sealFor(project, target, conductor, candidates) },
        newId,
      );
    }) as Wire['ends'];
    const wireColour = args.colour ?? (part ? chooseColour(project, part, [from, to]) : core?.colour);
    const wireSignal = args.signal ?? declaredSignal(project, from) ?? declaredSignal(project, to);
    draft.wires.push({
      id: args.id ?? newId(),
      designator: args.designator ?? nextWire(project),
      ...(part ? { part: embedPart(draft, project, part) } : {}),
      ...(args.core ? { core: args.core } : {}),
      ...(wireColour ? { colour: wireColour } : {}),
      ...(wireSignal ? { signal: wireSignal } : {}),
      ends,
      ...(args.lengthMm === undefined ? {} : { lengthMm: args.lengthMm }),
      ...(args.extraMm === undefined ? {} : { extraMm: args.extraMm }),
      ...(args.note === undefined ? {} : { note: args.note }),
    });
  },
});

function coreOf(project: Project, core: Wire['core']): CablePart['cores'][number] | undefined {
  const cable = core && project.cables.find((c) => c.id === core.cable);
  const part: Part | undefined = cable && project.parts.find((p) => p.id === cable.part);
  return part?.kind === 'cable' ? part.cores.find((c) => c.name === core?.name) : undefined;
}
