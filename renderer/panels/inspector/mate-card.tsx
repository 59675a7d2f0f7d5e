import type { ResolvedMate } from '@latchwork/core/derive/harness';
import { geometryMapOf } from '@latchwork/core/derive/mate-map';
import { matingObstacles } from '@latchwork/core/derive/mating';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';

const SOURCES = {
  declared: 'typed here',
  geometry: 'from where the cavities sit on both mating faces',
  unknown: 'not known: same place is assumed',
} as const;

/** Two halves plugged together: whether they can be, and which number meets which. */
export function MateCard({ mate }: { mate: ResolvedMate }) {
  const dispatch = useApp((s) => s.dispatch);
  const { a, b, map } = mate;
  const [left, right] = [a.resolved.connector, b.resolved.connector];
  const halves = [a.resolved.part, b.resolved.part] as const;
  const said = halves[0] && halves[1] ? matingObstacles(halves[0], halves[1]) : null;
  const byGeometry = halves[0] && halves[1] ? geometryMapOf(halves[0], halves[1]) : null;
  const setMap = (pairs: { a: string; b: string }[] | null): void => {
    dispatch({ id: 'mate.set-map', args: { id: mate.mate.id, map: pairs } });
  };
  const typed = map.source === 'declared';
  const rows = a.cavities.map((c) => ({ a: c.cavity, b: map.fromA.get(c.cavity) ?? '' }));
  return (
    <>
      <CardHead name={`${left.designator}–${right.designator}`} kind="plugged together" />
      <Section title="The two halves">
        <table className="mini-table">
          <tbody>
            {[a, b].map((use) => (
              <tr key={use.resolved.connector.id}>
                <td>
                  <RefLink to={{ type: 'connector', id: use.resolved.connector.id }} />
                </td>
                <td className="mono">{use.resolved.part?.partNumber}</td>
                <td className="second">
                  {use.resolved.part?.bodyForm ?? 'body form not known'},{' '}
                  {use.resolved.part?.contactKind ?? 'contacts not known'}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        {said?.obstacles.length ? (
          <ul className="refused">
            {said.obstacles.map((o) => (
              <li key={o.text}>{o.text}</li>
            ))}
          </ul>
        ) : (
          <p className="second">
            {said && said.unknown.length === 0
              ? 'Nothing speaks against it.'
              : 'Cannot be verified: the records do not say enough.'}
          </p>
        )}
        <div className="card-actions">
          <Button onClick={() => dispatch({ id: 'objects.remove', args: { ids: [mate.mate.id] } })}>
            Unplug
          </Button>
        </div>
      </Section>
      <Section title="Which number meets which">
        <p className="second">{SOURCES[map.source]}</p>
        <table className="mini-table">
          <thead>
            <tr>
              <th scope="col">{left.designator}</th>
              <th scope="col">Signal</th>
              <th scope="col">{right.designator}</th>
              <th scope="col">Signal</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.a}>
                <td className="mono">{row.a}</td>
                <td className="mono">{signalAt(a, row.a)}</td>
                <td className="mono">
                  {typed ? (
                    <select
                      className="input mono"
                      aria-label={`Meets ${left.designator}:${row.a}`}
                      value={row.b}
                      onChange={(e) =>
                        setMap(
                          rows
                            .map((r) => (r.a === row.a ? { ...r, b: e.target.value } : r))
                            .filter((r) => r.b !== ''),
                        )
                      }
                    >
                      <option value="">–</option>
                      {b.cavities.map((c) => (
                        <option key={c.cavity}>{c.cavity}</option>
                      ))}
                    </select>
                  ) : (
                    row.b || '–'
                  )}
                </td>
                <td className="mono">{row.b ? signalAt(b, row.b) : null}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <div className="card-actions">
          {typed ? (
            <Button onClick={() => setMap(null)}>Back to the numbers of the faces</Button>
          ) : (
            <Button
              onClick={() =>
                setMap(
                  (byGeometry?.pairs.length
                    ? [...byGeometry.pairs]
                    : rows.map((r) => ({ a: r.a, b: r.a }))
                  ).map((p) => ({ ...p })),
                )
              }
            >
              Type the numbers
            </Button>
          )}
        </div>
      </Section>
    </>
  );
}

const signalAt = (use: ResolvedMate['a'], cavity: string): string | undefined => {
  const c = use.cavities.find((x) => x.cavity === cavity);
  return c?.signal?.name ?? c?.ends[0]?.wire.signal?.name;
};
