import { byId } from '@latchwork/core/base/by-id';
import type { Covering } from '@latchwork/core/model/topology';
import { partOfKind } from '@latchwork/core/model/parts/part';
import { useApp } from '../../app/store';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { NumberField } from '../../ui/number-field';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';
import { ComputedSection } from './computed-section';
import { coveringFigures } from './covering-figures';
import { DesignatorField, attempt } from './fields';
import { PartButton } from './part-button';
import { PartFacts } from './part-facts';
import { CardHead, Section } from './section';

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
        <Station label="From" covering={c} end="from" />
        <Station label="To" covering={c} end="to" />
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

function Station({ label, covering, end }: { label: string; covering: Covering; end: 'from' | 'to' }) {
  const segments = useApp((s) => s.history.project.segments);
  const station = covering[end];
  const set = (change: Partial<Covering['from']>): string | null =>
    attempt({ id: 'covering.edit', args: { id: covering.id, change: { [end]: { ...station, ...change } } } });
  return (
    <>
      <ChoiceField
        label={`${label} segment`}
        mono
        value={station.segment}
        choices={segments.map((s) => ({ value: s.id, text: s.designator }))}
        choose={(segment) => void set({ segment })}
      />
      <LengthField
        label="at"
        name={`${end}.atMm`}
        valueMm={station.atMm}
        allow="not-negative"
        hint="from the first node of the segment"
        commit={(atMm) => (atMm === null ? 'A station needs a place.' : set({ atMm }))}
      />
    </>
  );
}
