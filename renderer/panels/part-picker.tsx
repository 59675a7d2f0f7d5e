import { useMemo, useState } from 'react';
import type { Part } from '@latchwork/core/model/parts/part';
import { Button } from '../ui/button';
import { DialogFrame, ask } from '../ui/dialogs';
import { VirtualList } from '../ui/virtual-list';
import './part-picker.css';
import { PartLine } from './shelf/part-line';
import { NO_FILTER, findParts } from './shelf/part-search';
import './shelf/shelf.css';

/** How a part suits the place that it is chosen for. */
export interface Judgement {
  readonly group: string;
  /** Groups stand in this order. */
  readonly rank: number;
  readonly note?: string | undefined;
}

export interface PartQuestion<P extends Part> {
  readonly title: string;
  readonly parts: readonly P[];
  readonly current?: string | undefined;
  readonly judge?: (part: P) => Judgement;
  /** Offers to take the part away. */
  readonly none?: string | undefined;
}

export type PartAnswer<P extends Part> = { readonly part: P | null };

/** Lets the user choose a part: those that fit first, the others below with what speaks against them. */
export const askPart = <P extends Part>(question: PartQuestion<P>): Promise<PartAnswer<P> | null> =>
  ask<PartAnswer<P>>((done) => <PartDialog question={question} done={done} />, { wide: true });

type Row<P extends Part> =
  { readonly heading: string } | { readonly part: P; readonly note: string | undefined };

function PartDialog<P extends Part>({
  question,
  done,
}: {
  question: PartQuestion<P>;
  done: (answer: PartAnswer<P> | null) => void;
}) {
  const { title, parts, current, judge, none } = question;
  const [text, setText] = useState('');
  const [chosen, setChosen] = useState<P | null>(parts.find((p) => p.id === current) ?? null);
  const rows = useMemo((): Row<P>[] => {
    const found = findParts(parts, { ...NO_FILTER, text }) as readonly P[];
    if (!judge) return found.map((part) => ({ part, note: undefined }));
    const judged = found
      .map((part) => ({ part, said: judge(part) }))
      .sort((a, b) => a.said.rank - b.said.rank);
    return judged.flatMap(({ part, said }, i): Row<P>[] => [
      ...(judged[i - 1]?.said.group === said.group ? [] : [{ heading: said.group }]),
      { part, note: said.note },
    ]);
  }, [parts, text, judge]);

  return (
    <DialogFrame
      title={title}
      buttons={
        <>
          {none ? (
            <Button look="plain" className="picker-none" onClick={() => done({ part: null })}>
              {none}
            </Button>
          ) : null}
          <Button onClick={() => done(null)}>Cancel</Button>
          <Button look="primary" disabled={chosen === null} onClick={() => done({ part: chosen })}>
            Choose
          </Button>
        </>
      }
    >
      <input
        className="input"
        type="search"
        autoFocus
        aria-label="Search parts"
        placeholder="Part number or words"
        value={text}
        onChange={(e) => setText(e.target.value)}
      />
      <div className="picker-list">
        {rows.length === 0 ? (
          <p className="second shelf-empty">No part is left to choose from.</p>
        ) : (
          <VirtualList
            label={title}
            items={rows}
            keyOf={(row) => ('part' in row ? row.part.id : row.heading)}
            heightOf={(row) => ('part' in row ? 48 : 32)}
            isHeading={(row) => !('part' in row)}
            isSelected={(row) => 'part' in row && row.part.id === chosen?.id}
            onChoose={(row) => 'part' in row && setChosen(row.part)}
            onAct={(row) => 'part' in row && done({ part: row.part })}
            titleOf={(row) => ('part' in row ? row.part.description : undefined)}
            render={(row) =>
              'part' in row ? <PartLine part={row.part} note={row.note} /> : <>{row.heading}</>
            }
          />
        )}
      </div>
    </DialogFrame>
  );
}
