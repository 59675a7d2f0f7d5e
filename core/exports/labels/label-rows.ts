import type { Harness } from '../../derive/harness';
import { carrierName, labelCarrier } from '../../derive/label-carrier';
import { endPlaces, isOurs, labelsByPlace, placeKey, textByMethod } from '../../derive/label-plan';
import { labelAroundMm } from '../../derive/label-room';
import { cableEnds, endPlace } from '../../derive/label-texts';
import type { Label } from '../../model/topology';
import type { DocumentOptions } from '../exporter';
import type { Column, RowOf } from '../table';
import { CODE_WORDS, codeText } from './label-code';
import { labelJobs, labelsInOrder, type LabelJob } from './label-jobs';

export const LABEL_COLUMNS = [
  { key: 'object', title: 'Object' },
  { key: 'kind', title: 'Kind' },
  { key: 'end', title: 'End' },
  { key: 'place', title: 'Goes to' },
  { key: 'text', title: 'Text' },
  { key: 'byMethod', title: 'Text by the method' },
  { key: 'method', title: 'Method' },
  { key: 'codeText', title: 'Text of the code' },
  { key: 'codeKind', title: 'Code' },
  { key: 'part', title: 'Label part' },
  { key: 'material', title: 'Material' },
  { key: 'widthMm', title: 'Width', unit: 'mm', align: 'right' },
  { key: 'heightMm', title: 'Height', unit: 'mm', align: 'right' },
  { key: 'distanceMm', title: 'Distance', unit: 'mm', align: 'right' },
  { key: 'datum', title: 'Measured from' },
  { key: 'orientation', title: 'Orientation' },
  { key: 'aroundMm', title: 'Goes round Ø', unit: 'mm', align: 'right' },
  { key: 'bundleMaxMm', title: 'Label to Ø', unit: 'mm', align: 'right' },
  { key: 'fit', title: 'Fit' },
  { key: 'textMm', title: 'Capitals', unit: 'mm', align: 'right' },
  { key: 'sheet', title: 'Sheet', align: 'right' },
  { key: 'position', title: 'Position', align: 'right' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type LabelKey = (typeof LABEL_COLUMNS)[number]['key'];
export type LabelRow = RowOf<LabelKey>;

/** Every connector, cable end and wire end with its labels, one row each and one where there is none; then those of runs. */
export function labelRows(harness: Harness, options?: DocumentOptions): readonly LabelRow[] {
  const { byLabel } = labelJobs(harness, options);
  const labels = labelsByPlace(harness.project.labels);
  const ends = endPlaces(harness).flatMap((on): LabelRow[] => {
    const here = labels.get(placeKey(on)) ?? [];
    return here.length > 0
      ? here.map((label) => labelRow(harness, on, label, byLabel.get(label.id)))
      : [labelRow(harness, on, undefined, undefined)];
  });
  const runs = labelsInOrder(harness).filter((l) => l.on.at === 'station');
  return [...ends, ...runs.map((l) => labelRow(harness, l.on, l, byLabel.get(l.id)))];
}

type Place = Label['on'];

const KINDS: Readonly<Record<Place['at'], string>> = {
  'wire-end': 'wire end', 'cable-end': 'cable end', 'connector': 'connector', 'station': 'run',
}; // prettier-ignore

const DATUMS: Readonly<Record<Place['at'], string>> = {
  'wire-end': 'wire stop of the end', 'cable-end': 'end of the jacket', 'connector': 'rear face of the connector',
  'station': 'start of the run',
}; // prettier-ignore

/** The width of a label lies along the wire, its height goes round it; what is read first lies at the end. */
const ORIENTATIONS: Readonly<Record<Place['at'], string>> = {
  'wire-end': 'along the wire, begins at the end', 'cable-end': 'along the cable, begins at the end',
  'connector': 'along the bundle, begins at the connector', 'station': 'along the run',
}; // prettier-ignore

function labelRow(
  harness: Harness,
  on: Place,
  label: Label | undefined,
  job: LabelJob | undefined,
): LabelRow {
  const { project } = harness;
  const { labelMethod } = project;
  const told = on.at === 'station' || !labelMethod ? undefined : textByMethod(harness, on, labelMethod);
  const byMethod = told?.ok ? told.value : null;
  const aroundMm = labelAroundMm(harness, on);
  const bundleMaxMm = job?.part?.bundleMaxMm;
  const fits = aroundMm === undefined || bundleMaxMm === undefined ? null : bundleMaxMm >= aroundMm;
  const atMm = on.at === 'station' ? on.station.atMm : label?.datumDistanceMm;
  const remarks = [
    ...(label ? [] : ['no label']),
    ...(on.at === 'connector' && !label ? notOurs(harness, on.connector) : []),
    ...(told && !told.ok ? [`the method needs ${told.problem}`] : []),
    ...(label?.made && byMethod !== null && byMethod !== label.text
      ? [`no longer what the method says ("${byMethod}"): make the labels again`]
      : []),
    ...(label && atMm === undefined ? ['distance not stated'] : []),
    ...(label && fits === null ? [aroundMm === undefined ? 'diameter not known' : 'largest bundle of the label not known'] : []),
    ...(fits === false ? ['the label does not go round'] : []),
    ...(job?.remarks ?? []),
  ]; // prettier-ignore
  return {
    cells: {
      object: carrierName(project, on),
      kind: KINDS[on.at],
      end: on.at === 'wire-end' || on.at === 'cable-end' ? String(on.end + 1) : null,
      place: placeOf(harness, on),
      text: label?.text ?? null,
      byMethod,
      method: label ? (label.made ? (labelMethod ?? null) : 'by hand') : null,
      codeText: codeText(project, on),
      codeKind: job ? CODE_WORDS[job.drawn.code] : null,
      part: job?.part?.partNumber ?? null,
      material: job?.part?.description ?? null,
      widthMm: job?.part?.widthMm ?? null,
      heightMm: job?.part?.heightMm ?? null,
      distanceMm: atMm ?? null,
      datum: DATUMS[on.at],
      orientation: ORIENTATIONS[on.at],
      aroundMm: aroundMm === undefined ? null : Math.round(aroundMm * 100) / 100,
      bundleMaxMm: bundleMaxMm ?? null,
      fit: fits === null ? null : fits ? 'fits' : 'too small',
      textMm: job?.drawn.textMm ?? null,
      sheet: job?.sheet ?? null,
      position: job?.position ?? null,
      remarks: remarks.join('; ') || null,
    },
    objects: [...(label ? [{ type: 'label' as const, id: label.id }] : []), labelCarrier(on)],
  };
}

function notOurs(harness: Harness, id: string): string[] {
  const use = harness.connectorById.get(id);
  if (isOurs(use)) return [];
  return [use?.resolved.connector.supply === 'equipment' ? 'comes with the equipment' : 'holds no wire'];
}

function placeOf(harness: Harness, on: Place): string | null {
  switch (on.at) {
    case 'wire-end': {
      const wire = harness.wireById.get(on.wire);
      return wire ? endPlace(wire, on.end) : null;
    }
    case 'cable-end':
      return cableEnds(harness).get(on.cable)?.places[on.end].join(' + ') ?? null;
    case 'connector':
      return harness.connectorById.get(on.connector)?.resolved.equipment?.designator ?? null;
    case 'station':
      return null;
  }
}
