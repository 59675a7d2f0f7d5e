import type { DemoBuilder } from '../builder';

/** The boxes of the station: its logger board, the display board in the door, the bottom plate, what hangs outside. */
export function addEquipment(demo: DemoBuilder): void {
  const box = (
    designator: string,
    description: string,
    x: number,
    y: number,
    widthMm: number,
    heightMm: number,
  ) => ({
    designator,
    description,
    position: { x, y },
    widthMm,
    heightMm,
  });
  demo.do({
    id: 'equipment.add',
    args: {
      equipment: {
        kind: 'board',
        ...box('A1', 'Logger board', 20, 20, 75, 500),
        thicknessMm: 1.6,
        solderProcess: { process: 'wave', peakC: 255, timeS: 4 },
      },
    },
  });
  demo.do({
    id: 'equipment.add',
    args: {
      equipment: {
        kind: 'board',
        ...box('A2', 'Display board in the door', 385, 430, 80, 90),
        thicknessMm: 1.6,
        solderProcess: { process: 'reflow', peakC: 245, timeS: 20 },
      },
    },
  });
  demo.do({
    id: 'equipment.add',
    args: {
      equipment: {
        kind: 'panel',
        ...box('U1', 'Bottom plate, painted', 320, 140, 45, 285),
        thicknessMm: 2,
        coatingsMm: 0.12,
      },
    },
  });
  const devices = [
    box('A3', 'Radio modem', 385, 20, 80, 75),
    box('A4', 'Battery', 385, 100, 80, 40),
    box('A5', 'Solar panel with thermistor', 385, 145, 80, 45),
    box('A6', 'Wind sensor with heater', 385, 195, 80, 65),
    box('A7', 'Soil probe', 385, 265, 80, 50),
    box('A8', 'Rain gauge', 385, 320, 80, 45),
    box('A9', 'Air sensor', 385, 370, 80, 50),
  ];
  for (const device of devices)
    demo.do({ id: 'equipment.add', args: { equipment: { kind: 'device', ...device } } });
}
