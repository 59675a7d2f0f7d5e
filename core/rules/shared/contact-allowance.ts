import { contactDerating } from '../../calc/contact-derating';
import { contactRating } from '../../calc/contact-rating';
import type { CavityUse, ConnectorUse, Supply } from '../../derive/harness';
import { limitValue } from '../../derive/wire-ampacity';
import type { LimitSet } from '../../model/limit-set';
import type { MatingHalf, Part } from '../../model/parts/part';
import type { Evidence, Need } from '../finding';
import { connectorRef, partSource } from '../refs';
import { partNeed } from './evidence';
import { metalAreaMm2, metalAreaNeed } from './metal-area';

/** One record's word on what may go through a contact. */
export interface Bound {
  readonly part: Part;
  /** As the record states it, for its own conditions, A. */
  readonly ratedA: number;
  /** At the air temperature of the limit set; never more than `ratedA`. */
  readonly currentA: number;
  readonly evidence: readonly Evidence[];
}

/** What may go through the contact in a wired cavity, by every record that has a say. */
export interface ContactAllowance {
  /** The one that allows least; undefined when no record says anything. */
  readonly least: Bound | undefined;
  readonly bounds: readonly Bound[];
  readonly needs: readonly Need[];
  /** Every part at the cavity that could be too hot. */
  readonly parts: readonly Part[];
}

/**
 * Contact, own half, and the half it mates with unless that one is wired and speaks for itself. A rating of a half holds for
 * as many loaded ways as its wires fill, and for the thinnest wire in the cavity; a hotter ambient than that of the rating
 * takes from it by the derating curve, a cooler one gives nothing.
 */
export function contactAllowance(
  supply: Supply,
  use: ConnectorUse,
  cavity: CavityUse,
  set: LimitSet,
): ContactAllowance {
  const bounds: Bound[] = [];
  const needs: Need[] = [];
  const own = use.resolved.part;
  const contacts = [...new Set(cavity.ends.flatMap((e) => e.end.contactPart ?? []))];
  const loadedWays = use.cavities.filter((c) => c.ends.length > 0).length;
  const areas = cavity.ends.map((e) => metalAreaMm2(e.wire));
  const bare = cavity.ends.find((e) => metalAreaMm2(e.wire) === undefined);
  const areaMm2 = bare ? undefined : Math.min(...areas.flatMap((a) => a ?? []));

  for (const c of contacts)
    if (c.currentMaxA !== undefined)
      bounds.push({
        part: c,
        ratedA: c.currentMaxA,
        currentA: c.currentMaxA,
        evidence: [
          {
            label: `most current of ${c.partNumber}`,
            value: c.currentMaxA,
            unit: 'A',
            source: partSource(c),
          },
        ],
      });
  const half = (part: MatingHalf): void => {
    const ratings = part.currentRatings ?? [];
    const found = contactRating(ratings, loadedWays, areaMm2);
    if (found) {
      bounds.push(boundOf(part, found.currentA, found.rating, loadedWays, set));
      // Without its limit the rating cannot be brought from its own ambient to a hotter one.
      const hotter = (limitValue(set, 'ambient-temperature') ?? 0) > (found.rating.ambientC ?? Infinity);
      if (hotter && part.temperatureMaxC === undefined)
        needs.push(partNeed(part, 'temperatureMaxC', 'temperature rating'));
    } else if (ratings.length === 0) needs.push(partNeed(part, 'currentRatings', 'current rating'));
    else if (bare) needs.push(metalAreaNeed(bare.wire));
    else
      needs.push(
        partNeed(part, 'currentRatings', `current rating for ${loadedWays} loaded ways and ${areaMm2} mm2`),
      );
  };
  if (!own)
    needs.push({
      what: `part of ${use.resolved.connector.designator}`,
      at: connectorRef(use),
      field: 'part',
    });
  else if (own.currentRatings?.length || bounds.length === 0) half(own);
  const other = otherHalf(supply, use, cavity.cavity);
  if (other) half(other);
  const least = bounds.reduce<Bound | undefined>(
    (a, b) => (!a || b.currentA < a.currentA ? b : a),
    undefined,
  );
  const wires = cavity.ends.flatMap((e) => e.wire.part ?? []);
  const parts = [own, other, ...contacts, ...wires].flatMap((p) => p ?? []);
  return { least, bounds, needs, parts: [...new Set<Part>(parts)] };
}

/** The half that this cavity meets, where no wire ends in the cavity opposite. */
function otherHalf(supply: Supply, use: ConnectorUse, cavity: string): MatingHalf | undefined {
  const id = use.resolved.connector.id;
  for (const m of supply.mates) {
    const isA = m.a.resolved.connector.id === id;
    if (!isA && m.b.resolved.connector.id !== id) continue;
    const there = isA ? m.map.fromA.get(cavity) : m.map.fromB.get(cavity);
    const other = isA ? m.b : m.a;
    const opposite = other.cavities.find((c) => c.cavity === there);
    if (opposite && opposite.ends.length === 0) return other.resolved.part;
  }
  return undefined;
}

function boundOf(
  part: MatingHalf,
  ratedA: number,
  rating: {
    readonly loadedWays?: number | undefined;
    readonly areaMm2?: number | undefined;
    readonly ambientC?: number | undefined;
  },
  loadedWays: number,
  set: LimitSet,
): Bound {
  const conditions = [
    rating.loadedWays === undefined ? 'loaded ways not stated' : `up to ${rating.loadedWays} loaded ways`,
    rating.areaMm2 === undefined ? 'wire not stated' : `wire of ${rating.areaMm2} mm2 or more`,
    rating.ambientC === undefined ? 'ambient not stated' : `${rating.ambientC} degC ambient`,
  ].join(', ');
  const evidence: Evidence[] = [
    {
      label: `rating of ${part.partNumber}`,
      value: ratedA,
      unit: 'A',
      source: `${partSource(part)} (${conditions})`,
    },
    { label: 'wired ways', value: loadedWays, source: 'counted' },
  ];
  const ambientC = limitValue(set, 'ambient-temperature');
  const { temperatureMaxC: limitC } = part;
  const knownAtC = rating.ambientC;
  if (ambientC === undefined || knownAtC === undefined || ambientC <= knownAtC || limitC === undefined)
    return { part, ratedA, currentA: ratedA, evidence };
  if (limitC <= knownAtC) return { part, ratedA, currentA: 0, evidence };
  const derated = contactDerating.run({
    limitC,
    knownA: ratedA,
    knownAtC,
    ambientC,
    exponent: 2,
    curveFactor: 1,
  });
  if (!derated.ok) return { part, ratedA, currentA: ratedA, evidence };
  const currentA = derated.value.deratedA;
  evidence.push({
    label: `the same at ${ambientC} degC`,
    value: Number(currentA.toPrecision(6)),
    unit: 'A',
    source: `estimate: ${derated.value.working.formula}, limit ${limitC} degC`,
  });
  return { part, ratedA, currentA, evidence };
}
