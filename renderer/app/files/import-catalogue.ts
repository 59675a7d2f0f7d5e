import type { CatalogueAnswer } from '@latchwork/core/bridge/answers';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import type { Catalogue } from '@latchwork/core/catalogue/catalogue';
import { parseCatalogue, partsToEmbed } from '@latchwork/core/catalogue/parse-catalogue';
import { importCatalogueCsv } from '@latchwork/core/import/catalogue-csv';
import { importProblemText } from '@latchwork/core/import/import-problem';
import { openProblemText } from '@latchwork/core/model/problem';
import { say } from '../../ui/toasts';
import { callHost, hostStore } from '../host';
import { appStore } from '../store';
import { askListedFile } from './ask-listed-file';

/** Adds the parts of a catalogue file (JSON or CSV) to the shelf, for this session. Parts of the same id are replaced. */
export async function importCatalogue(): Promise<void> {
  const native = hostStore.getState().info?.dialogs === 'native';
  if (native) return take(await callHost('catalogue:import-dialog', {}));
  const name = await askListedFile({
    title: 'Add a catalogue',
    channel: 'catalogue:list-folder',
    what: 'catalogue',
  });
  if (name !== null) await take(await callHost('catalogue:import', { name }));
}

async function take(answer: CatalogueAnswer | null): Promise<void> {
  if (answer?.status === 'failed') say('problem', answer.reason);
  if (answer?.status !== 'opened') return;
  const bytes = Uint8Array.from(atob(answer.bytesBase64), (c) => c.charCodeAt(0));
  const read = readCatalogue(answer.name, new TextDecoder().decode(bytes));
  if (!read.ok) return say('problem', `${answer.name} was not added. ${read.problem}`);
  const added = partsToEmbed(read.value);
  const ids = new Set(added.map((p) => p.id));
  const { catalogue, setCatalogue } = appStore.getState();
  setCatalogue([...catalogue.filter((p) => !ids.has(p.id)), ...added]);
  say('done', `${added.length} parts of ${read.value.name} are on the shelf.`);
}

/** By the ending of the name; what is wrong, in words with its place. */
export function readCatalogue(name: string, text: string): Result<Catalogue, string> {
  const ending = name.split('.').at(-1)?.toLowerCase();
  if (ending === 'json') {
    const parsed = parseCatalogue(text);
    return parsed.ok ? parsed : problem(openProblemText(parsed.problem));
  }
  if (ending !== 'csv')
    return problem('The window reads catalogues as JSON or CSV; save a spreadsheet as CSV first.');
  const imported = importCatalogueCsv(name, text);
  if (imported.ok) return ok(imported.value.catalogue);
  const [first, ...more] = imported.problem;
  const rest = more.length ? ` And ${more.length} more.` : '';
  return problem(first ? `${importProblemText(first)}.${rest}` : 'It holds no part.');
}
