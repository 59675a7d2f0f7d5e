import { byId } from '@latchwork/core/base/by-id';
import { partOfKind } from '@latchwork/core/model/parts/part';
import type { Tie } from '@latchwork/core/model/topology';
import { useApp } from '../../app/store';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';
import { AroundField } from './around-field';
import { attempt } from './fields';
import { PartButton } from './part-button';
import { PartFacts } from './part-facts';
import { CardHead, Section } from './section';
import { StationFields } from './station-fields';

/** A cable tie at its place. */
export function TieCard({ tie }: { tie: Tie }) {
  const project = useApp((s) => s.history.project);
  const parts = useAllParts();
  const part = byId(project.parts).get(tie.part);
  const record = partOfKind(part, 'tie');
  const choose = async (): Promise<void> => {
    const answer = await askPart({
      title: 'Tie',
      parts: parts.flatMap((p) => partOfKind(p, 'tie') ?? []),
      current: tie.part,
    });
    if (answer?.part) attempt({ id: 'tie.edit', args: { id: tie.id, change: { part: answer.part } } });
  };
  return (
    <>
      <CardHead name={part?.partNumber ?? 'Tie'} kind="tie" />
      <Section title="Tie">
        <PartButton label="Part" name="part" part={part} choose={() => void choose()} />
        <StationFields
          name="station"
          station={tie.station}
          commit={(station) => attempt({ id: 'tie.edit', args: { id: tie.id, change: { station } } })}
        />
        <AroundField station={tie.station} minMm={record?.bundleMinMm} maxMm={record?.bundleMaxMm} />
      </Section>
      {part ? <PartFacts part={part} /> : null}
    </>
  );
}
