import type { Call } from '@latchwork/core/commands/dispatch';
import type { Project } from '@latchwork/core/model/project';

/** An edit that a number stands for, on whatever is in the project now; null where it has nothing to work on. */
export function randomEdit(n: number, project: Project): Call | null {
  const k = Math.abs(n);
  const pick = <T>(list: readonly T[]): T | undefined => list[(k >> 4) % Math.max(1, list.length)];
  const connector = pick(project.connectors);
  const housing = pick(project.connectors.filter((c) => c.supply === 'harness'));
  const wire = pick(project.wires);
  const node = pick(project.nodes);
  const segment = pick(project.segments);
  const signal = pick(project.signals);
  const mate = pick(project.mates);
  const edits: readonly (() => Call | null)[] = [
    () => connector && { id: 'objects.move', args: { moves: [{ id: connector.id, to: { x: n, y: -n } }] } },
    () =>
      wire && {
        id: 'wire.edit',
        args: { ids: [wire.id], change: { colour: { base: k % 2 ? 'PK' : 'GY' } } },
      },
    () => wire && { id: 'wire.edit', args: { ids: [wire.id], change: { lengthMm: (k % 900) + 1 } } },
    () => wire && { id: 'objects.remove', args: { ids: [wire.id] } },
    () => mate && { id: 'objects.remove', args: { ids: [mate.id] } },
    () => connector && { id: 'objects.remove', args: { ids: [connector.id] } },
    () =>
      housing && {
        id: 'wire.add',
        args: {
          from: { at: 'cavity', connector: housing.id, cavity: '1' },
          to: { at: 'free', position: { x: n, y: 0 } },
        },
      },
    () =>
      wire && housing
        ? {
            id: 'wire.move-end',
            args: {
              id: wire.id,
              end: k % 2 ? 0 : 1,
              to: { at: 'cavity', connector: housing.id, cavity: '2' },
            },
          }
        : null,
    () =>
      connector && signal
        ? { id: 'cavity.set-signal', args: { connector: connector.id, cavity: '1', signal: signal.id } }
        : null,
    () => signal && { id: 'signal.edit', args: { id: signal.id, change: { currentA: k % 7 } } },
    () => signal && { id: 'objects.remove', args: { ids: [signal.id] } },
    () => ({ id: 'node.add', args: { position: { x: n, y: n } } }),
    () => node && { id: 'objects.move', args: { moves: [{ id: node.id, to: { x: n, y: k } }] } },
    () => node && { id: 'objects.remove', args: { ids: [node.id] } },
    () => segment && { id: 'segment.edit', args: { id: segment.id, change: { lengthMm: (k % 500) + 10 } } },
    () => ({ id: 'project.edit-title-block', args: { change: { title: `Title ${n}` } } }),
  ].map((make) => make as () => Call | null);
  return (edits[k % edits.length] as () => Call | null)() ?? null;
}
