import { dimensionValues, nameOfDatum } from '@latchwork/core/derive/formboard/dimension-values';
import type { Dimension } from '@latchwork/core/model/topology';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { Length } from '../../ui/quantity';
import { WorkedNumber, inMm } from '../../ui/worked-number';
import { attempt } from './fields';
import { CardHead, Section } from './section';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'dimension.edit' }>['args']['change'];

/** Lengths along the harness that the formboard states. */
export function DimensionCard({ dimension: d }: { dimension: Dimension }) {
  const harness = useApp((s) => s.harness);
  const { project } = harness;
  const edit = (change: Change): string | null =>
    attempt({ id: 'dimension.edit', args: { id: d.id, change } });
  const name = (i: number): string => {
    const datum = d.datums.at(i);
    return datum ? nameOfDatum(project, datum) : '?';
  };
  return (
    <>
      <CardHead name={`${name(0)}–${name(-1)}`} kind="dimension" />
      <Section title="Dimension">
        <ChoiceField
          label="Form"
          name="form"
          value={d.form}
          choices={[
            { value: 'chain', text: 'chain, from each datum to the next' },
            { value: 'baseline', text: 'baseline, all from the first' },
          ]}
          choose={(form) => void edit({ form })}
        />
        <LengthField
          label="Line stands away"
          name="offsetMm"
          valueMm={d.offsetMm}
          allow="signed"
          hint="negative on the other side"
          commit={(offsetMm) => (offsetMm === null ? 'The line needs a place.' : edit({ offsetMm }))}
        />
        <LengthField
          label="Tolerance +"
          name="plusMm"
          valueMm={d.plusMm}
          allow="not-negative"
          commit={(plusMm) => edit({ plusMm })}
        />
        <LengthField
          label="Tolerance −"
          name="minusMm"
          valueMm={d.minusMm}
          allow="not-negative"
          commit={(minusMm) => edit({ minusMm })}
        />
      </Section>
      <Section title="Measured">
        {dimensionValues(harness, d).map((v, i) => (
          <div className="field" key={i}>
            <span className="field-label mono">
              {nameOfDatum(project, v.from)}–{nameOfDatum(project, v.to)}
            </span>
            <span className="field-value">
              {v.valueMm === undefined ? (
                <span className="cannot-verify">needs {v.needs.join(', ')}</span>
              ) : (
                <WorkedNumber
                  working={{
                    title: `${nameOfDatum(project, v.from)} to ${nameOfDatum(project, v.to)}`,
                    lines: v.extents.map((e) => ({
                      label: project.segments.find((s) => s.id === e.segment)?.designator ?? 'segment',
                      value: inMm(e.toMm - e.fromMm),
                      source: 'formboard',
                    })),
                    result: inMm(v.valueMm),
                    method: 'The shortest way along the harness, segment by segment.',
                  }}
                >
                  <Length mm={v.valueMm} />
                </WorkedNumber>
              )}
            </span>
          </div>
        ))}
        <div className="card-actions">
          <Button look="plain" onClick={() => attempt({ id: 'objects.remove', args: { ids: [d.id] } })}>
            Delete
          </Button>
        </div>
      </Section>
    </>
  );
}
