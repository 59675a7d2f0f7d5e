import { routeProblem } from '@latchwork/core/derive/formboard/route-words';
import type { ResolvedWire } from '@latchwork/core/derive/harness';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { attempt } from './fields';
import { RefLink } from './ref-link';

/** The way of a wire over the formboard: the shortest, or one that it must follow. */
export function RouteField({ wire }: { wire: ResolvedWire }) {
  const { route, wire: w } = wire;
  const harness = useApp((s) => s.harness);
  const setView = useApp((s) => s.setView);
  const pin = (path: readonly string[]): void =>
    void attempt({ id: 'wire.pin-path', args: { wires: [w.id], path: [...path] } });
  const unpin = (): void => void attempt({ id: 'wire.unpin-path', args: { wires: [w.id] } });
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
          <span className="second">none: {routeProblem(harness, wire)}</span>
        )}
        {w.path ? (
          <Button look="link" className="route-change" onClick={unpin}>
            Let it take the shortest way
          </Button>
        ) : route.found && route.segments.length ? (
          <Button look="link" className="route-change" onClick={() => pin(route.segments)}>
            Keep it on this way
          </Button>
        ) : null}
        <Button
          look="link"
          className="route-change"
          onClick={() => setView({ page: 'formboard', tool: 'path' })}
        >
          Choose its runs on the formboard
        </Button>
      </div>
    </div>
  );
}
