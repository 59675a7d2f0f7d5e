import { isMatingHalf, type MatingHalf, type Part } from '@latchwork/core/model/parts/part';

/**
 * A part in small, with the marks of the sheet: a receptacle has an inner second line, a plug a tongue; a pin is a
 * filled dot, a socket an open ring; a header stands on a hatched board edge, a panel half on a cut line.
 */
export function PartGlyph({ part }: { part: Part }) {
  return (
    <svg
      className="part-glyph"
      width={24}
      height={24}
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      strokeWidth={1.2}
      aria-hidden
    >
      {isMatingHalf(part) ? <Half part={part} /> : <Other part={part} />}
    </svg>
  );
}

function Half({ part }: { part: MatingHalf }) {
  const pitch = Math.min(part.ways, 3);
  return (
    <>
      {part.bodyForm === 'plug' ? <path d="M9 5V2.5h6V5" /> : null}
      <rect x={3} y={5} width={18} height={12} rx={1} />
      {part.bodyForm === 'receptacle' ? <rect x={5} y={7} width={14} height={8} rx={0.5} /> : null}
      {Array.from({ length: pitch }, (_, i) => (
        <Mark key={i} kind={part.contactKind} x={12 + (i - (pitch - 1) / 2) * 4.4} y={11} />
      ))}
      {part.mounting === 'board' ? (
        <path d="M2 19.5h20M5 19.5l-2 3M9 19.5l-2 3M13 19.5l-2 3M17 19.5l-2 3M21 19.5l-2 3" strokeWidth={1} />
      ) : null}
      {part.mounting === 'panel' ? <path d="M1 19.5h6M17 19.5h6" strokeWidth={2} /> : null}
    </>
  );
}

function Mark({ kind, x, y }: { kind: 'pin' | 'socket' | undefined; x: number; y: number }) {
  if (kind === 'pin') return <circle cx={x} cy={y} r={1.6} fill="currentColor" stroke="none" />;
  if (kind === 'socket') return <circle cx={x} cy={y} r={1.4} strokeWidth={1} />;
  return <path d={`M${x - 1.2} ${y}h2.4`} strokeWidth={1} />;
}

function Other({ part }: { part: Part }) {
  switch (part.kind) {
    case 'contact':
      return (
        <>
          <path d="M9 12h9M18 9.5v5" />
          <Mark kind={part.contactKind} x={6.5} y={12} />
        </>
      );
    case 'wire':
      return <path d="M2 15c6 0 6-6 10-6s4 6 10 6" strokeWidth={2} />;
    case 'cable':
      return <path d="M2 9c6 0 6 3 10 3s4-3 10-3M2 12h20M2 15c6 0 6-3 10-3s4 3 10 3" />;
    case 'splice':
      return <path d="M2 12h8M14 8l8-2M14 16l8 2M10 7h4v10h-4z" />;
    case 'covering':
      return <path d="M4 8h16v8H4zM1 12h3M20 12h3M8 8v8M12 8v8M16 8v8" />;
    case 'cavity-plug':
      return <path d="M6 6l12 12M18 6L6 18" />;
    case 'tie':
      return <path d="M9 4h6v5h-6zM12 9a5.5 5.5 0 1 1-2.4.6" />;
    case 'clamp':
      return <path d="M12 4a5 5 0 0 1 5 5c0 3-2 5-5 5s-5-2-5-5a5 5 0 0 1 5-5zM8 13v7h8v-7M12 16.6v.8" />;
    case 'grommet':
      return <path d="M7 5h3v14H7zM14 5h3v14h-3zM10 9h4v6h-4z" />;
    case 'label':
      return <path d="M3 8h13l5 4-5 4H3z" />;
    default:
      return <rect x={6} y={7} width={12} height={10} rx={1} />;
  }
}
