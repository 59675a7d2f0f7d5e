import { endPlaces, labelsByPlace, placeKey } from '../../derive/label-plan';
import { labelAroundMm, type LabelPart } from '../../derive/label-room';
import { carrierName } from '../../derive/label-carrier';
import { compareNatural } from '../../base/stable-order';
import type { Harness } from '../../derive/harness';
import { partOfKind } from '../../model/parts/part';
import type { Label } from '../../model/topology';
import type { DocumentOptions } from '../exporter';
import { drawLabel, type DrawnLabel, type Size } from './draw-label';
import { codeText } from './label-code';
import { type LabelTemplate, LABEL_TEMPLATES, templateFor } from './templates';

/** A label that is printed: with its part, its picture and its place among the sheets. */
export interface LabelJob {
  readonly label: Label;
  readonly part: LabelPart | undefined;
  readonly aroundMm: number | undefined;
  readonly template: LabelTemplate;
  /** What is cut out of the sheet. */
  readonly size: Size;
  readonly drawn: DrawnLabel;
  /** Sheet, from 1 over all templates, and position on it, from 1 row by row. */
  readonly sheet: number;
  readonly position: number;
  readonly remarks: readonly string[];
}

/** All labels on their sheets, each template in turn. */
export interface LabelJobs {
  readonly jobs: readonly LabelJob[];
  readonly byLabel: ReadonlyMap<string, LabelJob>;
  readonly sheets: number;
  /** Where the first label stands, and why not where it was asked for. */
  readonly start: number;
  readonly startRemark: string | null;
}

/** Sizes of labels whose part is not chosen or does not state them. */
const ASSUMED = {
  end: { widthMm: 25, heightMm: 12 },
  object: { widthMm: 40, heightMm: 20 },
} as const;

/** Labels of connectors, cables, wires and runs, in that order, each by designator. */
export function labelsInOrder(harness: Harness): readonly Label[] {
  const { labels } = harness.project;
  const byPlace = labelsByPlace(labels);
  const ends = endPlaces(harness).flatMap((on) => byPlace.get(placeKey(on)) ?? []);
  const name = (l: Label): string => carrierName(harness.project, l.on);
  const at = (l: Label): number => (l.on.at === 'station' ? l.on.station.atMm : 0);
  const runs = labels
    .filter((l) => l.on.at === 'station')
    .sort((a, b) => compareNatural(name(a), name(b)) || at(a) - at(b) || compareNatural(a.text, b.text));
  return [...ends, ...runs];
}

export function labelJobs(harness: Harness, options: DocumentOptions = {}): LabelJobs {
  const asked = labelsInOrder(harness).map((label) => unplaced(harness, label, options));
  const { labelStart = 1 } = options;
  const first = LABEL_TEMPLATES.find((t) => asked.some((j) => j.template === t));
  const most = first ? first.columns * first.rows : 1;
  const start = labelStart <= most ? labelStart : 1;
  const jobs: LabelJob[] = [];
  let sheet = 0;
  for (const template of LABEL_TEMPLATES) {
    const here = asked.filter((j) => j.template === template);
    if (here.length === 0) continue;
    const perSheet = template.columns * template.rows;
    const skip = sheet === 0 ? start - 1 : 0;
    here.forEach((job, i) =>
      jobs.push({
        ...job,
        sheet: sheet + 1 + Math.floor((i + skip) / perSheet),
        position: ((i + skip) % perSheet) + 1,
      }),
    );
    sheet += Math.ceil((here.length + skip) / perSheet);
  }
  return {
    jobs,
    byLabel: new Map(jobs.map((j) => [j.label.id, j])),
    sheets: sheet,
    start,
    startRemark:
      start === labelStart ? null : `${labelStart} was asked for, the sheet has ${most} labels: begun at 1`,
  };
}

function unplaced(
  harness: Harness,
  label: Label,
  { labelSheet = 'a4', labelCode = 'qr' }: DocumentOptions,
): Omit<LabelJob, 'sheet' | 'position'> {
  const { project } = harness;
  const part = partOfKind(harness.parts.get(label.part ?? ''), 'label');
  const aroundMm = labelAroundMm(harness, label.on);
  const assumed = label.on.at === 'wire-end' || label.on.at === 'cable-end' ? ASSUMED.end : ASSUMED.object;
  const { widthMm, heightMm } = part ?? {};
  const stated = widthMm !== undefined && heightMm !== undefined;
  const wanted: Size = stated ? { widthMm, heightMm } : assumed;
  const template = templateFor(labelSheet, wanted);
  // Whoever names a sheet has that stock; else the size of the part is cut out of the sheet.
  const size: Size =
    template.id === labelSheet
      ? template
      : {
          widthMm: Math.min(wanted.widthMm, template.widthMm),
          heightMm: Math.min(wanted.heightMm, template.heightMm),
        };
  const differs = size.widthMm !== wanted.widthMm || size.heightMm !== wanted.heightMm;
  const words = {
    designator: carrierName(project, label.on),
    text: label.text,
    codeText: codeText(project, label.on),
    aroundMm,
  };
  const drawn = drawLabel(words, size, labelCode);
  return {
    label,
    part,
    aroundMm,
    template,
    size,
    drawn,
    remarks: [
      ...(part ? [] : ['label part not chosen']),
      ...(stated ? [] : [`size not stated: printed as ${size.widthMm} x ${size.heightMm} mm`]),
      ...(stated && differs
        ? [`printed as ${size.widthMm} x ${size.heightMm} mm, the part is ${wanted.widthMm} x ${wanted.heightMm} mm`]
        : []),
      ...(labelCode !== 'none' && !project.titleBlock.identificationNumber
        ? ['identification number not given: the code names the object only']
        : []),
      ...drawn.remarks,
    ],
  }; // prettier-ignore
}
