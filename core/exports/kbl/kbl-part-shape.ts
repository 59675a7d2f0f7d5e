import type { Part } from '../../model/parts/part';
import type { FieldText } from '../exchange/field-text';
import { xmlId } from '../exchange/xml-id';
import type { Children } from './kbl-values';

/** Fields of every part that have an element, and the offers, which are between the buyer and the supplier. */
const PLACED_OF_PART = ['id', 'kind', 'maker', 'partNumber', 'description', 'massG', 'offers'] as const;

const PLACED_OF_KIND: Readonly<Record<Part['kind'], readonly string[]>> = {
  housing: ['ways', 'keying'],
  header: ['ways', 'keying'],
  contact: ['areaMinMm2', 'areaMaxMm2', 'insulationMinMm', 'insulationMaxMm', 'finish'],
  wire: ['size', 'areaMm2', 'odMm', 'style'],
  cable: ['odMm', 'cores', 'jacketColour', 'style'],
  splice: ['areaMinMm2', 'areaMaxMm2'],
  terminal: ['areaMinMm2', 'areaMaxMm2', 'insulationMaxMm'],
  'cavity-plug': [],
  'wire-seal': ['odMinMm', 'odMaxMm'],
  'secondary-lock': [],
  'strain-relief': [],
  covering: ['form'],
  grommet: [],
  clamp: [],
  tie: [],
  label: [],
  fuse: ['ratedA'],
  tool: [],
};

/** The fields of a part that have an element of their own in KBL, or stay out on purpose. */
export const placedFieldsOf = (kind: Part['kind']): ReadonlySet<string> =>
  new Set([...PLACED_OF_PART, ...PLACED_OF_KIND[kind]]);

export const partId = (key: string): string => xmlId('P', key);
export const cavityId = (key: string, cavity: string): string => xmlId('P', key, 'cavity', cavity);
export const slotId = (key: string): string => xmlId('P', key, 'slot');

/** What identifies a part, and what hangs on its kind. */
export interface PartShape {
  readonly element: string;
  readonly type?: string;
  readonly key: string;
  readonly partNumber: string;
  readonly fields: readonly FieldText[];
  readonly children: Children;
}
