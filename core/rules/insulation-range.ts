import { insulationFit } from '../derive/contact-fit';
import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { addPartLike } from './shared/example-parts';
import { judgeWires } from './shared/judge-fit';

/** Of wires that share a crimp each is held against the band on its own; that they may share is `double-crimp`. */
export const insulationRange: Rule<'cavity'> = {
  meta: {
    id: 'insulation-range',
    revision: 1,
    severity: 'major',
    summary: 'The insulation of a wire is within the band that the insulation support of its contact grips.',
    why: 'Thin insulation is not held, so every bend works on the conductor at the edge of the barrel until strands break. Thick insulation is cut by the support, or the crimped contact does not enter the cavity.',
    source:
      'common practice: the contact states a band of insulation diameters; wires of one gauge differ widely in diameter',
    message: 'The insulation of {{wire}} is {{measured}}; {{contact}} at {{cavity}} grips {{limit}}',
    unknown:
      'Whether {{contact}} at {{cavity}} grips the insulation of {{wire}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check: (cavity, report) => judgeWires(cavity, report, insulationFit),
  examples: () => ({
    good: [
      { name: '1.2 mm in a band from 0.89 to 1.53 mm', project: tiny() },
      {
        name: 'exactly at the upper end of the band',
        project: tiny((t) => {
          t.part('wire', 'WIRE-22').odMm = 1.53;
        }),
      },
    ],
    bad: [
      {
        name: '1.6 mm in a band from 0.89 to 1.53 mm',
        project: tiny((t) => {
          const band = { insulationMinMm: 1.4, insulationMaxMm: 1.8 };
          addPartLike(t, 'contact', 'C-SOCKET', { partNumber: 'C-SOCKET-THICK', ...band });
          addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-THICK', ...band });
          t.wire('W2').part = addPartLike(t, 'wire', 'WIRE-22', { partNumber: 'WIRE-22-THICK', odMm: 1.6 });
        }),
        expect: ['X1:2', 'X2:2'],
      },
      {
        name: 'nominal diameter inside, largest diameter outside',
        project: tiny((t) => {
          addPartLike(t, 'contact', 'C-SOCKET', { partNumber: 'C-SOCKET-WIDE', insulationMaxMm: 1.8 });
          addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-WIDE', insulationMaxMm: 1.8 });
          t.wire('W1').part = addPartLike(t, 'wire', 'WIRE-22', {
            partNumber: 'WIRE-22-LOOSE',
            odMinMm: 1.4,
            odMm: 1.5,
            odMaxMm: 1.6,
          });
        }),
        expect: ['X1:1', 'X2:1'],
      },
    ],
    unknown: [
      {
        name: 'a wire without an insulation diameter',
        project: tiny((t) => delete t.part('wire', 'WIRE-22').odMm),
        expect: ['X1:1', 'X1:2', 'X2:1', 'X2:2'],
      },
      {
        name: 'a contact without the upper end of its band',
        project: tiny((t) => delete t.part('contact', 'C-PIN').insulationMaxMm),
        expect: ['X2:1', 'X2:2'],
      },
    ],
  }),
};
