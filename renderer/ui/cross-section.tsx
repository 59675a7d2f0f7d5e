import { type Colour, colourText } from '@latchwork/core/model/colour';
import { lengthText } from '@latchwork/core/model/length-text';
import './cross-section.css';
import { GNYE_STRIPE, WIRE_COLOURS } from './wire-colours';

/** Millimetres; the centre of the bundle is 0/0. */
interface Round {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

export interface SectionWire extends Round {
  readonly id: string;
  /** What the pointer is told: designator, colour, size. */
  readonly name: string;
  /** Null: not known, drawn as an open casing. Absent: nobody asked. */
  readonly colour?: Colour | null;
}

/** What wires share: the circle that a twist sweeps, or the jacket of a cable. */
export interface SectionHull extends Round {
  readonly id: string;
  readonly name: string;
  readonly form: 'twist' | 'jacket';
  readonly colour?: Colour | undefined;
}

export interface SectionRing {
  readonly id: string;
  readonly name: string;
  readonly innerR: number;
  readonly outerR: number;
}

/** A bundle cut across. */
export interface Section {
  readonly wires: readonly SectionWire[];
  readonly hulls: readonly SectionHull[];
  /** Coverings, the innermost first. */
  readonly rings: readonly SectionRing[];
  /** Of the wires as laid; the wires themselves are drawn as tightly as they pack. */
  readonly laidR: number;
}

export interface CrossSectionProps {
  readonly section: Section;
  readonly label: string;
  readonly unit?: 'mm' | 'in';
  /** Ids that stand out. */
  readonly lit?: ReadonlySet<string>;
  readonly onHover?: (name: string | null) => void;
  readonly onPick?: (id: string) => void;
}

/** Width of the drawing on the screen at which letters are still legible, px. */
const WIDTH_PX = 260;
const LETTER_PX = 9;

/** The picture of a cross-section: each wire in its colour with its stripes, coverings as rings, the diameter below. */
export function CrossSection({ section, label, unit = 'mm', lit, onHover, onPick }: CrossSectionProps) {
  const outerR = section.rings.at(-1)?.outerR ?? section.laidR;
  const half = outerR * 1.08;
  const pxPerMm = WIDTH_PX / (2 * half);
  const point = (name: string, id?: string) => ({
    onPointerEnter: () => onHover?.(name),
    onPointerLeave: () => onHover?.(null),
    ...(id !== undefined && onPick ? { onClick: () => onPick(id), 'data-pick': '' } : {}),
  });
  return (
    <svg
      className="cross-section"
      viewBox={`${-half} ${-half} ${2 * half} ${2 * half + 26 / pxPerMm}`}
      role="img"
      aria-label={label}
    >
      {section.rings.map((ring) => (
        <path key={ring.id} className="section-ring" d={ringPath(ring)} {...point(ring.name, ring.id)}>
          <title>{ring.name}</title>
        </path>
      ))}
      <circle className="section-laid" r={section.laidR} />
      {section.hulls.map((hull) => (
        <circle
          key={hull.id}
          className="section-hull"
          data-form={hull.form}
          cx={hull.x}
          cy={hull.y}
          r={hull.r}
          style={
            hull.colour && hull.form === 'jacket' ? { stroke: WIRE_COLOURS[hull.colour.base] } : undefined
          }
          {...point(hull.name)}
        >
          <title>{hull.name}</title>
        </circle>
      ))}
      {section.wires.map((w) => (
        <g
          key={w.id}
          className="section-wire"
          data-lit={lit?.has(w.id) || undefined}
          {...point(w.name, w.id)}
        >
          <title>{w.name}</title>
          <WireDisc wire={w} />
          {w.colour && 2 * w.r * pxPerMm > LETTER_PX * (0.62 * colourText(w.colour).length + 0.8) ? (
            <text x={w.x} y={w.y} fontSize={LETTER_PX / pxPerMm} strokeWidth={3 / pxPerMm}>
              {colourText(w.colour)}
            </text>
          ) : null}
        </g>
      ))}
      <Dimension radius={outerR} y={half} pxPerMm={pxPerMm} unit={unit} />
    </svg>
  );
}

function WireDisc({ wire: { x, y, r, colour } }: { wire: SectionWire }) {
  const bands = colour ? stripesOf(colour) : [];
  return (
    <>
      <circle
        cx={x}
        cy={y}
        r={r}
        className="section-insulation"
        style={colour ? { fill: WIRE_COLOURS[colour.base] } : undefined}
        data-colour={colour ? colourText(colour) : colour === null ? 'not known' : undefined}
      />
      {bands.map((fill, i) => (
        <path key={i} d={bandPath(x, y, r, i, bands.length)} style={{ fill }} />
      ))}
      <circle cx={x} cy={y} r={r} className="section-casing" />
    </>
  );
}

const stripesOf = (colour: Colour): readonly string[] =>
  colour.base === 'GNYE' ? [GNYE_STRIPE] : (colour.stripes ?? []).map((c) => WIRE_COLOURS[c]);

/** The i-th of n stripes: what two parallel chords, rising to the right, cut out of the circle. */
export function bandPath(x: number, y: number, r: number, i: number, n: number): string {
  const centre = (i - (n - 1) / 2) * (1.3 / Math.max(n, 2)) * r;
  const half = (0.42 / Math.max(n, 1.4)) * r;
  const at = (d: number, side: 1 | -1): string => {
    const chord = side * Math.sqrt(Math.max(0, r * r - d * d));
    // The normal of the chords points down to the right, its perpendicular down to the left.
    return `${x + (d - chord) * Math.SQRT1_2} ${y + (d + chord) * Math.SQRT1_2}`;
  };
  const [near, far] = [centre - half, centre + half];
  const arc = `A${r} ${r} 0 0 0 `;
  return `M${at(near, -1)} L${at(near, 1)} ${arc}${at(far, 1)} L${at(far, -1)} ${arc}${at(near, -1)}Z`;
}

const ringPath = ({ innerR, outerR }: SectionRing): string =>
  [outerR, innerR].map((r) => `M${-r} 0A${r} ${r} 0 1 0 ${r} 0A${r} ${r} 0 1 0 ${-r} 0Z`).join('');

/** The outside diameter as a dimension line under the drawing. */
function Dimension({
  radius,
  y,
  pxPerMm,
  unit,
}: {
  radius: number;
  y: number;
  pxPerMm: number;
  unit: 'mm' | 'in';
}) {
  const px = (n: number): number => n / pxPerMm;
  const line = y + px(6);
  return (
    <g className="section-dimension">
      <path
        d={`M${-radius} ${line - px(4)}v${px(8)}M${radius} ${line - px(4)}v${px(8)}M${-radius} ${line}H${radius}`}
      />
      <text x={0} y={line + px(16)} fontSize={px(12)}>
        ⌀ {lengthText(2 * radius, unit, unit === 'mm' ? 2 : 3)}
      </text>
    </g>
  );
}
