import { compareNatural } from '../../base/stable-order';
import type { ConnectorUse, Harness } from '../../derive/harness';
import { facePlaces, type FacePlace } from '../../derive/face-places';
import type { Panel } from '../../model/equipment';
import type { HeaderPart } from '../../model/parts/header';
import type { MatingHalf } from '../../model/parts/part';

/** The hole that a panel connector needs. Sizes are those entered for the panel, else those of the record. */
export interface PanelCut {
  readonly use: ConnectorUse;
  readonly panel: Panel | undefined;
  readonly widthMm: number | undefined;
  readonly heightMm: number | undefined;
  readonly cornerRadiusMm: number | undefined;
  readonly insertFrom: 'front' | 'rear' | undefined;
  readonly basis: 'entered for the panel' | 'record of the part' | undefined;
  readonly remarks: readonly string[];
}

/** The holes of a header, or the centres of its pads. */
export interface BoardPattern {
  readonly use: ConnectorUse;
  readonly header: HeaderPart;
  readonly seenFrom: 'header-side' | 'far-side';
  readonly places: readonly FacePlace[];
  readonly spanXMm: number;
  readonly spanYMm: number;
  readonly pitchMm: number;
  readonly rowPitchMm: number;
  /** Undefined where it is not stated, or the header is soldered to pads. */
  readonly holeMm: number | undefined;
  readonly remarks: readonly string[];
}

const byDesignator = (a: ConnectorUse, b: ConnectorUse): number =>
  compareNatural(a.resolved.connector.designator, b.resolved.connector.designator);

/** Connectors that stand in a panel. */
export function panelCuts(harness: Harness): readonly PanelCut[] {
  return [...harness.connectors].sort(byDesignator).flatMap((use): PanelCut[] => {
    const { connector, part, equipment } = use.resolved;
    const isPanel =
      part?.mounting === 'panel' || equipment?.kind === 'panel' || connector.cutOut !== undefined;
    if (!part || part.kind === 'header' || !isPanel) return [];
    const wanted = part.panel?.cutOut;
    const drawn = connector.cutOut;
    const from = drawn ?? wanted;
    const panel = equipment?.kind === 'panel' ? equipment : undefined;
    const insertFrom = drawn?.insertFrom ?? part.panel?.insertFrom;
    return [
      {
        use,
        panel,
        widthMm: from?.widthMm,
        heightMm: from?.heightMm,
        cornerRadiusMm: from?.cornerRadiusMm,
        insertFrom,
        basis: drawn ? 'entered for the panel' : wanted ? 'record of the part' : undefined,
        remarks: [
          ...(from ? [] : ['size of the cut-out not stated']),
          ...(from && from.cornerRadiusMm === undefined ? ['corner radius not stated: drawn sharp'] : []),
          ...(insertFrom ? [] : ['side of insertion not stated']),
          ...(panel ? [] : ['not on a panel in the project']),
          ...differences(drawn, part),
          ...thickness(panel, part),
        ],
      },
    ];
  });
}

function differences(drawn: ConnectorUse['resolved']['connector']['cutOut'], part: MatingHalf): string[] {
  const wanted = part.panel?.cutOut;
  if (!drawn || !wanted) return [];
  const same = drawn.widthMm === wanted.widthMm && drawn.heightMm === wanted.heightMm;
  const turned =
    part.panel?.insertFrom !== undefined &&
    drawn.insertFrom !== undefined &&
    part.panel.insertFrom !== drawn.insertFrom;
  return [
    ...(same ? [] : [`the record asks for ${wanted.widthMm} x ${wanted.heightMm} mm`]),
    ...(turned ? [`the record asks for insertion from the ${part.panel?.insertFrom}`] : []),
  ];
}

function thickness(panel: Panel | undefined, part: MatingHalf): string[] {
  const { thicknessMinMm: min, thicknessMaxMm: max } = part.panel ?? {};
  if (min === undefined || max === undefined) return ['panel thickness that the part takes not stated'];
  if (!panel) return [];
  return panel.thicknessMm === undefined ? ['thickness of the panel not stated'] : [];
}

/** Headers on boards, whoever brings them: the board is made after the header. */
export function boardPatterns(harness: Harness): readonly BoardPattern[] {
  return [...harness.connectors].sort(byDesignator).flatMap((use): BoardPattern[] => {
    const { connector, part } = use.resolved;
    if (part?.kind !== 'header') return [];
    const seenFrom = connector.footprint?.seenFrom ?? 'header-side';
    // Seen from the side of the header one looks at its mating face; from the far side all is mirrored.
    const faces = facePlaces(part, seenFrom === 'header-side' ? 'mating-face' : 'wire-entry-face');
    const isSurface = part.termination === 'surface-mount';
    return [
      {
        use,
        header: part,
        seenFrom,
        places: faces.places,
        spanXMm: faces.spanXMm,
        spanYMm: faces.spanYMm,
        pitchMm: faces.pitchMm,
        rowPitchMm: faces.rowPitchMm,
        holeMm: isSurface ? undefined : part.holeMm,
        remarks: [
          ...(isSurface ? ['surface-mounted: centres of pads, no holes; size of the pads not stated'] : []),
          ...(!isSurface && part.holeMm === undefined ? ['hole not stated: centres only'] : []),
          ...(part.termination === undefined ? ['termination not stated'] : []),
          ...(faces.assumed.length > 0 ? [`assumed: ${faces.assumed.join(', ')}`] : []),
          ...(connector.footprint?.seenFrom
            ? []
            : ['view of the layout not stated: drawn from the header side']),
          ...(part.orientation === 'right-angle' && (part.rows ?? 1) > 1
            ? [
                'right-angle: distance and order of the rows on the board to be taken from the drawing of the part',
              ]
            : []),
          ...locks(part, connector.footprint),
        ],
      },
    ];
  });
}

function locks(part: HeaderPart, footprint: ConnectorUse['resolved']['connector']['footprint']): string[] {
  const count = part.boardLocks?.length ?? 0;
  if (part.boardLocks === undefined) return ['board locks and pegs not stated'];
  if (count === 0) return [];
  const hole =
    footprint?.lockHoleMm === undefined
      ? 'hole not entered'
      : `hole ${footprint.lockHoleMm} mm${footprint.lockHolePlated === undefined ? '' : footprint.lockHolePlated ? ', plated' : ', not plated'}`;
  return [
    `${count} board locks or pegs, ${hole}: their places are not stated, take them from the drawing of the part`,
  ];
}
