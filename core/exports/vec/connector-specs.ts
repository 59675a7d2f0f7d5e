import { cavityLayoutOf } from '../../derive/cavity-layout';
import type { MatingHalf } from '../../model/parts/part';
import type { XmlElement } from '../xml/xml';
import { partIds } from './part-shape';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';

/** What of a mating half has an element of its own here. */
export const PLACED_OF_HALF: readonly string[] = [
  'contactKind', 'ways', 'rows', 'pitchMm', 'rowPitchMm', 'acceptedSeries', 'wireOdMaxMm', 'sealed', 'voltageMaxV',
]; // prettier-ignore

/** Cavity and slot specifications and the housing with its cavities; for a header also its pins, and what carries them. */
export function connectorSpecs(ctx: VecContext, key: string, part: MatingHalf): XmlElement[] {
  const cavities = cavityLayoutOf(part).places.map((p) => p.cavity);
  const keys = new Set(part.keyPositions);
  const housing = housingSpec(ctx, key, part.partNumber, {
    isPart: part.kind === 'housing',
    cavities: cavities.map((name) => ({ name, available: keys.has(name) ? false : undefined })),
    part,
  });
  const specs = [cavitySpec(ctx, key, part), slotSpec(ctx, key, part), housing];
  return part.kind === 'header' ? [...specs, pinSpec(key, part), headerSpec(key, part, cavities)] : specs;
}

/** The housing of a connector whose part is none: the cavities that wires and the project name, and no more. */
export const unknownHousingSpecs = (
  ctx: VecContext,
  key: string,
  cavities: readonly string[],
): XmlElement[] => [
  housingSpec(ctx, key, '/NULL', {
    isPart: false,
    cavities: cavities.map((name) => ({ name, available: undefined })),
    part: undefined,
  }),
];

const gender = (kind: MatingHalf['contactKind']): string | undefined =>
  kind && { pin: 'Male', socket: 'Female' }[kind];

function cavitySpec({ values }: VecContext, key: string, part: MatingHalf): XmlElement {
  const id = partIds(key).of('cavity-type');
  const housing = part.kind === 'housing' ? part : undefined;
  return node('Specification', { id, type: 'CavitySpecification' }, [
    value('Identification', `${part.partNumber} cavity`),
    values.number('MaxWireElementOutsideDiameter', id, housing?.wireOdMaxMm, 'mm'),
    value('Sealable', housing?.sealed),
    (housing?.acceptedSeries ?? []).map((series, i) =>
      node('CompatibleTerminalType', { id: `${id}_Series_${i + 1}` }, [value('Name', series)]),
    ),
  ]);
}

function slotSpec({ values }: VecContext, key: string, part: MatingHalf): XmlElement {
  const id = partIds(key).of('slot-type');
  const hasLayout = part.pitchMm !== undefined || part.rowPitchMm !== undefined || part.rows !== undefined;
  const layout = `${id}_Layout`;
  return node('Specification', { id, type: 'SlotSpecification' }, [
    value('Identification', `${part.partNumber} slot`),
    value('Gender', gender(part.contactKind)),
    value('SecondaryLocking', part.kind === 'housing' && part.secondaryLock ? true : undefined),
    value('NumberOfCavities', part.ways),
    hasLayout
      ? node('SlotLayout', { id: layout }, [
          values.number('GridX', layout, part.pitchMm, 'mm'),
          values.number('GridY', layout, part.rowPitchMm, 'mm'),
          value('RowCount', part.rows),
        ])
      : undefined,
  ]);
}

interface HousingShape {
  /** The housing of a header has no part of its own. */
  readonly isPart: boolean;
  readonly cavities: readonly { readonly name: string; readonly available: false | undefined }[];
  readonly part: MatingHalf | undefined;
}

function housingSpec(
  { values }: VecContext,
  key: string,
  name: string,
  { isPart, cavities, part }: HousingShape,
): XmlElement {
  const ids = partIds(key);
  // One line, as the schema wants it; the code as it is stands among the properties of the part.
  const coding = part?.keying === 'none' ? 'Uncoded' : part?.keying?.replace(/[\r\n]+/g, ' ');
  const latch = part?.latchSide;
  return node('Specification', { id: ids.housing, type: 'ConnectorHousingSpecification' }, [
    value('Identification', housingName(name, key)),
    refs('DescribedPart', isPart ? ids.version : undefined),
    values.range('VoltageRange', ids.housing, undefined, part?.voltageMaxV, 'V'),
    value('LockingType', latch !== undefined && latch !== 'none' ? 'SnapLock' : undefined),
    coding === undefined
      ? undefined
      : node('Coding', { id: `${ids.housing}_Coding` }, [value('Coding', coding)]),
    cavities.length === 0
      ? undefined
      : node('Slot', { id: ids.slot, type: 'Slot' }, [
          value('SlotNumber', '1'),
          refs('SlotSpecification', part && ids.of('slot-type')),
          cavities.map((c) =>
            node('Cavity', { id: ids.cavity(c.name) }, [
              value('Available', c.available),
              value('CavityNumber', c.name),
              refs('CavitySpecification', part && ids.of('cavity-type')),
            ]),
          ),
        ]),
  ]);
}

/** How mappings name the housing: unique in the file, since part numbers of two makers may be alike. */
export const housingName = (partNumber: string, key: string): string => `${partNumber} housing ${key}`;

function pinSpec(key: string, part: MatingHalf): XmlElement {
  const id = partIds(key).pin;
  return node('Specification', { id, type: 'PluggableTerminalSpecification' }, [
    value('Identification', `${part.partNumber} contact`),
    node('TerminalReception', { id: `${id}_Reception` }, [
      value('Identification', 'mating side'),
      value('Gender', gender(part.contactKind)),
    ]),
    value('TerminalType', 'Standard'),
  ]);
}

function headerSpec(key: string, part: MatingHalf, cavities: readonly string[]): XmlElement {
  const ids = partIds(key);
  const keyed = new Set(part.keyPositions);
  return node('Specification', { id: ids.main, type: 'EEComponentSpecification' }, [
    value('Identification', part.partNumber),
    refs('DescribedPart', ids.version),
    node('HousingComponent', { id: ids.housingComponent }, [
      value('Identification', '1'),
      value('CompatibleTypes', 'ConnectorHousing'),
      refs('HousingSpecification', ids.housing),
      cavities
        .filter((name) => !keyed.has(name))
        .map((name) =>
          node('PinComponent', { id: ids.pinComponent(name) }, [
            value('Identification', name),
            refs('PinSpecification', ids.pin),
            refs('ReferencedCavity', ids.cavity(name)),
          ]),
        ),
    ]),
  ]);
}
