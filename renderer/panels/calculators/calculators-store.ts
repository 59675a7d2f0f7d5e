import type { RowTexts } from '@latchwork/core/calc/read-inputs';
import { createStore, useStore } from 'zustand';
import type { FormTexts } from './ask-calculation';

export interface CalculatorsState {
  readonly chosen: string;
  readonly search: string;
  /** What was typed, by calculation: it is still there when one comes back to it. */
  readonly texts: Readonly<Record<string, FormTexts>>;
}

const first: CalculatorsState = { chosen: 'conductor-resistance', search: '', texts: {} };

/** What the calculators show; kept while the window is open, never in the project. */
export const calculatorsStore = createStore<CalculatorsState>()(() => first);

export const useCalculators = <T>(pick: (state: CalculatorsState) => T): T =>
  useStore(calculatorsStore, pick);

export const resetCalculators = (): void => calculatorsStore.setState(first);

export function typeInto(calculation: string, key: string, text: string | readonly RowTexts[]): void {
  const { texts } = calculatorsStore.getState();
  calculatorsStore.setState({
    texts: { ...texts, [calculation]: { ...texts[calculation], [key]: text } },
  });
}

export function clearForm(calculation: string): void {
  const { [calculation]: _gone, ...rest } = calculatorsStore.getState().texts;
  calculatorsStore.setState({ texts: rest });
}
