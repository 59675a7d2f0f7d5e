import { type Result, ok, problem } from '@latchwork/core/base/result';
import { readWhole, utf8Text } from '../../../services/read-whole';

/** Far above any real table. */
const MAX_BYTES = 64 * 1024 * 1024;

/** The text of a table or catalogue, or a reason that names the file. */
export async function readText(path: string): Promise<Result<string, string>> {
  const bytes = await readWhole(path, { as: 'a table or catalogue', maxBytes: MAX_BYTES });
  if (!bytes.ok) return problem(`${path}: ${bytes.problem}`);
  const text = utf8Text(bytes.value);
  return text === null ? problem(`${path}: The file is not UTF-8 text.`) : ok(text);
}
