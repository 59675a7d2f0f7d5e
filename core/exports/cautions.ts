import type { Project } from '../model/project';

/** Printed with every document, first of all. */
export const AID_NOT_AUTHORITY =
  'Checked against the limits entered. An aid, not an authority: local codes, product standards and a competent, licensed person decide.';

/**
 * What a reader must know before using a document. Each line is a caution of its own; the first stands alone
 * where there is room for one only.
 */
export function cautionsOf(project: Project): readonly string[] {
  return [
    AID_NOT_AUTHORITY,
    'A blank is not a pass: what could not be verified is open.',
    'Ratings hold for the conditions they were stated for: ambient, bundle, altitude, loaded ways.',
    'Low voltage is not low hazard: batteries and supplies deliver fault current.',
    ...(project.regulated
      ? [
          'Regulated use: safety findings need two named approvers; the competent authority decides on departures.',
        ]
      : []),
  ];
}

/** For papers that go to the bench. */
export const SHOP_CAUTIONS: readonly string[] = [
  'Withstand tests endanger operators; presses and blades pinch and cut. No work on live circuits.',
  'Where a swap is dangerous, neither colour nor label alone keeps it from happening.',
];
