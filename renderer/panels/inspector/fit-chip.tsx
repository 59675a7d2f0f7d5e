import type { Fit } from '@latchwork/core/derive/contact-fit';
import { Quantity } from '../../ui/quantity';
import { WorkedNumber } from '../../ui/worked-number';

const WORDS = { fits: 'fits', 'does-not-fit': 'does not fit', unknown: 'cannot verify' } as const;
const TONES = { fits: 'good', 'does-not-fit': 'critical', unknown: 'unknown' } as const;

/** Whether the contact suits housing and wire, with the values it was decided on behind it. */
export function FitChip({ fit, title }: { fit: Fit; title: string }) {
  const reasons =
    fit.verdict === 'does-not-fit'
      ? fit.reasons.map((r) => `${r.aspect.replaceAll('-', ' ')} is ${r.measured}, the limit is ${r.limit}`)
      : [];
  return (
    <WorkedNumber
      working={{
        title,
        lines: fit.facts.map((f) => ({
          label: f.label,
          value: <Quantity value={f.value} unit={f.unit} />,
          source: `record of the ${f.of}`,
        })),
        result: WORDS[fit.verdict],
        needs: fit.verdict === 'unknown' ? fit.needs.map((n) => n.what) : [],
        method: reasons.length
          ? `${reasons.join('; ')}.`
          : 'Contact kind and series against the housing; conductor area and insulation diameter against the ranges of the contact. Blank data is never a pass.',
      }}
    >
      <span className="chip" data-tone={TONES[fit.verdict]}>
        {WORDS[fit.verdict]}
      </span>
    </WorkedNumber>
  );
}
