import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { serialiseCatalogue, serialiseProject } from '@latchwork/core/model/serialise';
import { calcChecksText } from './calc-checks';
import { workbenchCatalogue } from './catalogue/catalogue';
import { benchLamp } from './demos/bench-lamp';
import { weatherStation } from './demos/weather-station/weather-station';
import { licencesText } from './shipped/licences';
import { sbomText } from './shipped/sbom';
import { workshopFaults } from './demos/workshop-faults/workshop-faults';

const root = fileURLToPath(new URL('../..', import.meta.url));

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
  { path: 'demo-projects/bench-lamp.latchwork', text: () => serialiseProject(benchLamp()) },
  { path: 'demo-projects/weather-station.latchwork', text: () => serialiseProject(weatherStation()) },
  { path: 'demo-projects/workshop-faults.latchwork', text: () => serialiseProject(workshopFaults()) },
  { path: 'assets/sbom.cdx.json', text: () => sbomText(root) },
  { path: 'assets/third-party-licences.txt', text: () => licencesText(root) },
  {
    path: 'tests/core/calc/CALCULATIONS.md',
    text: () => calcChecksText(readFileSync(new URL('./calc-notes.md', import.meta.url), 'utf8')),
  },
];
