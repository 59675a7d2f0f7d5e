import type { ResolvedWire } from '@latchwork/core/derive/harness';
import { Button } from '../../ui/button';
import { attempt } from './fields';
import { RefLink } from './ref-link';

const REASONS = {
  'end-without-node': 'none: an end is on no node of the formboard',
  'not-connected': 'none: no segments join the two ends',
  'path-broken': 'broken: the segments that it must follow do not join',
} as const;

/** The way of a wire over the formboard: the shortest, or one that it must follow. */
export function RouteField({ wire }: { wire: ResolvedWire }) {
  const { route, wire: w } = wire;
  const set = (path: string[] | null): void =>
    void attempt({ id: 'wire.edit', args: { ids: [w.id], change: { path } } });
  return (
    <div className="field" data-field="path">
      <span className="field-label">Way</span>
      <div className="field-value route">
        {route.found ? (
          route.segments.length ? (
            route.segments.map((id) => <RefLink key={id} to={{ type: 'segment', id }} />)
          ) : (
            <span className="second">both ends are on one node</span>
          )
        ) : (
          <span className="second">{REASONS[route.reason]}</span>
        )}
        {w.path ? (
          <Button look="link" className="route-change" onClick={() => set(null)}>
            Let it take the shortest way
          </Button>
        ) : route.found && route.segments.length ? (
          <Button look="link" className="route-change" onClick={() => set([...route.segments])}>
            Keep it on this way
          </Button>
        ) : null}
      </div>
    </div>
  );
}
