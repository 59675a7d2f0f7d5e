import { beforeEach, describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-react';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { LengthField } from '../../../renderer/ui/length-field';
import { NumberField } from '../../../renderer/ui/number-field';
import { TextField, needed } from '../../../renderer/ui/text-field';
import { freshWindow } from '../window';

beforeEach(() => freshWindow());

describe('a text field', () => {
  const taken: string[] = [];
  const open = async () => {
    taken.length = 0;
    const take = needed('A name', (text) => {
      if (text === 'no') return 'Not this one.';
      taken.push(text);
      return null;
    });
    const screen = await render(<TextField label="Name" value="old" commit={take} />);
    return { screen, input: screen.getByLabelText('Name') };
  };

  it('commits on Enter, and not before', async () => {
    const { input } = await open();
    await userEvent.fill(input, 'new');
    expect(taken).toEqual([]);
    await userEvent.keyboard('{Enter}');
    expect(taken).toEqual(['new']);
  });

  it('commits when it is left', async () => {
    const { input } = await open();
    await userEvent.fill(input, ' new ');
    await userEvent.tab();
    expect(taken).toEqual(['new']);
  });

  it('brings the old text back on Escape', async () => {
    const { input } = await open();
    await userEvent.fill(input, 'new');
    await userEvent.keyboard('{Escape}');
    await expect.element(input).toHaveValue('old');
    await userEvent.tab();
    expect(taken).toEqual([]);
  });

  it('says why it refuses, and keeps what was typed', async () => {
    const { screen, input } = await open();
    await userEvent.fill(input, 'no');
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('Not this one.');
    await expect.element(input).toHaveValue('no');
    await expect.element(input).toHaveAttribute('aria-invalid', 'true');
    await userEvent.fill(input, '');
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('A name cannot be empty.');
  });

  it('commits what is still open when it goes away', async () => {
    const { screen, input } = await open();
    await userEvent.fill(input, 'new');
    await screen.unmount();
    expect(taken).toEqual(['new']);
  });
});

describe('a length field', () => {
  const open = async (allow?: 'signed') => {
    const taken: (number | null)[] = [];
    const commit = (mm: number | null): null => {
      taken.push(mm);
      return null;
    };
    const screen = await render(
      <LengthField label="Length" valueMm={100} commit={commit} {...(allow ? { allow } : {})} />,
    );
    const type = async (text: string) => {
      await userEvent.fill(screen.getByLabelText('Length'), text);
      await userEvent.keyboard('{Enter}');
    };
    return { taken, screen, type };
  };

  // Exact by definition: 1 in = 25.4 mm (international inch, 1959).
  it.each([
    ['12 in', 304.8],
    ['12"', 304.8],
    ['1 ft', 304.8],
    ['250', 250],
    ['2,5 cm', 25],
    ['', null],
  ])('reads %j as %j mm', async (text, mm) => {
    const { taken, type } = await open();
    await type(text);
    expect(taken).toEqual([mm]);
  });

  it.each([
    ['12 furlongs', 'furlongs'],
    ['abc', 'is not a length'],
    ['-3', 'greater than zero'],
  ])('refuses %j in words', async (text, words) => {
    const { taken, screen, type } = await open();
    await type(text);
    await expect.element(screen.getByRole('alert')).toHaveTextContent(words);
    expect(taken).toEqual([]);
  });

  it('shows and reads bare numbers in the unit of the user', async () => {
    appStore.getState().setView({ lengthUnit: 'in' });
    const { taken, screen, type } = await open();
    await expect.element(screen.getByLabelText('Length')).toHaveValue('3.937 in');
    await type('2');
    expect(taken).toEqual([50.8]);
  });
});

describe('a number field', () => {
  it.each([
    ['5 A', [5]],
    ['0,25', [0.25]],
    ['five', []],
  ])('takes %j as %j', async (text, expected) => {
    const taken: (number | null)[] = [];
    const commit = (n: number | null): null => {
      taken.push(n);
      return null;
    };
    const screen = await render(<NumberField label="Current" unit="A" value={1} commit={commit} />);
    await userEvent.fill(screen.getByLabelText(/Current/), text);
    await userEvent.keyboard('{Enter}');
    expect(taken).toEqual(expected);
  });
});
