import type { Limit, TableChoice } from '../../model/limit-set';

/** "bend radius factor = 5 (handbook, edition 2, not verified)". */
export const limitText = (l: Limit): string =>
  `${l.id.replaceAll('-', ' ')} = ${l.value}${l.unit ? ` ${l.unit}` : ''} (${limitSource(l)})`;

export const limitSource = (l: Limit): string =>
  [l.source, ...(l.edition ? [l.edition] : []), ...(l.verified ? [] : ['not verified'])].join(', ');

export const tableChoiceText = (t: TableChoice): string =>
  `${t.id.replaceAll('-', ' ')}: by the table ${t.table}`;
