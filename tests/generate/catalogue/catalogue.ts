import { CATALOGUE_FORMAT, type Catalogue } from '@latchwork/core/catalogue/catalogue';
import type { Part } from '@latchwork/core/model/parts/part';
import { alderParts } from './alder-30';
import { birchParts } from './birch-20';
import { cableParts } from './cables';
import { cedarParts } from './cedar-45';
import { coveringParts } from './coverings';
import { jointParts } from './joints';
import { CATALOGUE_DATE, CATALOGUE_NAME, CATALOGUE_REVISION } from './records';
import { sundryParts } from './sundries';
import { toolParts } from './tools';
import { wireParts } from './wires';

/** The demo catalogue: the same on every run. */
export const workbenchCatalogue = (): Catalogue => ({
  format: CATALOGUE_FORMAT,
  formatVersion: 1,
  name: CATALOGUE_NAME,
  revision: CATALOGUE_REVISION,
  date: CATALOGUE_DATE,
  note: 'All data is invented: makers, suppliers, part numbers, dimensions, ratings and prices. Do not order or build from it.',
  parts: [
    ...alderParts(),
    ...birchParts(),
    ...cedarParts(),
    ...wireParts(),
    ...cableParts(),
    ...coveringParts(),
    ...jointParts(),
    ...sundryParts(),
    ...toolParts(),
  ],
});

let made: readonly Part[] | undefined;

export const workbenchParts = (): readonly Part[] => (made ??= workbenchCatalogue().parts);
