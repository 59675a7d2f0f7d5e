import { beforeEach, describe, expect, it, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { RememberedFinding } from '@latchwork/core/model/remembered-finding';
import { keepFindingHistory, seenStore } from '../../../renderer/app/seen-findings';
import { appStore } from '../../../renderer/app/store';
import { today } from '../../../renderer/app/today';
import {
  ALL_FINDINGS,
  findingRows,
  type FindingFilter,
  type Grouping,
} from '../../../renderer/panels/findings/finding-filter';
import { previewFix } from '../../../renderer/panels/findings/preview-fix';
import { standingsOf } from '@latchwork/core/decisions/standing';
import { axeFindings, fakeHost, freshWindow, openWindow, project } from '../window';

type Screen = Awaited<ReturnType<typeof openWindow>>;
const open = (screen: Screen, name: RegExp) =>
  userEvent.click(screen.getByRole('listbox', { name: 'Findings' }).getByRole('option', { name }).first());
const standing = (screen: Screen) => screen.getByRole('region', { name: 'Standing' });
const nextYear = `${Number(today().slice(0, 4)) + 1}-06-30`;

/** Two strip lengths outside their tolerance, and a contact of the wrong kind. */
beforeEach(() => {
  freshWindow((t) => {
    t.wire('W1').ends[0].stripLengthMm = 9;
    t.wire('W2').ends[0].stripLengthMm = 8;
    const end = t.wire('W1').ends[0];
    const contact = t.project.contacts.find((c) => end.at === 'cavity' && c.id === end.contact)!;
    contact.part = t.part('contact', 'C-PIN').id;
  });
  appStore.getState().setView({ page: 'findings' });
});

async function fill(screen: Screen, fields: Readonly<Record<string, string>>): Promise<void> {
  const form = screen.getByRole('dialog');
  for (const [label, text] of Object.entries(fields))
    await userEvent.fill(form.getByLabelText(label, { exact: true }), text);
  await userEvent.click(form.getByRole('button', { name: 'Record', exact: true }));
}

const WHOLE = {
  Reason: 'First lot only',
  'Requested by': 'R. Quester',
  'Approved by': 'A. Prover',
  Role: 'quality',
};

describe('a decision', () => {
  it('is refused while it is open-ended, and nothing that was written is lost', async () => {
    const screen = await openWindow();
    await open(screen, /W1 strip-length/);
    await userEvent.click(screen.getByRole('button', { name: 'Record a decision' }));
    expect(await axeFindings()).toEqual([]);
    await fill(screen, WHOLE);
    await expect.element(screen.getByRole('alert')).toHaveTextContent('no open-ended permits');
    expect(project().decisions).toEqual([]);
    await fill(screen, { 'Holds until the end of': nextYear });
    await expect.element(standing(screen)).toHaveTextContent(`until ${nextYear}`);
    await expect.element(standing(screen)).toHaveTextContent('First lot only');
    expect(project().decisions).toMatchObject([{ number: 'D-1', rule: 'strip-length', measured: '9 mm' }]);
    appStore.getState().undo();
    await expect.element(standing(screen)).toHaveTextContent('No decision on record covers it');
  });

  it('does not count once the value changes, and says from what to what', async () => {
    const screen = await openWindow();
    await open(screen, /W1 strip-length/);
    await userEvent.click(screen.getByRole('button', { name: 'Record a decision' }));
    await fill(screen, { ...WHOLE, 'Holds until the end of': nextYear });
    const wire = project().wires[0]!;
    appStore.getState().dispatch({ id: 'wire.set-strip-length', args: { id: wire.id, end: 0, stripLengthMm: 10 } }); // prettier-ignore
    await expect.element(standing(screen)).toHaveTextContent(/reopened.*was 9 mm, is 10 mm/);
  });

  it('bound to a quantity is used up, and closed before its time', async () => {
    const screen = await openWindow();
    await open(screen, /W1 strip-length/);
    await userEvent.click(screen.getByRole('button', { name: 'Record a decision' }));
    await fill(screen, { ...WHOLE, 'Quantity of harnesses': '2' });
    await userEvent.click(screen.getByRole('button', { name: 'Record a use' }));
    await fill(screen, { Harnesses: '3', 'Recorded by': 'B. Uilder' });
    await expect.element(screen.getByRole('alert')).toHaveTextContent('D-1 has 2 left, not 3');
    await fill(screen, { Harnesses: '2' });
    await expect.element(standing(screen)).toHaveTextContent('D-1 is used up: 2 of 2');
    await userEvent.click(screen.getByRole('button', { name: 'Close it' }));
    await fill(screen, { Reason: 'lot built', 'Closed by': 'A. Prover' });
    await expect.element(standing(screen)).toHaveTextContent('Closed');
    expect(project().decisions[0]).toMatchObject({ number: 'D-1', closed: { reason: 'lot built' } });
  });

  it('may be said of several findings of a rule at once, each with its own values', async () => {
    const screen = await openWindow();
    await open(screen, /W1 strip-length/);
    await userEvent.click(screen.getByRole('button', { name: 'Record a decision' }));
    await userEvent.click(screen.getByLabelText(/Also for the 1 other open findings/));
    await fill(screen, { ...WHOLE, 'Holds until the end of': nextYear });
    await expect.poll(() => project().decisions.map((d) => [d.number, d.measured])).toEqual([['D-1', '9 mm'], ['D-2', '8 mm']]); // prettier-ignore
  });
});

test('the fix shows what it changes before it is done, and changes nothing by showing it', async () => {
  const before = project();
  const screen = await openWindow();
  await open(screen, /W1 strip-length/);
  const preview = screen.getByRole('region', { name: 'What the fix changes' });
  await expect.element(preview).toHaveTextContent(/wire W1 changed.*strip length \(mm\): 9 → /);
  await expect.element(preview).toHaveTextContent('Findings that go: 1');
  expect(project()).toBe(before);
  const { check, catalogue } = appStore.getState();
  const fix = check.findings.find((f) => f.rule === 'strip-length')!.fix!;
  const foretold = previewFix(check, fix, catalogue);
  const keys = new Set(check.findings.map((f) => f.key));
  appStore.getState().dispatchFix({ id: fix.command, args: fix.args });
  const gone = foretold.findings.gone.map((f) => f.key);
  await expect
    .poll(() => [...keys].filter((k) => appStore.getState().check.findings.every((f) => f.key !== k)).sort())
    .toEqual(gone.sort());
});

test('a limit that is missing is filled in at the field that the finding leads to', async () => {
  freshWindow((t) => {
    t.project.limitSet.limits = t.project.limitSet.limits.filter((l) => l.id !== 'ambient-temperature');
  });
  appStore.getState().setView({ page: 'findings' });
  const screen = await openWindow();
  const finding = appStore.getState().check.findings.find((f) => f.needs.some((n) => n.field === 'limitSet.ambient-temperature'))!; // prettier-ignore
  appStore.getState().showFinding(finding.key);
  await userEvent.click(screen.getByRole('button', { name: 'Go there' }).first());
  await expect
    .poll(() => document.activeElement?.closest('[data-field]')?.getAttribute('data-field'))
    .toBe('limit.ambient-temperature');
});

test('a release is blocked while a critical finding is open', async () => {
  const screen = await openWindow();
  await expect.element(screen.getByText(/^No critical finding blocks a release; \d+ open, 0 accepted/)).toBeVisible(); // prettier-ignore
  const { check } = appStore.getState();
  const grave = { ...check.findings[0]!, severity: 'critical' as const, key: 'grave' };
  appStore.setState({ check: { ...check, findings: [...check.findings, grave] } });
  await expect.element(screen.getByText(/^A release is blocked by 1 critical finding\./)).toBeVisible();
});

test('the rule book is reached from a finding and from the list of actions', async () => {
  const screen = await openWindow();
  await open(screen, /contact-kind/);
  await userEvent.click(screen.getByRole('button', { name: 'Open it in the rule book' }));
  const page = screen.getByRole('article', { name: 'Rule contact-kind' });
  await expect.element(page).toHaveTextContent('Why it matters');
  await expect.element(page).toHaveTextContent('failed 1');
  expect(await axeFindings()).toEqual([]);
  await userEvent.fill(screen.getByLabelText('Search rules'), 'stripped to the length');
  await expect.element(screen.getByRole('article', { name: 'Rule strip-length' })).toBeVisible();
  await userEvent.click(screen.getByRole('button', { name: 'Close', exact: true }));
  await userEvent.keyboard('{Control>}k{/Control}');
  await userEvent.fill(screen.getByPlaceholder('What do you want to do?'), 'rule book');
  await userEvent.keyboard('{Enter}');
  await expect.element(screen.getByLabelText('Search rules')).toBeVisible();
});

describe('the list of findings', () => {
  const rows = (filter: Partial<FindingFilter>, grouping?: Grouping) => {
    const { check } = appStore.getState();
    const asked = {
      project: check.harness.project,
      findings: check.findings,
      standings: standingsOf(check.harness.project, check.findings, today()),
    };
    return findingRows(asked, { ...ALL_FINDINGS, ...filter }, grouping).map((r) =>
      'finding' in r ? `${r.finding.rule} ${r.where}` : `# ${r.heading} ${r.count}`,
    );
  };

  it.each<[Partial<FindingFilter>, Grouping, string[]]>([
    [{ rule: 'strip-length' }, 'rule', ['# strip-length 2', 'strip-length X1:1, W1', 'strip-length X1:2, W2']],
    [{ rule: 'strip-length' }, 'wire', ['# W1 1', 'strip-length X1:1, W1', '# W2 1', 'strip-length X1:2, W2']],
    [{ rule: 'strip-length' }, 'connector', ['# X1 2', 'strip-length X1:1, W1', 'strip-length X1:2, W2']],
    [{ rule: 'strip-length' }, 'result', ['# fails 2', 'strip-length X1:1, W1', 'strip-length X1:2, W2']],
    [{ rule: 'strip-length' }, 'standing', ['# open 2', 'strip-length X1:1, W1', 'strip-length X1:2, W2']],
    [{ rule: 'strip-length', wire: 'W2' }, 'severity', ['# major 1', 'strip-length X1:2, W2']],
    [{ rule: 'strip-length', connector: 'X2' }, 'severity', []],
    [{ rule: 'strip-length', standing: 'accepted' }, 'severity', []],
  ])('cut down to %j, by %s', (filter, grouping, expected) => {
    expect(rows(filter, grouping)).toEqual(expected);
  }); // prettier-ignore
});

test('what a decision covers stands apart and quiet in the inspector, with its number', async () => {
  const screen = await openWindow();
  await open(screen, /W1 strip-length/);
  await userEvent.click(screen.getByRole('button', { name: 'Record a decision' }));
  await fill(screen, { ...WHOLE, 'Holds until the end of': nextYear });
  await expect.poll(() => project().decisions).toHaveLength(1);
  appStore.getState().setView({ page: 'diagram' });
  appStore.getState().select([project().wires[0]!.id]);
  const accepted = screen.getByRole('list', { name: 'Accepted findings here' });
  await expect.element(accepted).toHaveTextContent(/strip.*accepted, D-1/i);
  await expect.element(screen.getByRole('list', { name: 'Findings here', exact: true })).not.toHaveTextContent('D-1'); // prettier-ignore
  expect(await axeFindings()).toEqual([]);
});

test('a critical finding cannot be accepted together with others', async () => {
  const screen = await openWindow();
  const { check } = appStore.getState();
  const grave = check.findings.map((f) => (f.rule === 'strip-length' ? { ...f, severity: 'critical' as const } : f)); // prettier-ignore
  appStore.setState({ check: { ...check, findings: grave } });
  await open(screen, /W1 strip-length/);
  await userEvent.click(screen.getByRole('button', { name: 'Record a decision' }));
  await expect.element(screen.getByRole('dialog')).toBeVisible();
  expect(screen.getByLabelText(/Also for the/).elements()).toEqual([]);
});

test('critical findings that a filter leaves out are one press away', async () => {
  const screen = await openWindow();
  const { check } = appStore.getState();
  const grave = { ...check.findings[0]!, severity: 'critical' as const, key: 'grave' };
  appStore.setState({ check: { ...check, findings: [...check.findings, grave] } });
  await userEvent.selectOptions(screen.getByLabelText('Severity', { exact: true }), 'major');
  await userEvent.click(screen.getByRole('button', { name: 'Show', exact: true }));
  const list = screen.getByRole('listbox', { name: 'Findings' });
  await expect.poll(() => list.getByRole('option').elements().length).toBe(1);
});

test('the history of findings outlives the closing of the file', async () => {
  let kept: unknown = null;
  const first = '2026-03-01T10:00:00.000Z';
  fakeHost({
    'history:read': async () => ({ findings: kept as RememberedFinding[] | null }),
    'history:write': async ({ findings }) => {
      kept = findings;
      return { status: 'done' };
    },
  });
  const text = project();
  const reopen = () =>
    appStore.getState().open(text, { name: 'a.latchwork', token: 't', savedProject: text });
  // As at the start of the window: a file is open before the history is kept.
  reopen();
  await expect.poll(() => seenStore.getState().recalled).toBe(true);
  const stop = keepFindingHistory();
  await expect.poll(() => kept, { timeout: 5000 }).not.toBeNull();
  kept = (kept as RememberedFinding[]).map((r) => ({ ...r, first }));
  reopen();
  appStore.getState().setView({ page: 'findings' });
  const screen = await openWindow();
  await open(screen, /W1 strip-length/);
  await expect
    .element(screen.getByRole('region', { name: 'History' }))
    .toHaveTextContent(/First seen on 2026-03-01 at .*Not changed since/);
  stop();
});
