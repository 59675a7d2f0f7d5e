import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface PitchError extends Answer {
  /** First contact to last. */
  readonly endToEndMm: number;
  /** At each end, when the two are centred on each other. */
  readonly perEndMm: number;
  /** Most ways that a given play takes up, when centred; absent without a play, or for equal pitches. */
  readonly waysMax: number | undefined;
}

const GEOMETRY: CalcSource = {
  title: 'Plain geometry: the error grows with every way, (n - 1) x |p1 - p2|',
  verified: true,
};

/** Error from the first to the last of n ways, mm: (n - 1) |p1 - p2|. */
export const pitchErrorMm = (ways: number, pitchMm: number, otherPitchMm: number): number =>
  (ways - 1) * Math.abs(pitchMm - otherPitchMm);

const inputs = z.strictObject({
  ways: field(z.int().positive(), 'Ways in the row'),
  pitchMm: field(z.number().positive(), 'Pitch', 'mm'),
  otherPitchMm: field(z.number().positive(), 'Pitch of the other half', 'mm'),
  playMm: field(z.number().nonnegative().optional(), 'Play of a contact to each side', 'mm'),
});

/** What two pitches that look alike (2.50 and 2.54, 1.25 and 1.27 mm) add up to over a row. */
export const pitchError = calculation<typeof inputs, PitchError>({
  id: 'pitch-error',
  title: 'Error of unlike pitches',
  about: 'How far the last contact is off when two halves differ in pitch.',
  inputs,
  outputs: {
    endToEndMm: { label: 'First to last', unit: 'mm' },
    perEndMm: { label: 'At each end, centred', unit: 'mm' },
    waysMax: { label: 'Ways that the play takes up', unit: '' },
  },
  sources: [GEOMETRY],
  run({ ways, pitchMm, otherPitchMm, playMm }) {
    const endToEndMm = pitchErrorMm(ways, pitchMm, otherPitchMm);
    const step = Math.abs(pitchMm - otherPitchMm);
    return answer({
      endToEndMm,
      perEndMm: endToEndMm / 2,
      waysMax: playMm === undefined || step < 1e-12 ? undefined : Math.floor((2 * playMm) / step + 1e-9) + 1,
      working: {
        formula: 'error = (ways - 1) x |p1 - p2|',
        figures: [
          figure('Ways', ways),
          figure('Pitch', pitchMm, 'mm'),
          figure('Other pitch', otherPitchMm, 'mm'),
          ...(playMm === undefined ? [] : [figure('Play', playMm, 'mm')]),
        ],
        sources: [GEOMETRY],
        notes: [],
      },
    });
  },
});
