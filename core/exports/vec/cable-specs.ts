import { partOfKind } from '../../model/parts/part';
import type { CablePart } from '../../model/parts/wire';
import type { Cable } from '../../model/wire';
import { coreNamesOf, type CoreName } from '../exchange/core-names';
import type { XmlElement } from '../xml/xml';
import { partIds } from './part-shape';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';
import { conductorSpec, elementSpec, insulationSpec } from './wire-specs';

export const PLACED_OF_CABLE: readonly string[] = ['odMm', 'cores', 'jacketColour'];

/** Key of the element between jacket and cores. A blank cannot stand in the key of a core. */
const SHIELD = ['shield'] as const;

/**
 * A cable: the jacket, within it the shield if there is one, within that the cores. Each level has one property: jacket,
 * shield, core.
 */
export function cableSpecs(
  ctx: VecContext,
  key: string,
  part: CablePart | undefined,
  cores: readonly CoreName[],
): XmlElement[] {
  const ids = partIds(key);
  const name = part?.partNumber ?? key;
  const isShielded = part?.shield !== undefined && part.shield !== 'none';
  const coreTypes = cores.map((c) => ids.of('core-type', c.key));
  const shieldType = ids.of('shield-type');
  return [
    ...cores.flatMap((c) => coreSpecs(ctx, key, name, c)),
    ...(isShielded ? shieldSpecs(ctx, key, part, coreTypes) : []),
    insulationSpec(ids.of('insulation'), `${name} jacket`, part?.jacketColour),
    elementSpec(ctx, {
      id: ids.of('element-type'),
      name: `${name} cable`,
      conductor: part,
      conductorId: undefined,
      insulationId: ids.of('insulation'),
      inner: isShielded ? [shieldType] : coreTypes,
    }),
    node('Specification', { id: ids.main, type: 'WireSpecification' }, [
      value('Identification', name),
      refs('DescribedPart', part && ids.version),
      refs('WireElementSpecification', ids.of('element-type')),
      node('WireElement', { id: ids.element }, [
        value('Identification', 'cable'),
        refs('WireElementSpecification', ids.of('element-type')),
        isShielded
          ? node('SubWireElement', { id: ids.of(...SHIELD) }, [
              value('Identification', 'shield'),
              refs('WireElementSpecification', shieldType),
              coreElements(key, cores),
            ])
          : coreElements(key, cores),
      ]),
    ]),
  ];
}

const coreElements = (key: string, cores: readonly CoreName[]): XmlElement[] =>
  cores.map((c) =>
    node('SubWireElement', { id: partIds(key).core(c.key) }, [
      value('Identification', c.unique),
      refs('WireElementSpecification', partIds(key).of('core-type', c.key)),
    ]),
  );

function coreSpecs(
  ctx: VecContext,
  key: string,
  name: string,
  { key: coreKey, unique, core }: CoreName,
): XmlElement[] {
  const ids = partIds(key);
  const id = ids.of('core-type', coreKey);
  const insulation = ids.of('core-insulation', coreKey);
  if (!core)
    return [
      elementSpec(ctx, {
        id,
        name: `${name} ${unique}`,
        conductor: undefined,
        conductorId: undefined,
        insulationId: undefined,
        inner: [],
      }),
    ];
  return [
    conductorSpec(ctx, ids.coreSpecification(coreKey), `${name} ${unique} conductor`, core),
    insulationSpec(insulation, `${name} ${unique} insulation`, core.colour, core.insulation),
    elementSpec(ctx, {
      id,
      name: `${name} ${unique}`,
      conductor: core,
      conductorId: ids.coreSpecification(coreKey),
      insulationId: insulation,
      inner: [],
    }),
  ];
}

function shieldSpecs(ctx: VecContext, key: string, part: CablePart, inner: readonly string[]): XmlElement[] {
  const ids = partIds(key);
  const id = ids.of('shield-conductor');
  return [
    node('Specification', { id, type: 'ShieldSpecification' }, [
      value('Identification', `${part.partNumber} shield`),
      value(
        'Type',
        { braid: 'Braided', foil: 'Foil', 'braid-and-foil': undefined, none: undefined }[
          part.shield ?? 'none'
        ],
      ),
    ]),
    elementSpec(ctx, {
      id: ids.of('shield-type'),
      name: `${part.partNumber} shield element`,
      conductor: undefined,
      conductorId: id,
      insulationId: undefined,
      inner,
    }),
  ];
}

/** Ids of the elements above the cores, from the outside: the cable, and the shield if there is one. */
export const outerElements = (
  key: string,
  part: CablePart | undefined,
): readonly { name: string; id: string }[] => [
  { name: 'cable', id: partIds(key).element },
  ...(part?.shield !== undefined && part.shield !== 'none'
    ? [{ name: 'shield', id: partIds(key).of(...SHIELD) }]
    : []),
];

/** The record of a placed cable with the names of its cores, and the key of its specifications. */
export function cableItem(ctx: VecContext, cable: Cable) {
  const part = partOfKind(ctx.harness.parts.get(cable.part), 'cable');
  return { key: part?.id ?? `no-cable ${cable.id}`, part, cores: coreNamesOf(ctx.harness, part ?? cable) };
}
