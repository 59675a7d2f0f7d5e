import { describe, expect, it } from 'vitest';
import { keysText } from '../../../renderer/app/actions/action';
import { ACTIONS } from '../../../renderer/app/actions/index';

describe('the table of actions', () => {
  it('gives each action an id of its own', () => {
    expect(new Set(ACTIONS.map((a) => a.id)).size).toBe(ACTIONS.length);
  });

  it('gives no key twice', () => {
    const keys = ACTIONS.flatMap((a) => a.keys ?? []);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it.each([
    ['$mod+Shift+KeyZ', 'Ctrl+Shift+Z'],
    ['Alt+Digit3', 'Alt+3'],
    ['Delete', 'Del'],
    ['F1', 'F1'],
  ])('writes %s as %s', (keys, text) => {
    expect(keysText(keys)).toBe(text);
  });
});
