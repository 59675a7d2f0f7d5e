import { openDemo, openFile, openRecent } from '../app/files/open';
import { useHost } from '../app/host';
import { useApp } from '../app/store';
import { Button } from '../ui/button';
import './start-card.css';

/** On an empty sheet: what this is, what to do first. Parts can be dropped through it. */
export function StartCard() {
  const empty = useApp(
    ({ history: { project: p } }) => p.connectors.length + p.equipment.length + p.splices.length === 0,
  );
  const placing = useApp((s) => s.view.placing);
  const demos = useHost((s) => s.demos);
  const recent = useHost((s) => s.recent);
  if (!empty || placing !== null) return null;
  return (
    <section className="start-card" aria-label="Start">
      <h2>An empty sheet</h2>
      <p className="second">
        Drag a housing or a header from the parts shelf and drop it here. Then press on a cavity, drag to
        another and let go: a wire, with contacts that fit.
      </p>
      <div className="start-actions">
        <Button onClick={() => void openFile()}>Open a project</Button>
      </div>
      {demos.length ? (
        <>
          <h3>Look at a demo first</h3>
          <ul>
            {demos.map((d) => (
              <li key={d.demo}>
                <Button look="link" onClick={() => void openDemo(d.demo)}>
                  {d.title}
                </Button>
                <p className="second">{d.supplementaryTitle}</p>
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {recent.length ? (
        <>
          <h3>Go on with</h3>
          <ul>
            {recent.slice(0, 4).map((r) => (
              <li key={r.id}>
                <Button look="link" onClick={() => void openRecent(r.id)}>
                  {r.name}
                </Button>
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </section>
  );
}
