import { byId } from '@latchwork/core/base/by-id';
import type { Project } from '@latchwork/core/model/project';
import type { WireEnd } from '@latchwork/core/model/wire';

/** A project whose wires all end in cavities or splices as the two tables that it can be imported from. */
export function tablesOfProject(project: Project): { readonly connectors: string; readonly fromTo: string } {
  const connectors = byId(project.connectors);
  const parts = byId(project.parts);
  const equipment = byId(project.equipment);
  const signals = byId(project.signals);
  const splices = byId(project.splices);
  const nameOf = (id: string): string => connectors.get(id)!.designator;
  const mates = new Map(project.mates.map((m) => [m.a, nameOf(m.b)]));
  const groups = new Map(project.groups.flatMap((g) => g.wires.map((w) => [w, g.designator] as const)));
  const endOf = (end: WireEnd): string => {
    if (end.at === 'free') throw new Error('a free end has no cells');
    return end.at === 'cavity' ? `${nameOf(end.connector)},${end.cavity}` : `${splices.get(end.splice)!.designator},`;
  };
  const places = project.connectors.map((c) =>
    [
      c.designator,
      parts.get(c.part)!.partNumber,
      mates.get(c.id) ?? '',
      equipment.get(c.equipment ?? '')?.designator ?? '',
    ].join(','),
  );
  const wires = project.wires.map((w) =>
    [
      w.designator,
      signals.get(w.signal ?? '')?.name ?? '',
      ...w.ends.map(endOf),
      parts.get(w.part ?? '')?.partNumber ?? '',
      w.colour?.base ?? '',
      w.lengthMm ?? 300,
      groups.get(w.id) ?? '',
    ].join(','),
  );
  return {
    connectors: ['designator,part,mates_with,equipment', ...places].join('\n'),
    fromTo: ['wire,signal,from,from_cavity,to,to_cavity,wire_part,colour,length_mm,group', ...wires].join('\n'),
  };
} // prettier-ignore
