import type { Part } from '@latchwork/core/model/parts/part';
import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { axeFindings, freshWindow, openWindow, project } from '../window';

const pin = (): Part => project().parts.find((p) => p.partNumber === 'C-PIN') as Part;

/** C-PIN names C-PIN-B, which only the catalogue has, and which does not grip the wires; and C-PIN-X, which nobody has. */
beforeEach(() => {
  freshWindow((t) => void (t.part('contact', 'C-PIN').alternates = ['C-PIN-B', 'C-PIN-X']));
  const other = { ...pin(), id: `${pin().id.slice(0, -4)}fade`, partNumber: 'C-PIN-B', alternates: [], insulationMaxMm: 1.1 } as Part; // prettier-ignore
  appStore.getState().setCatalogue([...project().parts, other]);
  appStore.getState().setView({ page: 'findings' });
});

const finding = (alternate: string) =>
  appStore.getState().check.findings.find((f) => f.rule === 'alternate-checked' && f.data['alternate'] === alternate); // prettier-ignore

describe('the alternates of a part', () => {
  it('are tried when the catalogue comes, and told as findings', async () => {
    await expect.poll(() => finding('C-PIN-B')?.result).toBe('fail');
    expect(finding('C-PIN-B')?.data['differences']).toMatch(/^would break insulation-range/);
    expect(finding('C-PIN-X')).toMatchObject({ result: 'cannot-verify', open: true });
  });

  it('stay in the findings through an edit, and are tried again when it rests', async () => {
    await expect.poll(() => finding('C-PIN-B')?.result).toBe('fail');
    const [wire] = project().wires;
    appStore.getState().dispatch({ id: 'objects.remove', args: { ids: [wire!.id] } });
    await expect.poll(() => finding('C-PIN-B')?.data['differences'], { timeout: 4000 }).not.toMatch(/X\d:1/);
    expect(finding('C-PIN-B')?.data['differences']).toMatch(/insulation-range \(major\) at X\d:2/);
  });

  it('show what they would break, are taken into the project, and exchanged in one step', async () => {
    const screen = await openWindow();
    await expect.poll(() => finding('C-PIN-B')).toBeDefined();
    appStore.getState().showFinding(finding('C-PIN-B')!.key);
    const list = screen.getByRole('list', { name: 'Alternates of C-PIN' });
    await expect.element(list).toHaveTextContent(/C-PIN-B ?would bring 2 failures/);
    await expect.element(list).toHaveTextContent(/C-PIN-X.*Cannot verify/);
    expect(await axeFindings()).toEqual([]);
    await userEvent.click(list.getByRole('button', { name: 'Take its record into the project' }));
    await expect.poll(() => project().parts.some((p) => p.partNumber === 'C-PIN-B')).toBe(true);
    await expect.poll(() => finding('C-PIN-B')).toBeDefined();
    appStore.getState().showFinding(finding('C-PIN-B')!.key);
    await userEvent.click(list.getByText('Exchange for it …'));
    await expect.element(list).toHaveTextContent(/Findings that come: 2/);
    await userEvent.click(list.getByRole('button', { name: 'Exchange C-PIN for C-PIN-B' }));
    await expect.poll(() => project().contacts.some((c) => c.part === pin().id)).toBe(false);
    appStore.getState().undo();
    expect(project().contacts.some((c) => c.part === pin().id)).toBe(true);
  });
});
