import type { ReactNode } from 'react';
import type { Part } from '@latchwork/core/model/parts/part';
import { PartGlyph } from '../shelf/part-glyph';

/** A part as a field: what is chosen, and on a press the choice. */
export function PartButton({
  label,
  part,
  choose,
  name,
  empty = 'none chosen',
  after,
}: {
  label: string;
  part: Part | undefined;
  choose: () => void;
  name?: string;
  empty?: string;
  after?: ReactNode;
}) {
  return (
    <div className="field" data-field={name}>
      <span className="field-label">{label}</span>
      <div>
        <button type="button" className="part-button" title={part?.description} onClick={choose}>
          <span className="visually-hidden">{label}: </span>
          {part ? <PartGlyph part={part} /> : null}
          <span className={part ? 'mono' : 'second'}>{part?.partNumber ?? empty}</span>{' '}
          <span className="part-change">Change</span>
        </button>
        {after}
      </div>
    </div>
  );
}
