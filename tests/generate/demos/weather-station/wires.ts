import type { DemoBuilder } from '../builder';

/** From, to, wire part, colour. Numbered W1, W2 … in this order. */
const WIRES: readonly (readonly [from: string, to: string, part: string, colour: string])[] = [
  ['X22:1', 'XS1', 'TW-20-145', 'RD'],
  ['X22:2', 'XS2', 'TW-20-145', 'BK'],
  ['XS1', 'X12:1', 'TW-20-145', 'RD'],
  ['XS2', 'X12:2', 'TW-20-145', 'BK'],
  ['XS1', 'X21:7', 'TW-22-120', 'RD'],
  ['XS2', 'X21:8', 'TW-22-120', 'BK'],

  ['X12:3', 'X23:1', 'TW-20-145', 'OG'],
  ['X12:4', 'X23:2', 'TW-20-145', 'BN'],
  ['X12:5', 'X23:3', 'TW-22-120', 'VT'],

  ['X13:1', 'X24:1', 'TW-22-120', 'RD'],
  ['X13:2', 'X24:2', 'TW-22-120', 'BK'],
  ['X13:3', 'X24:3', 'TW-22-120', 'WH'],
  ['X13:4', 'X24:4', 'TW-22-120', 'BU'],
  ['X13:5', 'X24:5', 'TW-20-145', 'OG'],
  ['X13:6', 'X24:6', 'TW-20-145', 'BN'],

  ['X14:1', 'X25:1', 'TW-22-120', 'RD'],
  ['X14:2', 'X25:2', 'TW-22-120', 'BK'],
  ['X14:3', 'X25:3', 'TW-22-120', 'WH/GN'],
  ['X14:4', 'X25:4', 'TW-22-120', 'GN'],

  ['X15:1', 'X26:1', 'TW-22-120', 'YE'],
  ['X15:2', 'X26:2', 'TW-22-120', 'GY'],

  ['X15:3', 'X27:1', 'TW-22-120', 'RD'],
  ['X15:4', 'X27:2', 'TW-22-120', 'BK'],
  ['X15:5', 'X27:3', 'TW-22-120', 'WH'],
  ['X15:6', 'X27:4', 'TW-22-120', 'BU'],

  ['X11:1', 'X21:1', 'TW-26-095', 'WH'],
  ['X11:2', 'X21:2', 'TW-26-095', 'GN'],
  ['X11:3', 'X21:3', 'TW-26-095', 'BU'],
  ['X11:4', 'X21:4', 'TW-26-095', 'VT'],
  ['X11:5', 'X21:5', 'TW-26-095', 'YE'],
  ['X11:6', 'X21:6', 'TW-26-095', 'GY'],

  ['X16:1', 'X28:1', 'TW-26-095', 'RD'],
  ['X16:2', 'X28:2', 'TW-26-095', 'BK'],
  ['X16:3', 'X28:3', 'TW-26-095', 'WH'],
  ['X16:4', 'X28:4', 'TW-26-095', 'BU'],
  ['X16:5', 'X28:5', 'TW-26-095', 'GN'],
  ['X16:6', 'X28:6', 'TW-26-095', 'YE'],
  ['X16:7', 'X28:7', 'TW-26-095', 'OG'],
  ['X16:8', 'X28:8', 'TW-26-095', 'BN'],
  ['X16:9', 'X28:9', 'TW-26-095', 'VT'],
  ['X16:10', 'X28:10', 'TW-26-095', 'GY'],
];

/** Battery leads meet the board and the modem in two splices; the two data buses run as twisted pairs. */
export function addWires(demo: DemoBuilder): void {
  const splicePart = demo.part('splice', 'OJ-15');
  demo.do({ id: 'splice.add', args: { designator: 'XS1', position: { x: 215, y: 110 }, part: splicePart } });
  demo.do({ id: 'splice.add', args: { designator: 'XS2', position: { x: 235, y: 130 }, part: splicePart } });
  const splices: Readonly<Record<string, string>> = { XS1: 'BAT_SUP', XS2: 'BAT_RTN' };
  WIRES.forEach(([from, to, part, colour], i) => {
    const signal = splices[from] ?? splices[to];
    demo.wire(`W${i + 1}`, from, to, part, colour, signal ? { signal } : {});
  });
  for (const [i, [from, to]] of WIRES.entries())
    for (const [end, place] of [
      [0, from],
      [1, to],
    ] as const)
      // prettier-ignore
      if (splices[place])
        demo.do({
          id: 'wire.set-strip-length',
          args: { id: demo.id('wires', `W${i + 1}`), end, stripLengthMm: splicePart.stripLengthMm ?? 6 },
        });
  const pair = (designator: string, a: string, b: string): void =>
    demo.do({
      id: 'group.add',
      args: { designator, form: 'twisted', wires: [demo.id('wires', a), demo.id('wires', b)], layMm: 25 },
    });
  pair('WG1', 'W12', 'W13');
  pair('WG2', 'W18', 'W19');
}
