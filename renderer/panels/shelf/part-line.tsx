import type { Part } from '@latchwork/core/model/parts/part';
import { PartGlyph } from './part-glyph';

/** A part as a line of a list: glyph, number, description. */
export function PartLine({ part, note }: { part: Part; note?: string | undefined }) {
  return (
    <div className="part-line">
      <PartGlyph part={part} />
      <div>
        <div className="part-number mono">
          {part.partNumber}
          {part.lifecycle && part.lifecycle !== 'active' ? (
            <span className="chip">{part.lifecycle.replaceAll('-', ' ')}</span>
          ) : null}
        </div>
        <div className="part-about">{note ?? part.description}</div>
      </div>
    </div>
  );
}
