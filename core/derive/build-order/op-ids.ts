import type { ResolvedEnd, ResolvedWire } from '../harness';

/** Names of operations, so that one can be needed before it is made. */
export const opId = {
  cutCable: (cable: string): string => `cut cable ${cable}`,
  cut: (wire: string): string => `cut ${wire}`,
  label: (label: string): string => `label ${label}`,
  seal: (wire: string, end: 0 | 1): string => `seal ${wire} ${end}`,
  crimp: (contact: string): string => `crimp ${contact}`,
  twist: (group: string): string => `twist ${group}`,
  shield: (group: string): string => `shield ${group}`,
  slide: (thing: string): string => `slide ${thing}`,
  place: (thing: string): string => `place ${thing}`,
  terminal: (wire: string, end: 0 | 1): string => `terminal ${wire} ${end}`,
  splice: (splice: string): string => `splice ${splice}`,
  insert: (connector: string, cavity: string, contact: string): string =>
    `insert ${connector} ${cavity} ${contact}`,
  fill: (connector: string, cavity: string): string => `fill ${connector} ${cavity}`,
  lay: 'lay',
  lock: (connector: string): string => `lock ${connector}`,
  fit: (thing: string): string => `fit ${thing}`,
  inspect: 'inspect',
  test: 'test',
  pack: 'pack',
} as const;

export const endOf = (wire: ResolvedWire, end: 0 | 1): ResolvedEnd => (end === 0 ? wire.from : wire.to);

/** The operation after which nothing can be slid over an end any more; undefined for an end that stays bare. */
export function closingOf(wire: ResolvedWire, index: 0 | 1): string | undefined {
  const { end, contact } = endOf(wire, index);
  switch (end.at) {
    case 'cavity':
      return opId.insert(end.connector, end.cavity, contact?.id ?? `${wire.wire.id} ${index}`);
    case 'splice':
      return opId.splice(end.splice);
    case 'free':
      return end.terminal === undefined ? undefined : opId.terminal(wire.wire.id, index);
  }
}

/** The operation that closes an end for what is threaded on the single wire: the crimp, else what closes it for all. */
export function wireClosingOf(wire: ResolvedWire, index: 0 | 1): string | undefined {
  const { contact } = endOf(wire, index);
  return contact ? opId.crimp(contact.id) : closingOf(wire, index);
}
