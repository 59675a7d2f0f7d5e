import { byId } from '@latchwork/core/base/by-id';
import type { Covering } from '@latchwork/core/model/topology';
import { wrappedDiameterMm } from '@latchwork/core/derive/wrapped-diameter';
import { partOfKind } from '@latchwork/core/model/parts/part';
import { useApp } from '../../app/store';
import { NumberField } from '../../ui/number-field';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';
import { AroundFit } from './around-field';
import { ComputedSection } from './computed-section';
import { coveringFigures } from './covering-figures';
import { DesignatorField, attempt } from './fields';
import { PartButton } from './part-button';
import { PartFacts } from './part-facts';
import { CardHead, Section } from './section';
import { StationFields } from './station-fields';

/** A tube, sleeve or tape from one station to another. */
export function CoveringCard({ covering: c }: { covering: Covering }) {
  const project = useApp((s) => s.history.project);
  const parts = useAllParts();
  const harness = useApp((s) => s.harness);
  const part = byId(project.parts).get(c.part);
  const covers = partOfKind(part, 'covering');
  const choose = async (): Promise<void> => {
    const answer = await askPart({
      title: 'Covering',
      parts: parts.flatMap((p) => partOfKind(p, 'covering') ?? []),
      current: c.part,
    });
    if (answer?.part) attempt({ id: 'covering.edit', args: { id: c.id, change: { part: answer.part } } });
  };
  return (
    <>
      <CardHead name={c.designator ?? part?.partNumber ?? 'Covering'} kind="covering" />
      <Section title="Covering">
        <PartButton label="Part" name="part" part={part} choose={() => void choose()} />
        <DesignatorField
          value={c.designator ?? ''}
          call={(designator) => ({ id: 'covering.edit', args: { id: c.id, change: { designator } } })}
        />
        <StationFields
          label="From"
          name="from"
          station={c.from}
          commit={(from) => attempt({ id: 'covering.edit', args: { id: c.id, change: { from } } })}
        />
        <StationFields
          label="To"
          name="to"
          station={c.to}
          commit={(to) => attempt({ id: 'covering.edit', args: { id: c.id, change: { to } } })}
        />
        <NumberField
          label="Layer"
          name="layer"
          whole
          positive
          value={c.layer}
          hint="1 lies on the wires"
          commit={(layer) =>
            layer === null
              ? 'A covering has a layer.'
              : attempt({ id: 'covering.edit', args: { id: c.id, change: { layer } } })
          }
        />
        {covers ? (
          <AroundFit
            mm={wrappedDiameterMm(harness, c)}
            where={`layer ${c.layer}`}
            minMm={covers.innerMinMm}
            maxMm={covers.innerMaxMm}
          />
        ) : null}
      </Section>
      {covers ? (
        <ComputedSection
          figures={coveringFigures(harness, c, covers)}
          of={c.designator ?? covers.partNumber}
        />
      ) : null}
      {part ? <PartFacts part={part} /> : null}
    </>
  );
}
