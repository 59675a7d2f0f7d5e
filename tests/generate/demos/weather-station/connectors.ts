import type { DemoBuilder } from '../builder';
import { INTERFACES } from './signals';

type Row = readonly [designator: string, part: string, x: number, y: number, what: string];

const HEADERS: readonly Row[] = [
  ['X1', 'BI2-08-HA-B-AU', 60, 30, 'Radio modem'],
  ['X2', 'AL3-06-HA-A', 60, 110, 'Power'],
  ['X3', 'AL3-06-HV-B', 60, 205, 'Wind sensor'],
  ['X4', 'AL3-04-HV-C', 60, 275, 'Soil probe'],
  ['X5', 'BI2-08-HV-A', 60, 335, 'Rain gauge and air sensor'],
  ['X6', 'BI2-10-HV-A', 60, 440, 'Display'],
];

const BOARD_HALVES: readonly Row[] = [
  ['X11', 'BI2-08-FS-B', 115, 30, 'Radio modem'],
  ['X12', 'AL3-06-FS-A', 115, 110, 'Power'],
  ['X13', 'AL3-06-FS-B', 115, 205, 'Wind sensor'],
  ['X14', 'AL3-04-FS-C', 115, 275, 'Soil probe'],
  ['X15', 'BI2-08-FS-A', 115, 335, 'Rain gauge and air sensor'],
  ['X16', 'BI2-10-FS-A', 115, 440, 'Display'],
];

const PANEL: readonly Row[] = [
  ['X23', 'CD45-03-PP-A', 330, 155, 'Solar inlet'],
  ['X24', 'CD45-06-PP-A', 330, 205, 'Wind sensor outlet'],
  ['X25', 'CD45-04-PP-A', 330, 275, 'Soil probe outlet'],
  ['X26', 'CD45-03-PP-B', 330, 330, 'Rain gauge inlet'],
  ['X27', 'CD45-04-PP-B', 330, 380, 'Air sensor outlet'],
];

const INSIDE: readonly Row[] = [
  ['X21', 'BI2-08-FP-B', 330, 30, 'To the radio modem'],
  ['X22', 'AL3-02-FP-C', 330, 110, 'To the battery'],
];

/** Halves that come with the equipment they hang on. */
const EQUIPMENT: readonly (readonly [equipment: string, row: Row])[] = [
  ['A3', ['X31', 'BI2-08-FS-B', 395, 30, 'Pigtail of the modem']],
  ['A4', ['X32', 'AL3-02-FS-C', 395, 110, 'Leads of the battery']],
  ['A5', ['X33', 'CD45-03-FS-A', 395, 155, 'Cable of the solar panel']],
  ['A6', ['X34', 'CD45-06-FS-A', 395, 205, 'Cable of the wind sensor']],
  ['A7', ['X35', 'CD45-04-FS-A', 395, 275, 'Cable of the soil probe']],
  ['A8', ['X36', 'CD45-03-FS-B', 395, 330, 'Cable of the rain gauge']],
  ['A9', ['X37', 'CD45-04-FS-B', 395, 380, 'Cable of the air sensor']],
];

/** The halves of both sides, mated. Halves for pins on the right are seen from the wire, so that 1 is on top. */
export function addConnectors(demo: DemoBuilder): void {
  const place = ([designator, part, x, y, description]: Row, more: object = {}): void =>
    demo.connector(designator, part, [x, y], { description, ...more });
  const fromTheWire = { exit: 'left', view: 'wire-entry-face' };

  for (const row of HEADERS) place(row, { equipment: 'A1' });
  for (const row of BOARD_HALVES) place(row);
  for (const row of INSIDE) place(row, fromTheWire);
  for (const row of PANEL) place(row, { ...fromTheWire, equipment: 'U1' });
  for (const [equipment, row] of EQUIPMENT) place(row, { equipment, supply: 'equipment' });
  place(['X28', 'BI2-10-FS-A', 330, 440, 'To the display board'], { exit: 'left' });
  place(['X38', 'BI2-10-SV-A', 395, 440, 'Display input'], { equipment: 'A2', exit: 'left' });

  for (const n of [11, 12, 13, 14, 15, 16]) demo.mate(`X${n}`, `X${n - 10}`);
  for (const n of [21, 22, 23, 24, 25, 26, 27, 28]) demo.mate(`X${n}`, `X${n + 10}`);
}

/** What stands at each position, and what the positions without a wire are meant to be. */
export function declareCavities(demo: DemoBuilder): void {
  for (const [designator, signals] of Object.entries(INTERFACES)) demo.declare(designator, signals);
  demo.state('X11', ['7', '8'], 'empty');
  demo.state('X12', ['6'], 'empty');
  demo.state('X15', ['7', '8'], 'empty');
  demo.state('X26', ['3'], 'plugged', 'CD45-PLUG');
  demo.state('X36', ['3'], 'plugged', 'CD45-PLUG');
}
