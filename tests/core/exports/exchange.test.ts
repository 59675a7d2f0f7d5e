import type { z } from 'zod';
import { describe, expect, it } from 'vitest';
import { kbl } from '@latchwork/core/exports/kbl';
import { placedFieldsOf as placedInKbl } from '@latchwork/core/exports/kbl/kbl-part-shape';
import { vec } from '@latchwork/core/exports/vec';
import { placedFieldsOf as placedInVec } from '@latchwork/core/exports/vec/part-master';
import { Accessory, CavityEntry, Connector, Contact, Mate } from '@latchwork/core/model/connector';
import { Fuse, Signal } from '@latchwork/core/model/electrical';
import { Part } from '@latchwork/core/model/parts/part';
import { Project } from '@latchwork/core/model/project';
import { Revision, TitleBlock } from '@latchwork/core/model/title-block';
import { Covering, Dimension, Fixing, Label, Node, Segment, Tie } from '@latchwork/core/model/topology';
import { Cable, Group, Splice, Wire, WireEnd } from '@latchwork/core/model/wire';
import { sampleProject } from '../model/sample-file';
import { fileOf } from './exchange/cases';
import { readTree, textOf, walk } from './exchange/xml-tree';

import { produce } from 'immer';

/**
 * Where every field of the model goes, first letter VEC, second KBL: `e` an element, a reference or where an element stands;
 * `t` text under its own name (beside an element where the format has one for a part of it); `-` stays out. A field that is
 * new to the model fails here until somebody decides.
 */
const FIELDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  project: {
    ee: `id titleBlock notes revisions parts signals connectors contacts cables wires groups splices mates fuses nodes segments
      coverings ties fixings labels dimensions`,
    tt: 'regulated limitSet labelMethod',
    '--': 'format formatVersion buildQuantities purchasing equipment decisions',
  },
  titleBlock: {
    ee: 'title identificationNumber legalOwner',
    et: 'creator responsibleDepartment technicalReference supplementaryTitle dateOfIssue',
    tt: 'approvalPerson documentType language',
  },
  revision: { ee: 'id revision date author description', te: 'status baseline' },
  connector: {
    ee: 'id designator part supply node cavities accessories description',
    et: 'note',
    tt: `equipment formboardAngleDeg unmated plannedCycles serviceLoopMm footprint cutOut mateRoomMm latchRoomMm`,
    '--': 'position exit view',
  },
  cavity: { ee: 'cavity contact plug', et: 'signal', tt: 'state' },
  accessory: { ee: 'id part quantity' },
  contact: { ee: 'id part' },
  mate: { ee: 'a b map', 'e-': 'id' },
  wire: { ee: 'id designator part core colour signal ends lengthMm', et: 'path note', tt: 'extraMm' },
  wireEnd: {
    ee: 'at connector cavity contact seal splice terminal node',
    et: 'stripLengthMm',
    tt: 'text',
    '--': 'position',
  },
  cable: { ee: 'id designator part', et: 'note' },
  group: { ee: 'id designator wires', et: 'layMm', te: 'form', tt: 'shieldEnds exposedMm' },
  splice: { ee: 'id designator part node', '--': 'position' },
  signal: {
    ee: 'id name',
    te: 'voltageV',
    tt: `class currentA peakCurrentA peakS source sourceLimitA liveMating noiseClass pairedWith returnsOn redundantTo`,
  },
  fuse: { ee: 'id designator part wire', tt: 'ratedA fromSourceMm' },
  node: { ee: 'id designator position' },
  segment: {
    ee: 'id designator from to lengthMm via',
    et: 'plusMm minusMm',
    tt: 'shape lengthLocked bendRadiusMm holeMm wireStyles noiseGapMm',
  },
  covering: { ee: 'id designator part from to', tt: 'layer' },
  tie: { ee: 'id part station' },
  fixing: { ee: 'id designator part station' },
  label: { ee: 'id part on', et: 'text', tt: 'datumDistanceMm made' },
  dimension: { ee: 'id datums plusMm minusMm', tt: 'form', '--': 'offsetMm' },
  'every part': {
    ee: `id maker partNumber description massG kind`,
    tt: `catalogue lifecycle replacedBy alternates compliance origin tariffCode shelfLifeDays source`,
    et: `temperatureMaxC`,
    '--': `offers`,
  },
  'part housing': {
    tt: `family interface bodyForm mounting numbering cavityOneCorner latchSide fingerRoomMm body mateTravelMm
      keyPositions firstMatePositions panel creepageMm currentRatings cycles mateForceN breaksUnderLoad datumMm
      cavityPlug wireSeal secondaryLock contactOrientations`,
    et: `contactKind rows pitchMm rowPitchMm voltageMaxV acceptedSeries wireOdMaxMm sealed`,
    ee: `ways`,
    te: `keying`,
  },
  'part header': {
    tt: `family interface bodyForm mounting numbering cavityOneCorner latchSide fingerRoomMm body mateTravelMm
      keyPositions firstMatePositions panel creepageMm currentRatings cycles mateForceN breaksUnderLoad
      orientation termination finish finishThicknessUm resistanceMohm tailLengthMm tailSectionMm standOffMm
      holeMm boardThicknessMinMm boardThicknessMaxMm processes reflowPeakMaxC reflowTimeMaxS boardLocks`,
    et: `contactKind rows pitchMm rowPitchMm voltageMaxV`,
    ee: `ways`,
    te: `keying`,
  },
  'part contact': {
    et: `series contactKind currentMaxA`,
    tt: `sizeMin sizeMax stripLengthMm stripToleranceMm finishThicknessUm resistanceMohm cycles strandedOnly form
      pack doubleCrimps crimps allowanceMm tools`,
    ee: `areaMinMm2 areaMaxMm2 insulationMinMm insulationMaxMm finish`,
  },
  'part wire': {
    ee: `size areaMm2 odMm`,
    et: `stranding odMinMm odMaxMm conductorFinish resistanceOhmPerKm insulation voltageMaxV massGPerM`,
    tt: `colours bendFactor`,
    te: `style`,
  },
  'part cable': {
    ee: `odMm cores jacketColour`,
    tt: `voltageMaxV shield drainWire bendFactor massGPerM`,
    te: `style`,
  },
  'part splice': { ee: `areaMinMm2 areaMaxMm2`, tt: `stripLengthMm resistanceMohm wiresMax` },
  'part terminal': {
    tt: `form sizeMin sizeMax stripLengthMm studMm`,
    ee: `areaMinMm2 areaMaxMm2 insulationMaxMm`,
  },
  'part cavity-plug': { et: `fitsSeries` },
  'part wire-seal': { et: `fitsSeries`, ee: `odMinMm odMaxMm` },
  'part secondary-lock': {},
  'part strain-relief': { tt: `bundleMinMm bundleMaxMm` },
  'part covering': { te: `form`, tt: `innerMinMm innerMaxMm tapeWidthMm tapeOverlap takeUp`, et: `wallMm` },
  'part grommet': { et: `boreMinMm boreMaxMm` },
  'part clamp': { tt: `bundleMinMm bundleMaxMm holeMm` },
  'part tie': { tt: `bundleMinMm bundleMaxMm` },
  'part label': { tt: `widthMm heightMm bundleMaxMm` },
  'part fuse': { ee: `ratedA`, et: `voltageMaxV`, tt: `resistanceMohm meltingA2s clearingA2s` },
  'part tool': { 't-': `form calibratedUntil dies` },
};

const keys = (schema: z.ZodObject | { readonly options: readonly z.ZodObject[] }): string[] =>
  'options' in schema
    ? [...new Set(schema.options.flatMap((o) => Object.keys(o.shape)))]
    : Object.keys(schema.shape);

const PARTS = Part.options.map((o) => [o.shape.kind.value, Object.keys(o.shape)] as const);
const COMMON = PARTS.map(([, fields]) => fields).reduce((a, b) => a.filter((f) => b.includes(f)));

const MODEL: Readonly<Record<string, readonly string[]>> = {
  project: keys(Project),
  titleBlock: keys(TitleBlock),
  revision: keys(Revision),
  connector: keys(Connector),
  cavity: keys(CavityEntry),
  accessory: keys(Accessory),
  contact: keys(Contact),
  mate: keys(Mate),
  wire: keys(Wire),
  wireEnd: keys(WireEnd),
  cable: keys(Cable),
  group: keys(Group),
  splice: keys(Splice),
  signal: keys(Signal),
  fuse: keys(Fuse),
  node: keys(Node),
  segment: keys(Segment),
  covering: keys(Covering),
  tie: keys(Tie),
  fixing: keys(Fixing),
  label: keys(Label),
  dimension: keys(Dimension),
  'every part': COMMON,
  ...Object.fromEntries(
    PARTS.map(([kind, fields]) => [`part ${kind}`, fields.filter((f) => !COMMON.includes(f))]),
  ),
};

const listed = (text: string): string[] => text.split(/\s+/).filter((f) => f !== '');
const entries = Object.entries(FIELDS).flatMap(([object, codes]) =>
  Object.entries(codes).flatMap(([code, text]) => listed(text).map((field) => ({ object, code, field }))),
);

describe('the fields of the model in VEC and KBL', () => {
  it.each(Object.entries(MODEL))('of %s are all decided on', (object, fields) => {
    const decided = entries.filter((e) => e.object === object).map((e) => e.field);
    expect(decided.sort()).toEqual([...fields].sort());
  });

  it.each([
    [0, placedInVec],
    [1, placedInKbl],
  ] as const)('of parts are placed as it is decided (%i)', (format, placedIn) => {
    const wrong = PARTS.flatMap(([kind, fields]) =>
      // KBL has no tools.
      format === 1 && kind === 'tool'
        ? []
        : fields
            .filter((field) => {
              const code = entries.find(
                (e) => (e.object === 'every part' || e.object === `part ${kind}`) && e.field === field,
              )?.code;
              return placedIn(kind).has(field) !== (code?.[format] !== 't');
            })
            .map((field) => `${kind} ${field}`),
    );
    expect(wrong).toEqual([]);
  });

  it.each([
    [vec, 0, 'PropertyType'],
    [kbl, 1, 'Instruction_type'],
  ] as const)('stand as text in $id where it is decided so', (exporter, format, element) => {
    const file = fileOf(exporter, produce(sampleProject(), madeWhole));
    const named = new Set(
      [...walk(readTree(file))].flatMap((e) => textOf(e, element)?.replace(/^signal /, '') ?? []),
    );
    const missing = entries.filter((e) => e.code[format] === 't' && !named.has(e.field));
    expect(missing.filter((e) => !(format === 1 && LEFT_OUT_OF_KBL.includes(e.object)))).toEqual([]);
  });
});

/** Headers without wires are no part of a harness file, tools never. */
const LEFT_OUT_OF_KBL = ['part header', 'part tool'];

/** The sample in a state in which every text is due: an owner who signs only a release, a signal that a wire carries. */
function madeWhole(project: Project): void {
  const revision = project.revisions.at(-1);
  if (revision) revision.status = 'draft';
  for (const wire of project.wires) wire.signal = project.signals[0]?.id;
}
