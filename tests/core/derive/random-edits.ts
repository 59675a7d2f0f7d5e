import type { Call } from '@latchwork/core/commands/dispatch';
import { COLLECTIONS, type Project } from '@latchwork/core/model/project';
import { goodCalls, PREPARED, workbench } from '../commands/calls';
import { generateProject } from '../../generate/harness-generator';

/** The workbench on which every command succeeds, with a generated harness of that many wires beside it. */
export function crowdedWorkbench(wires: number): Project {
  const bench = workbench();
  const crowd = generateProject({ wires });
  const both = Object.fromEntries(COLLECTIONS.map((c) => [c, [...bench[c], ...crowd[c]]]));
  return { ...bench, ...both };
}

/** No command and no reader of a project may write into it; in the program nothing would stop them. */
export function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const inner of Object.values(value)) deepFreeze(inner);
  return value;
}

/** The call of some command on the workbench; null when what it needs is gone by now. */
export function commandFor(n: number, project: Project): Call | null {
  try {
    const calls = goodCalls(project);
    return calls[n % calls.length] ?? null;
  } catch {
    return null;
  }
}

/** What makes the next command possible that is refused on the workbench as it is. */
export const preparations = Object.values(PREPARED);

/** An edit for a number, on whatever is there now. */
export function editFor(n: number, project: Project): Call | null {
  const pick = <T>(list: readonly T[]): T | undefined => list[(n >> 4) % Math.max(1, list.length)];
  const [connector, wire, mate] = [pick(project.connectors), pick(project.wires), pick(project.mates)];
  const [signal, part, contact] = [pick(project.signals), pick(project.parts), pick(project.contacts)];
  const housing = pick(project.connectors.filter((c) => c.supply === 'harness'));
  const inHousing = (cavity: string) => housing && { at: 'cavity' as const, connector: housing.id, cavity };
  const removed = (id: string | undefined): Call | null =>
    id === undefined ? null : { id: 'objects.remove', args: { ids: [id] } };
  switch (n % 16) {
    case 0:
      return connector
        ? { id: 'objects.move', args: { moves: [{ id: connector.id, to: { x: n, y: -n } }] } }
        : null;
    case 1: {
      const change = n % 3 ? { colour: { base: 'PK' as const } } : { signal: signal?.id ?? null };
      return wire ? { id: 'wire.edit', args: { ids: [wire.id], change } } : null;
    }
    case 2:
      return removed(wire?.id);
    case 3:
      return removed(mate?.id);
    case 4: {
      const from = inHousing('1');
      return from ? { id: 'wire.add', args: { from, to: { at: 'free', position: { x: n, y: 0 } } } } : null;
    }
    case 5: {
      const to = inHousing('2');
      return wire && to ? { id: 'wire.move-end', args: { id: wire.id, end: 1, to } } : null;
    }
    case 6:
      return removed(connector?.id);
    case 7:
      return connector && signal
        ? { id: 'cavity.set-signal', args: { connector: connector.id, cavity: '1', signal: signal.id } }
        : null;
    case 8:
      return signal
        ? {
            id: 'signal.edit',
            args: {
              id: signal.id,
              change: n % 3 ? { currentA: (n % 9) + 1 } : { voltageV: 48, name: `S${n}` },
            },
          }
        : null;
    case 9:
      return part ? { id: 'part.embed', args: { part: { ...part, description: `Edited ${n}` } } } : null;
    case 10: {
      const node = pick(project.nodes);
      return node ? { id: 'nodes.move', args: { moves: [{ id: node.id, to: { x: n, y: n } }] } } : null;
    }
    case 11: {
      const change = n % 3 ? { designator: `X${n % 4}` } : { node: pick(project.nodes)?.id ?? null };
      return connector ? { id: 'connector.edit', args: { ids: [connector.id], change } } : null;
    }
    case 12: {
      const [a, b] = [pick(project.nodes), project.nodes[(n >> 7) % project.nodes.length]];
      return a && b && a !== b ? { id: 'segment.add', args: { from: a.id, to: b.id } } : null;
    }
    case 13:
      return removed(n % 3 ? contact?.id : n % 2 ? signal?.id : pick(project.segments)?.id);
    case 14: {
      const other = project.wires[(n >> 5) % project.wires.length];
      return wire && other && wire !== other
        ? { id: 'group.add', args: { wires: [wire.id, other.id], form: n % 3 ? 'twisted' : 'shielded' } }
        : null;
    }
    default: {
      const record = project.parts.find((p) => p.kind === 'wire' && p.id !== wire?.part);
      return wire && record?.kind === 'wire'
        ? { id: 'wire.set-part', args: { ids: [wire.id], part: { ...record, odMm: 1 + (n % 9) / 10 } } }
        : null;
    }
  }
}
