import type { Signal } from '@latchwork/core/model/electrical';
import type { DemoBuilder } from '../builder';
import { addStation } from './stations';

type Supply = Pick<Signal, 'voltageV' | 'currentA' | 'sourceLimitA' | 'peakCurrentA' | 'peakS'>;

/** A power signal and its return, fed at positions of a header. */
function supply(
  demo: DemoBuilder,
  name: string,
  at: readonly [string, string, string],
  values: Supply,
): void {
  const [header, out, back] = at;
  const connector = demo.id('connectors', header);
  const add = (signal: Omit<Signal, 'id'>): void => demo.do({ id: 'signal.add', args: { signal } });
  add({ name: `${name}_SUP`, class: 'power', ...values, source: { connector, cavity: out } });
  add({
    name: `${name}_RTN`,
    class: 'return',
    voltageV: 0,
    currentA: values.currentA,
    source: { connector, cavity: back },
  });
  demo.returns([`${name}_SUP`], `${name}_RTN`);
}

function wires(
  demo: DemoBuilder,
  first: number,
  [near, far]: readonly [string, string],
  rows: readonly (readonly [part: string, colour: string, lengthMm: number])[],
): void {
  rows.forEach(([part, colour, lengthMm], i) =>
    demo.wire(`W${first + i}`, `${near}:${i + 1}`, `${far}:${i + 1}`, part, colour, { lengthMm }),
  );
}

/** What currents and voltages do: two stations of supplies, and air that is hot for one wire. */
export function addElectricalFaults(demo: DemoBuilder): void {
  addStation(demo, { first: 51, key: 'D', y: 545, equipment: 'A15' });
  supply(demo, 'HEAT', ['X51', '1', '2'], { voltageV: 24, currentA: 4 });
  supply(demo, 'LAMP', ['X51', '3', '4'], { voltageV: 5, currentA: 1, sourceLimitA: 2 });
  supply(demo, 'VENT', ['X51', '5', '6'], { voltageV: 12, currentA: 0.4, sourceLimitA: 0.5 });
  const loads = ['HEAT_SUP', 'HEAT_RTN', 'LAMP_SUP', 'LAMP_RTN', 'VENT_SUP', 'VENT_RTN'];
  for (const x of ['X51', 'X54']) demo.declare(x, loads);
  wires(
    demo,
    51,
    ['X52', 'X53'],
    [
      ['TW-22-120', 'RD', 350],
      ['TW-22-120', 'BK', 350],
      ['TW-24-105', 'OG', 2500],
      ['TW-24-105', 'BN', 2500],
      ['TW-22-120', 'BU', 350],
      ['TW-26-095', 'GY', 350],
    ],
  );
  demo.fuse('W51', 'OU-10A', 300);

  addStation(demo, { first: 55, key: 'B', y: 615, equipment: 'A16' });
  const motor = { voltageV: 12, currentA: 2, sourceLimitA: 2.5, peakCurrentA: 20, peakS: 0.05 };
  supply(demo, 'MOTOR', ['X55', '1', '3'], motor);
  supply(demo, 'HV', ['X55', '5', '6'], { voltageV: 325, currentA: 0.5, sourceLimitA: 1 });
  const high = ['MOTOR_SUP', 'MOTOR_SUP', 'MOTOR_RTN', 'MOTOR_RTN', 'HV_SUP', 'HV_RTN'];
  for (const x of ['X55', 'X58']) demo.declare(x, high);
  wires(
    demo,
    61,
    ['X56', 'X57'],
    [
      ['TW-22-120', 'RD', 350],
      ['TW-24-105', 'OG', 350],
      ['TW-22-120', 'BK', 350],
      ['TW-22-120', 'BN', 350],
      ['TW-22-120', 'YE', 350],
      ['TW-22-120', 'BU', 350],
    ],
  );
  const ids = ['X52', 'X53', 'X56', 'X57'].map((x) => demo.id('connectors', x));
  demo.do({ id: 'connector.edit', args: { ids, change: { serviceLoopMm: 20 } } });
  const air = {
    id: 'ambient-temperature',
    value: 70,
    unit: 'degC',
    source: 'beside an oven (invented)',
    verified: false,
  };
  demo.do({ id: 'project.set-limit', args: { limit: air } });
}
