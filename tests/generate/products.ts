import { readFileSync } from 'node:fs';
import { serialiseCatalogue, serialiseProject } from '@latchwork/core/model/serialise';
import { calcChecksText } from './calc-checks';
import { workbenchCatalogue } from './catalogue/catalogue';
import { benchLamp } from './demos/bench-lamp';
import { weatherStation } from './demos/weather-station/weather-station';
import { workshopFaults } from './demos/workshop-faults/workshop-faults';

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
  {
    path: 'tests/core/calc/CALCULATIONS.md',
    text: () => calcChecksText(readFileSync(new URL('./calc-notes.md', import.meta.url), 'utf8')),
  },
];
