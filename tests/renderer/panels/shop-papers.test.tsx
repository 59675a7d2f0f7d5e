import { beforeEach, describe, expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { JobStateAnswer } from '@latchwork/core/bridge/answers';
import type { Handlers } from '@latchwork/core/bridge/contract';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { fileFormatsOf } from '@latchwork/core/exports/file-format';
import { newProject } from '@latchwork/core/model/new-project';
import { jobStore } from '../../../renderer/app/files/follow-job';
import { appStore } from '../../../renderer/app/store';
import { groupDocuments } from '../../../renderer/panels/papers/document-groups';
import { emptyPapersView, papersView } from '../../../renderer/panels/papers/papers-view';
import { surveyStore } from '../../../renderer/panels/papers/use-survey';
import { axeFindings, fakeHost, freshWindow, idOf, openWindow } from '../window';
import { pdfOfPages } from './pdf-of-pages';

const A4 = [595.28, 841.89] as const;
const JOB = '0b7c3b52-5d8e-4d4f-9a52-5b7f5b0f3c11';

const preview = (pages: number): Partial<Handlers> => ({
  'paper:preview': async () => ({ status: 'drawn', pdfBase64: btoa(pdfOfPages(pages, A4)) }),
});

beforeEach(() => {
  freshWindow();
  papersView.setState(emptyPapersView, true);
  surveyStore.setState({ survey: {} });
  jobStore.setState({ watched: null });
  appStore.getState().setView({ page: 'shop-papers' });
});

const documents = (screen: Awaited<ReturnType<typeof openWindow>>) =>
  screen.getByRole('navigation', { name: 'Documents' });

describe('the list of documents', () => {
  it('holds every document once, by who needs it', () => {
    const listed = groupDocuments().flatMap((g) => g.documents.map((d) => d.id));
    expect([...listed].sort()).toEqual(EXPORTERS.map((e) => e.id).sort());
    expect(groupDocuments().map((g) => g.id)).not.toContain('others');
  });

  it('tells rows, pages and formats of each, also of those that were not looked at', async () => {
    fakeHost(preview(3));
    papersView.setState({ chosen: 'pinouts' });
    const screen = await openWindow();
    const row = (name: RegExp) => documents(screen).getByRole('button', { name });
    await expect.element(row(/^Pinouts/)).toHaveTextContent(/^Pinouts\d+ rows, 3 pagesPDF CSV XLSX JSON$/);
    await expect.element(row(/^Parts list/), { timeout: 50_000 }).toHaveTextContent('3 pages');
    await expect.element(row(/^KBL/)).toHaveTextContent(/\d+ rowsXML CSV XLSX JSON$/);
  }, 60_000);

  it('says what has nothing to say, and where to begin', async () => {
    appStore.getState().open(newProject({ id: crypto.randomUUID(), revisionId: crypto.randomUUID() }), {});
    fakeHost(preview(1));
    appStore.getState().setView({ page: 'shop-papers' });
    papersView.setState({ chosen: 'pinouts' });
    const screen = await openWindow();
    await expect
      .element(documents(screen).getByRole('button', { name: /^Pinouts/ }))
      .toHaveTextContent('nothing to say yet');
    await userEvent.click(screen.getByRole('button', { name: 'Go to Diagram' }));
    expect(appStore.getState().view.page).toBe('diagram');
  });
});

describe('the pages of a document', () => {
  it('are as many as the file of the host has, and only those in view are drawn', async () => {
    const { asked } = fakeHost(preview(40));
    papersView.setState({ chosen: 'pinouts' });
    const screen = await openWindow();
    await expect.element(screen.getByText('of 40')).toBeVisible();
    await expect.element(screen.getByText('A4 upright, 210 × 297 mm')).toBeVisible();
    const first = screen.getByRole('figure', { name: 'Page 1 of 40' });
    await expect.element(first).toHaveTextContent('This is page 1');
    expect(document.querySelectorAll('.page-sheet').length).toBeLessThan(6);
    const { request } = asked.find((a) => a.channel === 'paper:preview')!;
    expect(request).toMatchObject({ paper: { id: 'pinouts' } });
  });

  it('are turned by keys and by number', async () => {
    fakeHost(preview(12));
    papersView.setState({ chosen: 'pinouts' });
    const screen = await openWindow();
    const number = screen.getByRole('textbox', { name: 'Page', exact: true });
    await expect.element(number).toHaveValue('1');
    (screen.getByRole('group', { name: 'Pages of pinouts' }).element() as HTMLElement).focus();
    await userEvent.keyboard('{PageDown}{ArrowRight}');
    await expect.element(number).toHaveValue('3');
    await userEvent.keyboard('{End}');
    await expect.element(screen.getByRole('figure', { name: 'Page 12 of 12' })).toBeVisible();
    await userEvent.keyboard('{Home}');
    await expect.element(number).toHaveValue('1');
    await userEvent.fill(number, '7');
    await userEvent.keyboard('{Enter}');
    await expect.element(number).toHaveValue('7');
    await userEvent.fill(number, '13');
    await userEvent.keyboard('{Enter}');
    await expect.element(number).toHaveAttribute('aria-invalid', 'true');
  });

  it('stand at true size with 100 %, where CSS has 96 pixels to the inch', async () => {
    fakeHost(preview(2));
    papersView.setState({ chosen: 'pinouts' });
    const screen = await openWindow();
    await userEvent.click(screen.getByRole('button', { name: '100 %' }));
    const sheet = screen.getByRole('figure', { name: 'Page 1 of 2' }).element();
    await expect.poll(() => Math.round((sheet.getBoundingClientRect().width * 25.4) / 96)).toBe(210);
    await userEvent.click(screen.getByRole('button', { name: 'Larger' }));
    await expect.element(screen.getByRole('status', { name: 'Size' })).toHaveTextContent('125 %');
  });

  it('are asked for with what is asked of the document, and each document keeps its own', async () => {
    const { asked } = fakeHost(preview(2));
    papersView.setState({ chosen: 'cut-list' });
    const screen = await openWindow();
    await userEvent.fill(screen.getByLabelText('Harnesses', { exact: true }), '25');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => asked.some((a) => JSON.stringify(a.request).includes('"25"'))).toBe(true);
    await userEvent.click(documents(screen).getByRole('button', { name: /^Crimp sheets/ }));
    await expect.element(screen.getByLabelText('Harnesses', { exact: true })).toHaveValue('');
    await userEvent.click(documents(screen).getByRole('button', { name: /^Cut list/ }));
    await expect.element(screen.getByLabelText('Harnesses', { exact: true })).toHaveValue('25');
  });

  it('that the host cannot draw leave the reason and the rows', async () => {
    fakeHost({ 'paper:preview': async () => ({ status: 'failed', reason: 'The fonts are gone.' }) });
    papersView.setState({ chosen: 'pinouts' });
    const screen = await openWindow();
    await expect.element(screen.getByText('The fonts are gone.')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Rows', exact: true }));
    await expect.element(screen.getByRole('grid')).toBeVisible();
  });

  it('that are no PDF say so', async () => {
    fakeHost({ 'paper:preview': async () => ({ status: 'drawn', pdfBase64: btoa('no file') }) });
    papersView.setState({ chosen: 'pinouts' });
    const screen = await openWindow();
    await expect.element(screen.getByText('The pages cannot be shown')).toBeVisible();
  });
});

it('a row selects the object that it speaks of', async () => {
  fakeHost(preview(1));
  papersView.setState({ chosen: 'connection-table', mode: 'rows' });
  const screen = await openWindow();
  await userEvent.click(screen.getByRole('grid').getByRole('row').nth(2));
  expect([...appStore.getState().view.selection]).toEqual([idOf('W2')]);
});

it.each(['pinouts', 'cut-outs', 'vec', 'connection-table'])('%s is offered in just its formats', async (id) => {
  fakeHost(preview(1));
  papersView.setState({ chosen: id });
  const screen = await openWindow();
  const exporter = EXPORTERS.find((e) => e.id === id)!;
  await userEvent.click(
    screen.getByRole('region', { name: exporter.title }).getByRole('button', { name: 'Export', exact: true }),
  );
  const names = screen.getByRole('menuitem').elements().map((e) => e.textContent ?? '');
  expect(names).toHaveLength(fileFormatsOf(exporter).length);
  for (const format of fileFormatsOf(exporter))
    expect(names.some((n) => n.includes(`(${format.toUpperCase()}`) || n === format.toUpperCase())).toBe(true);
}); // prettier-ignore

it('a draft is marked as one, and a released revision as released', async () => {
  fakeHost(preview(1));
  const screen = await openWindow();
  await expect.element(screen.getByText('Draft')).toBeVisible();
  const { revisions } = appStore.getState().history.project;
  freshWindow((t) => {
    t.project.revisions = [
      { ...revisions[0]!, revision: 'C', status: 'released', baseline: 'ab'.repeat(32) },
    ];
  });
  appStore.getState().setView({ page: 'shop-papers' });
  await expect.element(screen.getByText('Released')).toBeVisible();
  await expect.element(screen.getByText('abababababab')).toBeVisible();
});

describe('exporting many', () => {
  /** A host whose job stands as `state` says, until it is cancelled. */
  const jobHost = (state: { now: JobStateAnswer }) =>
    fakeHost({
      ...preview(1),
      'job:start': async () => ({ status: 'started', job: JOB }),
      'job:state': async () => state.now,
      'job:cancel': async () => {
        state.now = { status: 'cancelled' };
        return { status: 'done' };
      },
    });

  async function start(state: { now: JobStateAnswer }) {
    const { asked } = jobHost(state);
    const screen = await openWindow();
    await userEvent.click(screen.getByRole('checkbox', { name: 'Pick pinouts' }));
    await userEvent.click(screen.getByRole('checkbox', { name: 'Pick where used' }));
    await userEvent.click(screen.getByRole('button', { name: 'Export 2' }));
    const dialog = screen.getByRole('dialog');
    return { screen, dialog, asked };
  }
  const RUNNING: JobStateAnswer = { status: 'running', done: 1, total: 3, making: 'Where used, CSV' };

  it('asks for the formats and hands the host what is picked, as the project stands now', async () => {
    const state: { now: JobStateAnswer } = { now: RUNNING };
    const { screen, dialog, asked } = await start(state);
    await userEvent.click(dialog.getByRole('checkbox', { name: /CSV/ }));
    await userEvent.click(dialog.getByRole('button', { name: /^Export \d files?$/ }));
    await expect.element(screen.getByText('1 of 3: Where used, CSV')).toBeVisible();
    const { request } = asked.find((a) => a.channel === 'job:start')!;
    const { documents: wanted, text } = request as { documents: { document: string; format: string }[]; text: string };
    expect(wanted.map((d) => `${d.document} ${d.format}`).filter((t) => t.endsWith('csv')).sort()).toEqual(['pinouts csv', 'where-used csv']);
    expect(wanted.some((d) => d.document === 'pinouts' && d.format === 'pdf')).toBe(true);
    expect(JSON.parse(text)).toMatchObject({ titleBlock: { title: 'Tiny example' } });
    const bar = screen.getByRole('progressbar', { name: /^Exporting/ });
    await expect.element(bar).toHaveAttribute('value', '1');

    state.now = {
      status: 'made',
      place: 'exports',
      files: ['tiny-documents/a.pdf', 'tiny-documents/b.csv'],
      leftOut: [{ what: 'c.xml', reason: 'No supplier is named.' }],
      stoodAlready: false,
    };
    await expect.element(screen.getByText('exports/tiny-documents')).toBeVisible();
    await expect.element(screen.getByText('No supplier is named.')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Dismiss' }).first());
    expect(jobStore.getState().watched).toBeNull();
  }); // prettier-ignore

  it('is ended by Cancel, and says that nothing was left', async () => {
    const { screen, dialog, asked } = await start({ now: RUNNING });
    await userEvent.click(dialog.getByRole('button', { name: /^Export \d files?$/ }));
    const card = screen.getByRole('region', { name: /^Exporting/ });
    await userEvent.click(card.getByRole('button', { name: 'Cancel' }));
    await expect.element(screen.getByText(/nothing was written/)).toBeVisible();
    expect(asked.filter((a) => a.channel === 'job:cancel').map((a) => a.request)).toEqual([{ job: JOB }]);
  });

  it('says why the host made nothing', async () => {
    const { screen, dialog } = await start({ now: { status: 'failed', reason: 'The disk is full.' } });
    await userEvent.click(dialog.getByRole('button', { name: /^Export \d files?$/ }));
    await expect.element(screen.getByText('The disk is full.')).toBeVisible();
  });
});

describe('printing', () => {
  it('makes one picture for each page, tells the sheets, and cleans up after', async () => {
    const print = vi.spyOn(window, 'print').mockImplementation(() => undefined);
    fakeHost(preview(3));
    papersView.setState({ chosen: 'formboard' });
    const screen = await openWindow();
    await userEvent.click(screen.getByRole('region', { name: 'Formboard' }).getByRole('button', { name: 'Print' }));
    const dialog = screen.getByRole('dialog');
    await expect.element(dialog.getByText('3 pages: 3 × A4 upright.')).toBeVisible();
    await expect.element(dialog.getByText(/At true size: Formboard/)).toBeVisible();
    await userEvent.click(dialog.getByRole('button', { name: 'Print' }));
    await expect.poll(() => print.mock.calls.length).toBe(1);
    const sheets = [...document.querySelectorAll<HTMLElement>('.print-sheet')];
    expect(sheets.map((s) => s.dataset['sheet'])).toEqual(Array(3).fill('A4-upright'));
    // 300 dots to the inch: the picture is 96 / 300 as wide in pixels of CSS, all of them whole, and covers the sheet.
    const picture = sheets[0]!.querySelector('img')!;
    expect(picture.style.width).toBe('800px');
    expect(picture.naturalWidth).toBe((800 / 96) * 300);
    expect(800).toBeGreaterThanOrEqual((210 / 25.4) * 96);
    window.dispatchEvent(new Event('afterprint'));
    await expect.poll(() => document.querySelectorAll('.print-sheet').length).toBe(0);
    print.mockRestore();
  }); // prettier-ignore
});

it.each(['light', 'dark'] as const)('has nothing for axe to find in the %s look', async (theme) => {
  document.documentElement.dataset.theme = theme;
  fakeHost(preview(2));
  papersView.setState({ chosen: 'formboard' });
  const screen = await openWindow();
  await expect.element(screen.getByText('of 2')).toBeVisible();
  expect(await axeFindings()).toEqual([]);
});
