import { byId } from '@latchwork/core/base/by-id';
import { segmentLengths } from '@latchwork/core/derive/formboard/segment-path';
import type { Segment } from '@latchwork/core/model/topology';
import { useApp } from '../../app/store';
import { CheckField } from '../../ui/check-field';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { Length } from '../../ui/quantity';
import { WorkedNumber, inMm } from '../../ui/worked-number';
import type { attempt } from './fields';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'segment.edit' }>['args']['change'];

/** Drawn and typed length with their difference, tolerance, lock and shape. */
export function SegmentLength({
  segment,
  edit,
}: {
  segment: Segment;
  edit: (change: Change) => string | null;
}) {
  const nodes = useApp((s) => s.history.project.nodes);
  const { drawnMm, typedMm, usedMm, differenceMm } = segmentLengths(segment, byId(nodes));
  const bends = segment.via?.length ?? 0;
  const shape = segment.shape ?? 'straight';
  return (
    <>
      <div className="field">
        <span className="field-label">Length</span>
        <span className="field-value">
          <WorkedNumber
            working={{
              title: `Length of ${segment.designator}`,
              lines: [
                {
                  label: 'Drawn',
                  value: inMm(drawnMm),
                  source:
                    shape === 'curve'
                      ? 'formboard, along the curve'
                      : `formboard${bends ? ', over its bends' : ''}`,
                },
                ...(typedMm === undefined
                  ? []
                  : [
                      { label: 'Typed', value: inMm(typedMm), source: 'typed at the segment' },
                      { label: 'Typed less drawn', value: inMm(differenceMm), source: 'difference' },
                    ]),
              ],
              result: inMm(usedMm),
              method: 'A typed length wins over the drawn one.',
            }}
          >
            <Length mm={usedMm} />
          </WorkedNumber>{' '}
          <span className="second">{typedMm === undefined ? 'as drawn' : 'typed'}</span>
        </span>
      </div>
      {typedMm !== undefined && Math.abs(differenceMm) >= 0.05 ? (
        <div className="field">
          <span className="field-label">Drawn</span>
          <span className="field-value">
            <Length mm={drawnMm} />{' '}
            <span className="second">
              {differenceMm > 0 ? '+' : '−'}
              <Length mm={Math.abs(differenceMm)} /> typed
            </span>
          </span>
        </div>
      ) : null}
      <LengthField
        label="Typed length"
        name="lengthMm"
        valueMm={segment.lengthMm}
        placeholder="as drawn"
        commit={(lengthMm) => edit({ lengthMm })}
      />
      <CheckField
        label="Drawn length locked"
        name="lengthLocked"
        checked={segment.lengthLocked === true}
        choose={(on) => void edit({ lengthLocked: on ? true : null })}
      />
      <LengthField
        label="Tolerance +"
        name="plusMm"
        valueMm={segment.plusMm}
        allow="not-negative"
        commit={(plusMm) => edit({ plusMm })}
      />
      <LengthField
        label="Tolerance −"
        name="minusMm"
        valueMm={segment.minusMm}
        allow="not-negative"
        commit={(minusMm) => edit({ minusMm })}
      />
      <ChoiceField
        label="Drawn as"
        name="shape"
        value={shape}
        choices={[
          { value: 'straight', text: 'straight runs' },
          { value: 'curve', text: 'a curve through its bends' },
        ]}
        choose={(chosen) => void edit({ shape: chosen === 'curve' ? 'curve' : null })}
        hint={bends === 0 ? 'no bends: Alt and a double click on the run sets one' : `${bends} bends`}
      />
    </>
  );
}
