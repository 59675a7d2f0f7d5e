import { crimpsOf } from '../derive/crimps';
import type { EndInCavity } from '../derive/harness';
import type { Limit } from '../model/limit-set';
import { roundTo } from '../model/length-text';
import type { ContactPart } from '../model/parts/contact';
import { tiny } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { cavityName, cavityRef, partRef, partSource, wireRef } from './refs';
import type { Rule } from './rule';

const LIMIT = 'strip-length-tolerance';

export const stripLength: Rule<'cavity'> = {
  meta: {
    id: 'strip-length',
    revision: 1,
    severity: 'major',
    summary: 'Every crimped wire end is stripped to the length that its contact states.',
    why: 'Stripped short, insulation is crimped into the barrel and the metal does not touch. Stripped long, bare strands stand out in front or behind, touch the neighbour or are not held by the insulation support.',
    source: 'IEC 60352-2 (strip length is part of the crimp specification); common practice',
    message: '{{wire}} is stripped {{measured}} mm at {{cavity}}; {{contact}} needs {{limit}}',
    unknown: 'The strip length of {{wire}} at {{cavity}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check(cavity, report, context) {
    for (const { part, ends } of crimpsOf(cavity))
      for (const end of ends) {
        const at = [cavityRef(cavity), wireRef(end.wire)];
        const data = {
          wire: end.wire.wire.designator,
          cavity: cavityName(cavity),
          contact: part.partNumber,
        };
        const measured = end.end.end.stripLengthMm;
        const nominal = part.stripLengthMm;
        const tolerance = toleranceOf(part, context.limit(LIMIT), context.limitSet.name);
        if (measured === undefined || nominal === undefined || !tolerance) {
          report.cannotVerify({ at, data, needs: needsOf(end, part, tolerance !== null) });
          continue;
        }
        const evidence: Evidence[] = [
          { label: `strip length of ${data.wire}`, value: measured, unit: 'mm', source: 'typed' },
          { label: 'strip length of the contact', value: nominal, unit: 'mm', source: partSource(part) },
          { label: 'tolerance', value: tolerance.mm, unit: 'mm', source: tolerance.source },
        ];
        // Typed decimals: 2.8 - 2.5 is a little more than 0.3 in binary.
        if (roundTo(Math.abs(measured - nominal), 6) <= tolerance.mm) report.pass();
        else
          report.fail({
            at,
            data: { ...data, measured, limit: `${nominal} ± ${tolerance.mm} mm` },
            evidence,
            fix: {
              label: `Strip ${data.wire} ${nominal} mm at ${data.cavity}`,
              command: 'wire.set-strip-length',
              args: { id: end.wire.wire.id, end: end.index, stripLengthMm: nominal },
            },
          });
      }
  },
  examples: () => ({
    good: [
      { name: 'stripped as the contact states', project: tiny() },
      {
        name: 'exactly at the tolerance',
        project: tiny((t) => {
          t.wire('W1').ends[0].stripLengthMm = 2.8;
        }),
      },
      {
        name: 'within the tolerance of the limit set, where the contact states none',
        project: tiny((t) => {
          delete t.part('contact', 'C-PIN').stripToleranceMm;
          t.wire('W1').ends[1].stripLengthMm = 3;
        }),
      },
    ],
    bad: [
      {
        name: 'stripped for another contact',
        project: tiny((t) => {
          t.wire('W1').ends[1].stripLengthMm = 4;
          t.wire('W2').ends[0].stripLengthMm = 2.1;
        }),
        expect: ['X1:2', 'X2:1'],
      },
    ],
    unknown: [
      {
        name: 'no strip length at one end',
        project: tiny((t) => delete t.wire('W2').ends[1].stripLengthMm),
        expect: ['X2:2'],
      },
      {
        name: 'the contact states no strip length',
        project: tiny((t) => delete t.part('contact', 'C-SOCKET').stripLengthMm),
        expect: ['X1:1', 'X1:2'],
      },
    ],
  }),
};

function toleranceOf(
  contact: ContactPart,
  limit: Limit | undefined,
  limitSet: string,
): { readonly mm: number; readonly source: string } | null {
  if (contact.stripToleranceMm !== undefined)
    return { mm: contact.stripToleranceMm, source: partSource(contact) };
  return limit ? { mm: limit.value, source: `limit set ${limitSet}: ${limit.source}` } : null;
}

function needsOf(end: EndInCavity, contact: ContactPart, hasTolerance: boolean): Need[] {
  const needs: Need[] = [];
  if (end.end.end.stripLengthMm === undefined) {
    const at = wireRef(end.wire);
    needs.push({
      what: `strip length of wire ${end.wire.wire.designator}`,
      at,
      field: `ends[${end.index}].stripLengthMm`,
    });
  }
  if (contact.stripLengthMm === undefined) {
    const what = `strip length of contact ${contact.partNumber}`;
    needs.push({ what, at: partRef(contact), field: 'stripLengthMm' });
  }
  if (!hasTolerance) {
    const what = `strip tolerance of contact ${contact.partNumber} or the limit ${LIMIT}`;
    needs.push({ what, at: partRef(contact), field: 'stripToleranceMm' });
  }
  return needs;
}
