import { memo } from 'react';
import { codeRectangles, type ModulesOf } from '@latchwork/core/exports/drawing/code-modules';
import type { Drawing, DrawingItem } from '@latchwork/core/exports/drawing/drawing';
import { figurePath, rectanglesPath } from '@latchwork/core/exports/drawing/figure-path';
import { DASH_MM, lineMmOf, lineOf } from '@latchwork/core/exports/drawing/stroke-of';
import { CAPITALS } from '@latchwork/core/exports/drawing/text-width';
import { uncodedText } from '@latchwork/core/exports/drawing/uncoded-text';
import './drawing-view.css';
import { useModulesOf } from './use-modules-of';

export interface DrawingViewProps {
  readonly drawing: Drawing;
  /** What the picture shows, for those who hear it. */
  readonly label: string;
  /** Size on the screen; absent: as wide as its place allows. */
  readonly pxPerMm?: number;
}

/** A drawing of a document, in the ink of the theme. The same figures go to paper and into files. */
export const DrawingView = memo(function DrawingView({ drawing, label, pxPerMm }: DrawingViewProps) {
  const modulesOf = useModulesOf(drawing);
  const { widthMm, heightMm, items } = drawing;
  return (
    <svg
      className="drawing"
      role="img"
      aria-label={label}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      width={pxPerMm === undefined ? '100%' : widthMm * pxPerMm}
      height={pxPerMm === undefined ? undefined : heightMm * pxPerMm}
    >
      {items.map((item, i) => (
        <Item key={i} item={item} modulesOf={modulesOf} />
      ))}
    </svg>
  );
});

function Item({ item, modulesOf }: { item: DrawingItem; modulesOf: ModulesOf | undefined }) {
  if (item.kind === 'text') return <Words item={item} />;
  if (item.kind === 'code') return <Code item={item} modulesOf={modulesOf} />;
  const line = lineOf(item);
  return (
    <path
      d={figurePath(item)}
      data-fill={item.fill}
      data-line={line ?? undefined}
      strokeWidth={line === null ? undefined : lineMmOf(item)}
      strokeDasharray={item.dash && DASH_MM[item.dash].join(' ')}
    />
  );
}

const ANCHORS = { left: undefined, middle: 'middle', right: 'end' } as const;

function Words({ item }: { item: Extract<DrawingItem, { kind: 'text' }> }) {
  return (
    <text
      x={item.at.x}
      y={item.at.y}
      data-look={item.look}
      fontSize={item.heightMm / CAPITALS}
      textAnchor={ANCHORS[item.align ?? 'left']}
      transform={item.angleDeg ? `rotate(${item.angleDeg} ${item.at.x} ${item.at.y})` : undefined}
    >
      {item.text}
    </text>
  );
}

/** Black on white whatever the theme: readers need it. */
function Code({
  item,
  modulesOf,
}: {
  item: Extract<DrawingItem, { kind: 'code' }>;
  modulesOf: ModulesOf | undefined;
}) {
  const { at, widthMm, heightMm } = item;
  const code = modulesOf?.(item.symbology, item.text);
  return (
    <>
      <rect className="drawing-code-ground" x={at.x} y={at.y} width={widthMm} height={heightMm} />
      {code && <path className="drawing-code" d={rectanglesPath(codeRectangles(item, code))} />}
      {code === null && <Words item={uncodedText(item)} />}
    </>
  );
}
