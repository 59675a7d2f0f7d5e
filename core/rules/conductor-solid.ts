import { solidFit } from '../derive/contact-fit';
import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { addPartLike } from './shared/example-parts';
import { judgeWires } from './shared/judge-fit';

export const conductorSolid: Rule<'cavity'> = {
  meta: {
    id: 'conductor-solid',
    revision: 1,
    severity: 'major',
    summary: 'A solid conductor is crimped only where the contact is made for it.',
    why: 'Strands flow into the voids of the barrel and stay under tension. A solid wire is only dented: the joint relaxes, oxidises and heats, and the notched wire breaks when it is bent.',
    source:
      'NASA-STD-8739.4: crimp contacts are for stranded wire unless the contact is specified for solid wire (clause from memory)',
    message: '{{wire}} has a {{measured}} conductor; {{contact}} at {{cavity}} takes {{limit}}',
    unknown:
      'Whether the conductor of {{wire}} suits {{contact}} at {{cavity}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check: (cavity, report) => judgeWires(cavity, report, solidFit),
  examples: () => ({
    good: [
      { name: 'seven strands', project: tiny() },
      {
        name: 'a solid conductor in contacts that permit it',
        project: tiny((t) => {
          t.part('wire', 'WIRE-22').stranding = { strands: 1, strandDiameterMm: 0.644 };
          t.part('contact', 'C-SOCKET').strandedOnly = false;
          t.part('contact', 'C-PIN').strandedOnly = false;
        }),
      },
    ],
    bad: [
      {
        name: 'a solid conductor in a contact for stranded wire',
        project: tiny((t) => {
          addPartLike(t, 'contact', 'C-SOCKET', { partNumber: 'C-SOCKET-SOLID', strandedOnly: false });
          addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-SOLID', strandedOnly: false });
          t.wire('W1').part = addPartLike(t, 'wire', 'WIRE-22', {
            partNumber: 'WIRE-22-SOLID',
            areaMm2: 0.326,
            stranding: { strands: 1, strandDiameterMm: 0.644 },
          });
        }),
        expect: ['X1:1', 'X2:1'],
      },
    ],
    unknown: [
      {
        name: 'stranding not stated',
        project: tiny((t) => delete t.part('wire', 'WIRE-22').stranding),
        expect: ['X1:1', 'X1:2', 'X2:1', 'X2:2'],
      },
      {
        name: 'a solid conductor, and the contact does not say whether it takes one',
        project: tiny((t) => {
          delete t.part('contact', 'C-PIN').strandedOnly;
          t.part('contact', 'C-SOCKET').strandedOnly = false;
          t.part('wire', 'WIRE-22').stranding = { strands: 1, strandDiameterMm: 0.644 };
        }),
        expect: ['X2:1', 'X2:2'],
      },
    ],
  }),
};
