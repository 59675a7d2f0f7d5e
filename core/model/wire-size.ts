import { z } from 'zod';
import { ok, problem, type Result } from '../base/result';

/**
 * A wire size as its maker states it. Gauge and metric sizes are different systems: nothing here turns one into
 * the other, since a 20 AWG conductor (0.52 mm2 solid, up to 0.62 mm2 stranded) is not a 0.5 mm2 one.
 * Gauges 1/0 to 4/0 are 0, -1, -2, -3.
 */
export const WireSize = z.discriminatedUnion('system', [
  z.strictObject({ system: z.literal('awg'), gauge: z.int().min(-3).max(50) }),
  z.strictObject({ system: z.literal('mm2'), areaMm2: z.number().positive() }),
]);
export type WireSize = z.infer<typeof WireSize>;

export function wireSizeText(size: WireSize): string {
  if (size.system === 'mm2') return `${size.areaMm2} mm2`;
  return size.gauge > 0 ? `${size.gauge} AWG` : `${1 - size.gauge}/0 AWG`;
}

/** Reads "22 AWG", "AWG 22", "2/0 AWG", "0.35 mm2", "0.35 mm²" or "0,35 mm2". A bare number is refused. */
export function parseWireSize(text: string): Result<WireSize, string> {
  const t = text.trim().replace(/²/g, '2').replace(',', '.');
  const metric = /^(\d+(?:\.\d+)?)\s*mm2$/i.exec(t);
  if (metric) {
    const areaMm2 = Number(metric[1]);
    return areaMm2 > 0 ? ok({ system: 'mm2', areaMm2 }) : problem('a wire size must be greater than zero');
  }
  const awg = /^(?:AWG\s*)?(\d+(?:\/0)?)\s*(?:AWG)?$/i.exec(t);
  if (awg && /awg/i.test(t)) {
    const digits = awg[1] as string;
    const gauge = digits.endsWith('/0') ? 1 - Number(digits.slice(0, -2)) : Number(digits);
    return gauge >= -3 && gauge <= 50
      ? ok({ system: 'awg', gauge })
      : problem(`${digits} AWG is outside 4/0 to 50 AWG`);
  }
  return problem(`"${text}" is not a wire size; write "22 AWG" or "0.35 mm2" with its unit`);
}

/** Thinner is smaller: negative when a is the thinner one. Null when the systems differ. */
export function compareWireSize(a: WireSize, b: WireSize): number | null {
  if (a.system === 'awg' && b.system === 'awg') return b.gauge - a.gauge;
  if (a.system === 'mm2' && b.system === 'mm2') return a.areaMm2 - b.areaMm2;
  return null;
}
