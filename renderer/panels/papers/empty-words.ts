import type { Page } from '../../app/view';

export interface EmptyWords {
  /** What is missing. */
  readonly text: string;
  /** Where that is mended. */
  readonly page: Page;
}

const WIRES: EmptyWords = {
  text: 'There is no wire yet. Draw one from cavity to cavity on the Diagram page.',
  page: 'diagram',
};
const CONNECTORS: EmptyWords = {
  text: 'No connector is placed yet. Place one from the shelf on the Diagram page.',
  page: 'diagram',
};
const CRIMPS: EmptyWords = {
  text: 'No contact is crimped to a wire yet. Draw wires on the Diagram page and choose contacts that fit.',
  page: 'diagram',
};

const WORDS: Readonly<Record<string, EmptyWords>> = {
  'connection-table': WIRES,
  'length-table': WIRES,
  'cut-list': WIRES,
  'test-table': WIRES,
  'crimp-sheets': CRIMPS,
  'record-sheets': CRIMPS,
  pinouts: CONNECTORS,
  'parts-list': CONNECTORS,
  'purchase-list': CONNECTORS,
  'purchase-volumes': CONNECTORS,
  'request-for-quotation': CONNECTORS,
  'where-used': CONNECTORS,
  labels: { text: 'No label is placed yet. Place labels at wires and runs on the Formboard page.', page: 'formboard' },
  formboard: { text: 'Nothing lies on the board yet. Lay out nodes and segments on the Formboard page.', page: 'formboard' },
  'cut-outs': { text: 'No connector goes through a panel or onto a board, so nothing is cut or drilled. Name the equipment of a connector on the Diagram page.', page: 'diagram' },
}; // prettier-ignore

/** Why a document has nothing to say, and where to go. */
export const emptyWords = (id: string): EmptyWords =>
  WORDS[id] ?? { text: 'The project holds nothing for this document yet.', page: 'diagram' };
