import { ok, problem, type Result } from '../base/result';
import { PART_KIND_NAMES, type Part, type PartKind } from '../model/parts/part';

/** The one record of that part number and of one of those kinds, or why there is none to take. */
export function findPart<K extends PartKind>(
  catalogue: readonly Part[],
  partNumber: string,
  kinds: readonly K[],
): Result<Extract<Part, { kind: K }>, string> {
  const same = catalogue.filter((p) => p.partNumber === partNumber);
  const fitting = same.filter((p): p is Extract<Part, { kind: K }> =>
    (kinds as readonly string[]).includes(p.kind),
  );
  const [first, ...others] = fitting;
  if (first && others.length === 0) return ok(first);
  const wanted = kinds.map((k) => PART_KIND_NAMES[k]).join(' or ');
  if (first)
    return problem(
      `${partNumber} is a part of ${fitting.map((p) => p.maker).join(' and of ')}; the catalogues must hold one`,
    );
  const other = same[0];
  if (other) return problem(`${partNumber} is a ${PART_KIND_NAMES[other.kind]}, not a ${wanted}`);
  return problem(`no catalogue has a ${wanted} with part number ${partNumber}`);
}
