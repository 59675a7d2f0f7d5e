import { z } from 'zod';
import { type Result, ok, problem } from '../../base/result';
import { carrierName } from '../../derive/label-carrier';
import type { Project } from '../../model/project';
import type { Label } from '../../model/topology';

export const LabelCode = z.enum(['none', 'code-128', 'qr']);
export type LabelCode = z.infer<typeof LabelCode>;

export const CODE_WORDS: Readonly<Record<LabelCode, string>> = {
  'none': 'none', 'code-128': 'Code 128', 'qr': 'QR',
}; // prettier-ignore

/**
 * What the code of a label says: identification number of the project, designator, and the end, 1 or 2, of a wire or cable,
 * with strokes between: `EX-0002/W12/1`, `EX-0002/X11`; of a run the distance from its start in mm, `EX-0002/S3/50`.
 */
export function codeText(project: Project, on: Label['on']): string {
  const end =
    on.at === 'wire-end' || on.at === 'cable-end'
      ? [String(on.end + 1)]
      : on.at === 'station'
        ? [String(on.station.atMm)]
        : [];
  const number = project.titleBlock.identificationNumber;
  return [...(number ? [number] : []), carrierName(project, on), ...end].join('/');
}

/** Narrowest bar that common printers and readers manage, mm; common practice (7.5 mil for bars, 10 mil for fields). */
const LEAST_MODULE_MM = { 'code-128': 0.19, 'qr': 0.25 } as const; // prettier-ignore

/** A bar wider than this only takes room, mm. */
const MOST_MODULE_MM = 0.5;

/**
 * The width that a code takes, mm, in a room of that size; or why it cannot stand there. The encoder may need fewer modules
 * than are reckoned with here, never more: its bars are then wider.
 */
export function codeWidthMm(
  kind: Exclude<LabelCode, 'none'>,
  text: string,
  room: { readonly widthMm: number; readonly heightMm: number },
): Result<number, string> {
  const modules = kind === 'qr' ? qrSide(text) : bars(text);
  if (!modules.ok) return modules;
  const free = kind === 'qr' ? Math.min(room.widthMm, room.heightMm) : room.widthMm;
  const moduleMm = free / modules.value;
  if (moduleMm < LEAST_MODULE_MM[kind])
    return problem(
      `no ${CODE_WORDS[kind]}: on this size a bar would be ${moduleMm.toFixed(2)} mm, less than ${LEAST_MODULE_MM[kind]} mm can be read`,
    );
  return ok(kind === 'qr' ? free : Math.min(free, modules.value * MOST_MODULE_MM));
}

/** Modules of a Code 128 in set B with its quiet zones (ISO/IEC 15417: start and check 11 each, stop 13, 10 beside). */
function bars(text: string): Result<number, string> {
  const at = [...text].findIndex((c) => c < ' ' || c > '~');
  if (at >= 0)
    return problem(
      `no Code 128: it cannot hold "${[...text][at] ?? ''}", sign ${at + 1} of "${text}"; a QR code can`,
    );
  return ok(11 * text.length + 11 + 11 + 13 + 20);
}

/** Bytes that versions 1 to 10 hold at level M in byte mode (ISO/IEC 18004, table 7; from memory, held against an encoder by a test). */
const QR_BYTES = [14, 26, 42, 62, 84, 106, 122, 152, 180, 213] as const;

/** Fields along a side with the quiet zone of 4 on both sides. */
function qrSide(text: string): Result<number, string> {
  const version = QR_BYTES.findIndex((most) => utf8Length(text) <= most) + 1;
  return version > 0
    ? ok(17 + 4 * version + 8)
    : problem(`no QR: "${text}" is longer than ${QR_BYTES[9]} bytes`);
}

function utf8Length(text: string): number {
  let bytes = 0;
  for (const c of text) {
    const point = c.codePointAt(0) ?? 0;
    bytes += point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
  }
  return bytes;
}
