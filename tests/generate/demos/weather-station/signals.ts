import type { SignalClass } from '@latchwork/core/model/electrical';

/** Name, class, volts, amperes, and the position that feeds it. */
export const SIGNALS: readonly (readonly [string, SignalClass, number, number, string])[] = [
  ['BAT_SUP', 'power', 12, 1.6, 'X32:1'],
  ['BAT_RTN', 'return', 0, 1.6, 'X32:2'],
  ['SOLAR_SUP', 'power', 18, 2.5, 'X33:1'],
  ['SOLAR_RTN', 'return', 0, 2.5, 'X33:2'],
  ['SOLAR_TEMP', 'signal', 3.3, 0.001, 'X33:3'],
  ['WIND_SUP', 'power', 12, 0.15, 'X3:1'],
  ['WIND_RTN', 'return', 0, 0.15, 'X3:2'],
  ['WIND_A', 'signal', 5, 0.03, 'X34:3'],
  ['WIND_B', 'signal', 5, 0.03, 'X34:4'],
  ['HEAT_SUP', 'power', 12, 2, 'X3:5'],
  ['HEAT_RTN', 'return', 0, 2, 'X3:6'],
  ['SOIL_SUP', 'power', 12, 0.05, 'X4:1'],
  ['SOIL_RTN', 'return', 0, 0.05, 'X4:2'],
  ['SOIL_A', 'signal', 5, 0.03, 'X35:3'],
  ['SOIL_B', 'signal', 5, 0.03, 'X35:4'],
  ['RAIN_PULSE', 'signal', 3.3, 0.002, 'X36:1'],
  ['RAIN_RTN', 'return', 0, 0.002, 'X36:2'],
  ['AIR_SUP', 'power', 3.3, 0.02, 'X5:3'],
  ['AIR_RTN', 'return', 0, 0.02, 'X5:4'],
  ['AIR_SDA', 'signal', 3.3, 0.003, 'X37:3'],
  ['AIR_SCL', 'signal', 3.3, 0.003, 'X5:6'],
  ['MODEM_TXD', 'signal', 3.3, 0.004, 'X1:1'],
  ['MODEM_RXD', 'signal', 3.3, 0.004, 'X31:2'],
  ['MODEM_RTS', 'signal', 3.3, 0.004, 'X1:3'],
  ['MODEM_CTS', 'signal', 3.3, 0.004, 'X31:4'],
  ['MODEM_ON', 'signal', 3.3, 0.004, 'X1:5'],
  ['MODEM_RING', 'signal', 3.3, 0.004, 'X31:6'],
  ['DISP_SUP', 'power', 3.3, 0.08, 'X6:1'],
  ['DISP_RTN', 'return', 0, 0.08, 'X6:2'],
  ['DISP_CLK', 'signal', 3.3, 0.004, 'X6:3'],
  ['DISP_DATA', 'signal', 3.3, 0.004, 'X6:4'],
  ['DISP_SELECT', 'signal', 3.3, 0.004, 'X6:5'],
  ['DISP_RESET', 'signal', 3.3, 0.004, 'X6:6'],
  ['DISP_LIGHT', 'signal', 3.3, 0.03, 'X6:7'],
  ['KEY_UP', 'signal', 3.3, 0.001, 'X38:8'],
  ['KEY_DOWN', 'signal', 3.3, 0.001, 'X38:9'],
  ['KEY_OK', 'signal', 3.3, 0.001, 'X38:10'],
];

/** Signals that return on the signal named. */
export const RETURNS: Readonly<Record<string, readonly string[]>> = {
  BAT_RTN: ['BAT_SUP'],
  SOLAR_RTN: ['SOLAR_SUP'],
  WIND_RTN: ['WIND_SUP'],
  HEAT_RTN: ['HEAT_SUP'],
  SOIL_RTN: ['SOIL_SUP'],
  RAIN_RTN: ['RAIN_PULSE'],
  AIR_RTN: ['AIR_SUP'],
  DISP_RTN: ['DISP_SUP'],
};

/** Amperes at which a source limits itself: the panel by its nature, the board by its switches. The battery does not. */
export const SOURCE_LIMITS: Readonly<Record<string, number>> = {
  SOLAR_SUP: 3,
  WIND_SUP: 0.5,
  HEAT_SUP: 3,
  SOIL_SUP: 0.5,
  AIR_SUP: 0.5,
  DISP_SUP: 0.5,
};

const WIND = ['WIND_SUP', 'WIND_RTN', 'WIND_A', 'WIND_B', 'HEAT_SUP', 'HEAT_RTN'];
const SOIL = ['SOIL_SUP', 'SOIL_RTN', 'SOIL_A', 'SOIL_B'];
const SOLAR = ['SOLAR_SUP', 'SOLAR_RTN', 'SOLAR_TEMP'];
const RAIN = ['RAIN_PULSE', 'RAIN_RTN'];
const AIR = ['AIR_SUP', 'AIR_RTN', 'AIR_SDA', 'AIR_SCL'];
const BATTERY = ['BAT_SUP', 'BAT_RTN'];
const MODEM = ['MODEM_TXD', 'MODEM_RXD', 'MODEM_RTS', 'MODEM_CTS', 'MODEM_ON', 'MODEM_RING'];
const DISPLAY = [
  'DISP_SUP', 'DISP_RTN', 'DISP_CLK', 'DISP_DATA', 'DISP_SELECT', 'DISP_RESET', 'DISP_LIGHT', 'KEY_UP', 'KEY_DOWN',
  'KEY_OK',
]; // prettier-ignore

/** Interfaces of the equipment: signals of the positions 1, 2, 3 … */
export const INTERFACES: Readonly<Record<string, readonly string[]>> = {
  X1: MODEM,
  X2: [...BATTERY, ...SOLAR],
  X3: WIND,
  X4: SOIL,
  X5: [...RAIN, ...AIR],
  X6: DISPLAY,
  X31: [...MODEM, ...BATTERY],
  X32: BATTERY,
  X33: SOLAR,
  X34: WIND,
  X35: SOIL,
  X36: RAIN,
  X37: AIR,
  X38: DISPLAY,
};
