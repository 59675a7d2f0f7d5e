import type { Finding } from '@latchwork/core/rules/finding';
import { readMeetings, readPlugged, type Plugged } from '@latchwork/core/rules/shared/wrong-plug-words';
import { useApp } from '../../app/store';
import { placeHalves, wayBetween, type PlacedHalf } from './wrong-plug-layout';
import './wrong-plug-picture.css';

/** Both ways of plugging side by side, and what meets what when it is the wrong one. */
export function WrongPlugPicture({ finding }: { finding: Finding }) {
  const connectors = useApp((s) => s.history.project.connectors);
  const right = readPlugged(finding.data['right']);
  const wrong = readPlugged(finding.data['wrong']);
  const meetings = readMeetings(finding.evidence);
  if (wrong.length === 0) return null;
  const halves = placeHalves(right, wrong);
  const about = (designator: string): string =>
    connectors.find((c) => c.designator === designator)?.description ?? '';
  return (
    <section className="wrong-plug" aria-label="Both ways of plugging">
      <h3>Both ways of plugging</h3>
      <div className="wrong-plug-ways">
        <Way title="As designed" kind="right" halves={halves} pairs={right} about={about} />
        <Way title="Confused" kind="wrong" halves={halves} pairs={wrong} about={about} />
      </div>
      <table className="evidence">
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">What meets</th>
            <th scope="col">What comes of it</th>
          </tr>
        </thead>
        <tbody>
          {meetings.map((m) => (
            <tr key={m.where}>
              <td className="mono">{m.where}</td>
              <td>{m.signals}</td>
              <td>{m.consequence}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const BOX = { width: 104, height: 36 } as const;
const PAD = 24;

interface WayProps {
  readonly title: string;
  readonly kind: 'right' | 'wrong';
  readonly halves: readonly PlacedHalf[];
  readonly pairs: readonly Plugged[];
  readonly about: (designator: string) => string;
}

function Way({ title, kind, halves, pairs, about }: WayProps) {
  const widthPx = Math.max(...halves.map((h) => h.x)) + BOX.width + 2 * PAD;
  const heightPx = Math.max(...halves.map((h) => h.y)) + BOX.height + PAD;
  const words = pairs.map((p) => `${p.free} in ${p.into}`).join(', ');
  return (
    <figure>
      <figcaption>{title}</figcaption>
      <svg
        viewBox={`${-PAD} ${-PAD / 2} ${widthPx} ${heightPx}`}
        role="img"
        aria-label={`${title}: ${words || 'nothing is plugged in'}`}
      >
        {pairs.map((p) => {
          const [a, b] = [p.free, p.into].map((name) => halves.find((h) => h.name === name));
          if (!a || !b) return null;
          const way = wayBetween(a, b, BOX);
          return (
            <g key={`${p.free} ${p.into}`} className={`plugged plugged-${kind}`}>
              <path d={way.path} />
              {kind === 'wrong' ? (
                <path d={`M${way.x - 5} ${way.y - 5}l10 10m0 -10l-10 10`} className="plugged-cross" />
              ) : null}
            </g>
          );
        })}
        {halves.map((h) => (
          <g key={h.name} transform={`translate(${h.x} ${h.y})`} className="plugged-half">
            <title>{[h.name, about(h.name)].filter(Boolean).join(': ')}</title>
            <rect {...BOX} rx={h.column === 0 ? 9 : 2} />
            <text x={BOX.width / 2} y={about(h.name) ? 15 : 22} className="plugged-name">
              {h.name}
            </text>
            {about(h.name) ? (
              <text x={BOX.width / 2} y={29} className="plugged-about">
                {shortened(about(h.name))}
              </text>
            ) : null}
          </g>
        ))}
      </svg>
    </figure>
  );
}

const LETTERS = 18;
const shortened = (text: string): string =>
  text.length > LETTERS ? `${text.slice(0, LETTERS - 1).trimEnd()}…` : text;
