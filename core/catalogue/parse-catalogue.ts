import { ok, problem, type Result } from '../base/result';
import { issuesOf, parseJson } from '../model/parse-json';
import type { Part } from '../model/parts/part';
import type { Issue, OpenProblem } from '../model/problem';
import { Catalogue, CATALOGUE_FORMAT } from './catalogue';

const KNOWN_VERSION = 1;

/** Text of a catalogue file to a catalogue, or a named problem with its place. Nothing is repaired. */
export function parseCatalogue(text: string): Result<Catalogue, OpenProblem> {
  const json = parseJson(text);
  if (!json.ok) return json;
  const raw = json.value;
  const format = typeof raw === 'object' && raw !== null && 'format' in raw ? raw.format : undefined;
  if (format !== CATALOGUE_FORMAT)
    return problem({
      code: 'not-ours',
      expected: CATALOGUE_FORMAT,
      found: JSON.stringify(format) ?? 'nothing',
    });
  const version = (raw as { formatVersion?: unknown }).formatVersion;
  if (typeof version === 'number' && version > KNOWN_VERSION)
    return problem({ code: 'too-new', found: version, known: KNOWN_VERSION });
  const parsed = Catalogue.safeParse(raw);
  if (!parsed.success) return problem({ code: 'bad-shape', issues: issuesOf(parsed.error) });
  const twice = idsUsedTwice(parsed.data.parts);
  return twice.length ? problem({ code: 'bad-shape', issues: twice }) : ok(parsed.data);
}

/** The records as a project embeds them: each says which catalogue it comes from. */
export const partsToEmbed = (catalogue: Catalogue): readonly Part[] =>
  catalogue.parts.map((part) => ({
    ...part,
    catalogue: { name: catalogue.name, revision: catalogue.revision },
  }));

function idsUsedTwice(parts: readonly Part[]): Issue[] {
  const seen = new Set<string>();
  return parts.flatMap((part, i) => {
    if (!seen.has(part.id)) {
      seen.add(part.id);
      return [];
    }
    return [{ path: `parts[${i}].id`, message: `id ${part.id} is used twice` }];
  });
}
