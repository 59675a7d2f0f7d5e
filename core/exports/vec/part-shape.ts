import { xmlId } from '../exchange/xml-id';
import type { Part, PartKind } from '../../model/parts/part';
import type { PartShape } from './vec-context';

const shape = (primary: string, role: string, reference: string): PartShape => ({
  primary,
  specification: `${primary}Specification`,
  role,
  reference,
});

const protection = (primary: string): PartShape =>
  shape(primary, `${primary}Role`, 'WireProtectionSpecification');

/** For parts that VEC has no type for: what they are stands in words beside it. */
const OTHER: PartShape = {
  primary: 'Other',
  specification: 'PartOrUsageRelatedSpecification',
  role: 'SpecificRole',
  reference: 'Specification',
};

const SHAPES: Readonly<Record<PartKind, PartShape>> = {
  housing: shape('ConnectorHousing', 'ConnectorHousingRole', 'ConnectorHousingSpecification'),
  header: shape('EEComponent', 'EEComponentRole', 'EEComponentSpecification'),
  contact: shape('PluggableTerminal', 'PluggableTerminalRole', 'TerminalSpecification'),
  wire: shape('Wire', 'WireRole', 'WireSpecification'),
  cable: shape('Wire', 'WireRole', 'WireSpecification'),
  splice: shape('SpliceTerminal', 'SpliceTerminalRole', 'TerminalSpecification'),
  terminal: shape('Terminal', 'TerminalRole', 'TerminalSpecification'),
  'cavity-plug': shape('CavityPlug', 'CavityPlugRole', 'CavityPlugSpecification'),
  'wire-seal': shape('CavitySeal', 'CavitySealRole', 'CavitySealSpecification'),
  'secondary-lock': OTHER,
  'strain-relief': OTHER,
  covering: protection('Tube'),
  grommet: shape('Grommet', 'GrommetRole', 'GrommetSpecification'),
  clamp: shape('Fixing', 'FixingRole', 'FixingSpecification'),
  tie: shape('CableTie', 'CableTieRole', 'CableTieSpecification'),
  label: {
    primary: 'Other',
    specification: 'LabelingSpecification',
    role: 'LabelingRole',
    reference: 'LabelingSpecification',
  },
  fuse: shape('Fuse', 'FuseRole', 'EEComponentSpecification'),
  tool: OTHER,
};

/** The types of a part in the words of VEC; a few hang on its form. */
export function partShape(kind: PartKind, part: Part | undefined): PartShape {
  if (part?.kind === 'covering' && part.form === 'tape') return protection('Tape');
  if (part?.kind === 'covering' && part.form === 'heat-shrink') return protection('ShrinkableTube');
  if (part?.kind === 'terminal' && part.form === 'ring')
    return shape('RingTerminal', 'RingTerminalRole', 'TerminalSpecification');
  return SHAPES[kind];
}

/** What VEC's types do not tell apart, in words. */
export function specialPartType(part: Part): string | undefined {
  switch (part.kind) {
    case 'secondary-lock':
      return 'SecondaryLock';
    case 'strain-relief':
      return 'StrainRelief';
    case 'label':
      return 'Label';
    case 'terminal':
      return part.form === 'ring' ? undefined : part.form;
    case 'covering':
      return { braid: 'Braid', sleeve: 'Sleeve', conduit: 'Conduit' }[part.form as string];
    default:
      return undefined;
  }
}

/** Parts that lie along a run or sit at a point of it. */
export const placementType = (kind: PartKind): 'OnWay' | 'OnPoint' | undefined =>
  kind === 'covering' ? 'OnWay' : ON_POINT.has(kind) ? 'OnPoint' : undefined;

const ON_POINT: ReadonlySet<PartKind> = new Set([
  'housing', 'header', 'splice', 'terminal', 'grommet', 'clamp', 'tie', 'label',
]); // prettier-ignore

/** Ids of the elements that describe a part, from the key of its item. */
export const partIds = (key: string) => {
  const id = (...tail: readonly string[]): string => xmlId('P', key, ...tail);
  return {
    version: id(),
    document: id('document'),
    general: id('general'),
    placeable: id('placeable'),
    special: id('special'),
    /** The specification that fits the primary type of the part. */
    main: id('main'),
    housing: id('housing'),
    pin: id('pin'),
    slot: id('slot'),
    core: (name: string) => id('element', name),
    element: id('element'),
    coreSpecification: (name: string) => id('conductor', name),
    cavity: (name: string) => id('cavity', name),
    housingComponent: id('component'),
    pinComponent: (name: string) => id('pin', name),
    of: id,
  };
};
