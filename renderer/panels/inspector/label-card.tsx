import { byId } from '@latchwork/core/base/by-id';
import { labelCarrier } from '@latchwork/core/derive/label-carrier';
import { partOfKind } from '@latchwork/core/model/parts/part';
import type { Label } from '@latchwork/core/model/topology';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { LengthField } from '../../ui/length-field';
import { TextField } from '../../ui/text-field';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';
import { AroundField } from './around-field';
import { attempt } from './fields';
import { PartButton } from './part-button';
import { PartFacts } from './part-facts';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';
import { StationFields } from './station-fields';

/** A printed mark and what carries it. */
export function LabelCard({ label }: { label: Label }) {
  const project = useApp((s) => s.history.project);
  const parts = useAllParts();
  const part = byId(project.parts).get(label.part ?? '');
  const { on } = label;
  const choose = async (): Promise<void> => {
    const answer = await askPart({
      title: 'Label',
      parts: parts.flatMap((p) => partOfKind(p, 'label') ?? []),
      current: label.part,
      none: label.part ? 'No part' : undefined,
    });
    if (answer) attempt({ id: 'label.edit', args: { id: label.id, change: { part: answer.part } } });
  };
  return (
    <>
      <CardHead name={label.text} kind="label" />
      <Section title="Label">
        <TextField
          label="Text"
          name="text"
          value={label.text}
          commit={(text) =>
            text === ''
              ? 'A label says something.'
              : attempt({ id: 'label.edit', args: { id: label.id, change: { text } } })
          }
        />
        {on.at === 'station' ? null : <TextSource label={label} />}
        <PartButton label="Part" name="part" part={part} choose={() => void choose()} />
        {on.at === 'station' ? (
          <>
            <StationFields
              name="station"
              station={on.station}
              commit={(station) =>
                attempt({
                  id: 'label.edit',
                  args: { id: label.id, change: { on: { at: 'station', station } } },
                })
              }
            />
            <AroundField
              station={on.station}
              minMm={undefined}
              maxMm={partOfKind(part, 'label')?.bundleMaxMm}
            />
          </>
        ) : (
          <>
            <div className="field">
              <span className="field-label">On</span>
              <span className="field-value">
                {on.at === 'connector' ? (
                  <RefLink to={{ type: 'connector', id: on.connector }} />
                ) : (
                  <>
                    end {on.end + 1} of <RefLink to={labelCarrier(on)} />
                  </>
                )}
              </span>
            </div>
            <LengthField
              label="Distance"
              name="datumDistanceMm"
              valueMm={label.datumDistanceMm}
              allow="not-negative"
              hint={
                on.at === 'connector'
                  ? 'from the rear face of the connector'
                  : on.at === 'cable-end'
                    ? 'from the end of the jacket'
                    : 'from the wire stop of the end'
              }
              commit={(datumDistanceMm) =>
                attempt({ id: 'label.edit', args: { id: label.id, change: { datumDistanceMm } } })
              }
            />
          </>
        )}
      </Section>
      {part ? <PartFacts part={part} /> : null}
    </>
  );
}

/** Who says the text: the method of the project, or whoever typed it; and a way back to the method. */
function TextSource({ label }: { label: Label }) {
  const method = useApp((s) => s.history.project.labelMethod);
  return (
    <div className="field">
      <span className="field-label">Text from</span>
      <span className="field-value">
        {label.made ? 'the method of the project' : 'typed by hand'}
        {method && !label.made ? (
          <Button
            look="link"
            onClick={() =>
              appStore.getState().dispatch({ id: 'labels.make', args: { ids: [label.id], rewrite: true } })
            }
          >
            Follow the method
          </Button>
        ) : null}
      </span>
    </div>
  );
}
