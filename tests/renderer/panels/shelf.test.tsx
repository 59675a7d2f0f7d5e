import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { NO_FILTER, choicesFor, findParts } from '../../../renderer/panels/shelf/part-search';
import { PART_DRAG_TYPE } from '../../../renderer/ui/part-drag';
import { freshWindow, openWindow, project } from '../window';

const part = (number: string) => project().parts.find((p) => p.partNumber === number)!;
const numbers = (filter: Partial<typeof NO_FILTER>) =>
  findParts(project().parts, { ...NO_FILTER, ...filter }).map((p) => p.partNumber);

beforeEach(() => freshWindow());

describe('the search', () => {
  it.each([
    [{ text: 'c-socket-au' }, ['C-SOCKET-AU']],
    [{ text: 'AU' }, ['C-SOCKET-AU']],
    [{ text: 'gold socket' }, ['C-SOCKET-AU']],
    [{ kind: 'housing' }, ['H-PIN', 'H-SOCKET']],
    [{ kind: 'housing', contactKind: 'pin' }, ['H-PIN']],
    [{ mounting: 'board' }, ['HEADER']],
    [{ text: 'nothing like it' }, []],
  ])('by %j finds %j', (filter, found) => {
    expect(numbers(filter)).toEqual(found);
  });

  it('offers only what the other filters leave', () => {
    expect(choicesFor(project().parts, { ...NO_FILTER, kind: 'header' }, 'contactKind')).toEqual(['pin']);
  });
});

describe('the shelf', () => {
  it('arms a part by Enter, and stands down on a second Enter', async () => {
    const screen = await openWindow();
    await userEvent.fill(screen.getByLabelText('Search parts'), 'H-SOCKET');
    (screen.getByRole('listbox', { name: 'Parts' }).element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    expect(appStore.getState().view.placing).toBe(part('H-SOCKET').id);
    await userEvent.keyboard('{Enter}');
    expect(appStore.getState().view.placing).toBeNull();
  });

  it('hands a dragged part over by its id', async () => {
    const screen = await openWindow();
    await userEvent.fill(screen.getByLabelText('Search parts'), 'HEADER');
    const option = screen.getByRole('listbox', { name: 'Parts' }).getByRole('option').first().element();
    const dataTransfer = new DataTransfer();
    option.dispatchEvent(new DragEvent('dragstart', { dataTransfer, bubbles: true }));
    expect(dataTransfer.getData(PART_DRAG_TYPE)).toBe(part('HEADER').id);
  });
});
