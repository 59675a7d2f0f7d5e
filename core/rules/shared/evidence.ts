import type { Equipment } from '../../model/equipment';
import type { Limit, LimitSet } from '../../model/limit-set';
import type { Part } from '../../model/parts/part';
import type { Evidence, Need } from '../finding';
import { partRef, partSource } from '../refs';

/** A value as evidence; nothing when it is not stated. */
export function fact(
  label: string,
  value: string | number | undefined,
  source: string,
  unit?: string,
): Evidence[] {
  if (value === undefined) return [];
  return [unit === undefined ? { label, value, source } : { label, value, unit, source }];
}

export const partFact = (
  part: Part,
  label: string,
  value: string | number | undefined,
  unit?: string,
): Evidence[] => fact(label, value, partSource(part), unit);

/** A limit of the project's set, with where the set has it from. */
export const limitFact = (label: string, limit: Limit | undefined, set: LimitSet): Evidence[] =>
  fact(
    label,
    limit?.value,
    `limit set ${set.name} ${set.revision}, ${limit?.source ?? ''}${limit?.verified ? '' : ' (not verified)'}`,
    limit?.unit,
  );

/** Where values typed for a board or a panel come from. */
export const equipmentSource = (equipment: Equipment): string =>
  `project, ${equipment.kind} ${equipment.designator}`;

/** A field that a part record lacks. */
export const partNeed = (part: Part, field: string, name: string): Need => ({
  what: `${name} of ${part.partNumber}`,
  at: partRef(part),
  field,
});

/** A field that was not typed for a board or a panel. */
export const equipmentNeed = (equipment: Equipment, field: string, name: string): Need => ({
  what: `${name} of ${equipment.designator}`,
  at: { type: 'equipment', id: equipment.id },
  field,
});

/** A limit that the project's set lacks. The set has no id of its own; it belongs to the project. */
export const limitNeed = (id: string, set: LimitSet): Need => ({
  what: `limit ${id} of limit set ${set.name}`,
  at: { type: 'project', id: set.name },
  field: `limitSet.${id}`,
});
