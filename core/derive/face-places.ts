import type { MatingHalf } from '../model/parts/part';
import { cavityLayoutOf } from './cavity-layout';

/** The two opposite sides from which a connector is looked at. */
export type FaceView = 'mating-face' | 'wire-entry-face';

export const FACE_VIEWS: readonly FaceView[] = ['mating-face', 'wire-entry-face'];

/** Centre of a cavity from the middle of the pattern, mm; x to the right, y down, as seen in the view. */
export interface FacePlace {
  readonly cavity: string;
  readonly xMm: number;
  readonly yMm: number;
}

export interface FacePlaces {
  readonly places: readonly FacePlace[];
  /** From the first to the last centre. */
  readonly spanXMm: number;
  readonly spanYMm: number;
  readonly pitchMm: number;
  readonly rowPitchMm: number;
  /** Fields that the record does not state and the pattern assumes. */
  readonly assumed: readonly string[];
}

/** A pattern without a pitch is drawn in this one, and said to be no scale drawing. */
const NO_PITCH_MM = 3;

/**
 * Where the cavities are, from the pitch and row pitch of the record. The wire-entry view is (-x, y) of the mating face:
 * one looks from the other side with the same edge up.
 */
export function facePlaces(half: MatingHalf, view: FaceView): FacePlaces {
  const layout = cavityLayoutOf(half);
  const pitchMm = half.pitchMm ?? NO_PITCH_MM;
  const rowPitchMm = half.rowPitchMm ?? pitchMm;
  const side = view === 'mating-face' ? 1 : -1;
  return {
    places: layout.places.map((p) => ({
      cavity: p.cavity,
      xMm: side * (p.column - (layout.columns - 1) / 2) * pitchMm || 0,
      yMm: (p.row - (layout.rows - 1) / 2) * rowPitchMm,
    })),
    spanXMm: (layout.columns - 1) * pitchMm,
    spanYMm: (layout.rows - 1) * rowPitchMm,
    pitchMm,
    rowPitchMm,
    assumed: [
      ...(half.pitchMm === undefined ? ['pitch'] : []),
      ...(half.rowPitchMm === undefined && layout.rows > 1 ? ['row pitch'] : []),
      ...layout.assumed.map((f) => ASSUMED_WORDS[f]),
    ],
  };
}

const ASSUMED_WORDS = {
  rows: 'number of rows',
  numbering: 'numbering',
  cavityOneCorner: 'corner of cavity 1',
} as const;
