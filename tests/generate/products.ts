import { serialiseCatalogue } from '@latchwork/core/model/serialise';
import { workbenchCatalogue } from './catalogue/catalogue';

/** A file of the repository that is made by a program, with the path where it stands. */
export interface Product {
  readonly path: string;
  readonly text: () => string;
}

export const products = (): readonly Product[] => [
  {
    path: 'assets/catalogues/workbench.json',
    text: () => serialiseCatalogue(workbenchCatalogue()),
  },
];
