import { contactFit } from '@latchwork/core/derive/contact-fit';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { ContactPart } from '@latchwork/core/model/parts/contact';
import type { HousingPart } from '@latchwork/core/model/parts/housing';
import { partOfKind } from '@latchwork/core/model/parts/part';
import type { Conductor } from '@latchwork/core/model/parts/wire';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { refText } from '@latchwork/core/rules/refs';
import { describe, expect, it } from 'vitest';

// Facts of the trade that every crimper relies on; source: common practice. Numbers: a contact for 20 to 24 AWG with
// an insulation band of 0.89 to 1.53 mm, in a housing of 3 mm pitch.
const { parts } = tiny();
const part = (number: string) => parts.find((p) => p.partNumber === number);
const housing = partOfKind(part('H-SOCKET'), 'housing') as HousingPart;
const contact = partOfKind(part('C-SOCKET'), 'contact') as ContactPart;
const pin = partOfKind(part('C-PIN'), 'contact') as ContactPart;
const wire = (gauge: number, odMm: number): Conductor => ({
  size: { system: 'awg', gauge },
  stranding: { strands: 7, strandDiameterMm: { 20: 0.32, 22: 0.254, 24: 0.2, 26: 0.16 }[gauge] ?? 0 },
  odMm,
});

describe('common practice', () => {
  it.each([
    [22, 1.2, 'fits'],
    [22, 1.6, 'does-not-fit'],
    [26, 1.2, 'does-not-fit'],
    [20, 1.5, 'fits'],
    [24, 1.0, 'fits'],
    [22, 0.8, 'does-not-fit'],
  ] as const)(
    '%d AWG with %d mm insulation in a contact for 20 to 24 AWG, 0.89 to 1.53 mm: %s',
    (gauge, od, verdict) => {
      expect(contactFit(housing, contact, [wire(gauge, od)]).verdict).toBe(verdict);
    },
  );

  it('a pin contact does not go into a housing for sockets, whatever the wire', () => {
    expect(contactFit(housing, pin, [wire(22, 1.2)])).toMatchObject({
      verdict: 'does-not-fit',
      reasons: [{ aspect: 'contact-kind', measured: 'pin', limit: 'socket' }],
    });
  });
});

describe('the same facts in a drawn harness', () => {
  const said = (change: (t: TinyDraft) => void): string[] => {
    const project = tiny(change);
    const { findings } = checkHarness(deriveHarness(project), RULES);
    return findings.map((f) => `${f.rule} ${refText(project, f.objects[0]!)}`).sort();
  };

  it('22 AWG of 1.2 mm: nothing to say', () => {
    expect(said(() => undefined)).toEqual([]);
  });

  it('1.6 mm insulation: the insulation support at both ends', () => {
    const findings = said((t) => {
      t.part('wire', 'WIRE-22').odMm = 1.6;
    });
    expect(findings).toEqual(['X1:1', 'X1:2', 'X2:1', 'X2:2'].map((at) => `insulation-range ${at}`));
  });

  it('26 AWG: the barrel at both ends', () => {
    const findings = said((t) => {
      t.wire('W1').part = t.part('wire', 'WIRE-26').id;
      Object.assign(t.project.signals[0]!, { currentA: 0.1, sourceLimitA: 0.5 });
    });
    expect(findings).toEqual(['conductor-range X1:1', 'conductor-range X2:1']);
  });

  it('a pin contact in a housing for sockets: the kind', () => {
    const findings = said((t) => {
      t.project.contacts[0]!.part = t.part('contact', 'C-PIN').id;
    });
    expect(findings).toEqual(['contact-kind X1:1']);
  });
});
