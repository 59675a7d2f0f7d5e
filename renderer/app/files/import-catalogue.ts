import type { CatalogueAnswer } from '@latchwork/core/bridge/answers';
import { parseCatalogue, partsToEmbed } from '@latchwork/core/catalogue/parse-catalogue';
import { openProblemText } from '@latchwork/core/model/problem';
import { say } from '../../ui/toasts';
import { callHost, hostStore } from '../host';
import { appStore } from '../store';
import { askListedFile } from './ask-listed-file';

/** Adds the parts of a catalogue file (JSON) to the shelf, for this session. Parts of the same id are replaced. */
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
  if (!answer.name.toLowerCase().endsWith('.json')) {
    say(
      'problem',
      `${answer.name} was not added: the window reads catalogues as JSON. Turn a CSV into one with the command line's import.`,
    );
    return;
  }
  const bytes = Uint8Array.from(atob(answer.bytesBase64), (c) => c.charCodeAt(0));
  const parsed = parseCatalogue(new TextDecoder().decode(bytes));
  if (!parsed.ok) return say('problem', `${answer.name} was not added. ${openProblemText(parsed.problem)}`);
  const added = partsToEmbed(parsed.value);
  const ids = new Set(added.map((p) => p.id));
  const { catalogue, setCatalogue } = appStore.getState();
  setCatalogue([...catalogue.filter((p) => !ids.has(p.id)), ...added]);
  say('done', `${added.length} parts of ${parsed.value.name} are on the shelf.`);
}
