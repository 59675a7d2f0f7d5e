import { conductorFit } from '../derive/contact-fit';
import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { addPartLike } from './shared/example-parts';
import { judgeCrimps } from './shared/judge-fit';

export const conductorRange: Rule<'cavity'> = {
  meta: {
    id: 'conductor-range',
    revision: 1,
    severity: 'major',
    summary: 'The metal in a crimp barrel is within the range that the contact takes.',
    why: 'Too little metal leaves the barrel loose: the wire pulls out and the joint heats up. Too much cuts strands or leaves the barrel open, so that the contact does not enter the cavity.',
    source:
      'common practice (compare NASA lesson learned LLIS-0465); the true metal area of this very wire decides, a gauge is never compared with mm2',
    message: '{{wires}} in {{contact}} at {{cavity}}: {{measured}}, the contact takes {{limit}}',
    unknown:
      'Whether {{wires}} suits the barrel of {{contact}} at {{cavity}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check: (cavity, report) => judgeCrimps(cavity, report, 1, conductorFit),
  examples: () => ({
    good: [
      { name: '22 AWG in a contact for 20 to 24 AWG', project: tiny() },
      {
        name: 'by gauge, where the contact states no areas',
        project: tiny((t) => {
          for (const number of ['C-SOCKET', 'C-PIN']) {
            delete t.part('contact', number).areaMinMm2;
            delete t.part('contact', number).areaMaxMm2;
          }
        }),
      },
    ],
    bad: [
      {
        name: '26 AWG in a contact for 20 to 24 AWG',
        project: tiny((t) => {
          const range = { areaMinMm2: 0.08, areaMaxMm2: 0.17, insulationMinMm: 0.7, insulationMaxMm: 1.1 };
          const sizes = {
            sizeMin: { system: 'awg' as const, gauge: 28 },
            sizeMax: { system: 'awg' as const, gauge: 26 },
          };
          addPartLike(t, 'contact', 'C-SOCKET', { partNumber: 'C-SOCKET-26', ...range, ...sizes });
          addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-26', ...range, ...sizes });
          t.wire('W1').part = t.part('wire', 'WIRE-26').id;
        }),
        expect: ['X1:1', 'X2:1'],
      },
    ],
    unknown: [
      {
        name: 'a metric wire without its metal area in a contact known by gauge',
        project: tiny((t) => {
          for (const number of ['C-SOCKET', 'C-PIN']) {
            delete t.part('contact', number).areaMinMm2;
            delete t.part('contact', number).areaMaxMm2;
          }
          t.wire('W2').part = addPartLike(t, 'wire', 'WIRE-22', {
            partNumber: 'WIRE-0.35',
            size: { system: 'mm2', areaMm2: 0.35 },
            areaMm2: undefined,
            stranding: undefined,
          });
        }),
        expect: ['X1:2', 'X2:2'],
      },
      {
        name: 'a wire without a part',
        project: tiny((t) => delete t.wire('W1').part),
        expect: ['X1:1', 'X2:1'],
      },
    ],
  }),
};
