import { thickestMm } from '@latchwork/core/derive/bundle';
import type { Station } from '@latchwork/core/model/topology';
import { useApp } from '../../app/store';
import { Length } from '../../ui/quantity';
import { WorkedNumber, inMm } from '../../ui/worked-number';

interface Band {
  /** Of the part that goes round it. */
  readonly minMm: number | undefined;
  readonly maxMm: number | undefined;
}

/** How thick the harness is at a station, held against the band of what is put round it. */
export function AroundField({ station, ...band }: Band & { readonly station: Station }) {
  const use = useApp((s) => s.harness.segments.find((u) => u.segment.id === station.segment));
  const mm = use && thickestMm(use, station.atMm, station.atMm);
  return <AroundFit mm={mm} where={use?.segment.designator ?? 'the run'} {...band} />;
}

interface FitProps extends Band {
  /** What it goes round; undefined where that is not known. */
  readonly mm: number | undefined;
  readonly where: string;
}

/** A diameter against a band: fits, too thick, too thin, or cannot verify. */
export function AroundFit({ mm, where, minMm, maxMm }: FitProps) {
  const judged = judge(mm, minMm, maxMm);
  return (
    <div className="field">
      <span className="field-label">Goes round</span>
      <span className="field-value">
        {mm === undefined ? null : (
          <>
            <Length mm={mm} />{' '}
          </>
        )}
        <WorkedNumber
          working={{
            title: `Fit on ${where}`,
            lines: [
              ...(mm === undefined
                ? []
                : [
                    { label: 'Bundle with coverings here', value: inMm(mm), source: 'packed from its wires' },
                  ]),
              ...(minMm === undefined ? [] : [{ label: 'Least', value: inMm(minMm), source: 'part record' }]),
              ...(maxMm === undefined ? [] : [{ label: 'Most', value: inMm(maxMm), source: 'part record' }]),
            ],
            result: judged.words,
            needs: judged.needs,
            method: 'The bundle as laid with the coverings at this place, against the band of the part.',
          }}
        >
          <span className="chip" data-tone={judged.tone}>
            {judged.words}
          </span>
        </WorkedNumber>
      </span>
    </div>
  );
}

/** Whether a diameter lies in a band. A band without an upper end cannot be verified. */
export function judge(
  mm: number | undefined,
  minMm: number | undefined,
  maxMm: number | undefined,
): { readonly words: string; readonly tone: string; readonly needs: readonly string[] } {
  const needs = [
    ...(mm === undefined ? ['the diameter of the bundle'] : []),
    ...(maxMm === undefined ? ['the largest diameter that the part takes'] : []),
  ];
  if (mm !== undefined && maxMm !== undefined && mm > maxMm)
    return { words: 'too thick', tone: 'critical', needs: [] };
  if (mm !== undefined && minMm !== undefined && mm < minMm)
    return { words: 'too thin', tone: 'critical', needs: [] };
  if (needs.length > 0) return { words: 'cannot verify', tone: 'unknown', needs };
  return { words: 'fits', tone: 'good', needs: [] };
}
