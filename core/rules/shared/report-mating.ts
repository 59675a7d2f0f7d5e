import type { ResolvedMate } from '../../derive/harness';
import {
  FIELDS_OF,
  matingFieldName,
  matingObstacles,
  matingValue,
  type ObstacleCode,
} from '../../derive/mating';
import type { Report } from '../rule';
import { partFact, partNeed } from './evidence';
import { mateSides } from './mate-sides';

/**
 * Reports what of the given kinds keeps the halves of a mate apart. The finding's `reasons` joins the texts; one
 * known obstacle decides even while other fields are unknown.
 */
export function reportMating(mate: ResolvedMate, codes: readonly ObstacleCode[], report: Report): void {
  const sides = mateSides(mate);
  if (!sides) return;
  const fields = codes.flatMap((code) => FIELDS_OF[code]);
  const found = matingObstacles(sides.a, sides.b);
  const obstacles = found.obstacles.filter((o) => codes.includes(o.code));
  const unknown = found.unknown.filter((u) => fields.includes(u.field));
  const evidence = fields.flatMap((field) =>
    [sides.a, sides.b].flatMap((half) =>
      partFact(
        half,
        `${matingFieldName(field)} of ${half.partNumber}`,
        matingValue(half, field),
        field.endsWith('Mm') ? 'mm' : undefined,
      ),
    ),
  );
  const common = { at: sides.at, evidence };
  if (obstacles.length > 0) {
    const reasons = obstacles.map((o) => o.text).join('; ');
    report.fail({ ...common, data: { ...sides.names, reasons } });
  } else if (unknown.length > 0) {
    const needs = unknown.map((u) => partNeed(u.part, u.field, matingFieldName(u.field)));
    report.cannotVerify({ ...common, data: sides.names, needs });
  } else report.pass();
}
