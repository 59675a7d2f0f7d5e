import { byId } from '@latchwork/core/base/by-id';
import type { Fixing } from '@latchwork/core/model/topology';
import { partOfKind } from '@latchwork/core/model/parts/part';
import { useApp } from '../../app/store';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';
import { AroundField } from './around-field';
import { DesignatorField, attempt } from './fields';
import { PartButton } from './part-button';
import { PartFacts } from './part-facts';
import { CardHead, Section } from './section';
import { StationFields } from './station-fields';

/** A clamp or a grommet at its place. */
export function FixingCard({ fixing }: { fixing: Fixing }) {
  const project = useApp((s) => s.history.project);
  const parts = useAllParts();
  const part = byId(project.parts).get(fixing.part);
  const grommet = partOfKind(part, 'grommet');
  const clamp = partOfKind(part, 'clamp');
  const choose = async (): Promise<void> => {
    const answer = await askPart({
      title: grommet ? 'Grommet' : 'Clamp',
      parts: parts.flatMap((p) => partOfKind(p, 'clamp') ?? partOfKind(p, 'grommet') ?? []),
      current: fixing.part,
    });
    if (answer?.part) attempt({ id: 'fixing.edit', args: { id: fixing.id, change: { part: answer.part } } });
  };
  return (
    <>
      <CardHead name={fixing.designator ?? part?.partNumber ?? 'Fixing'} kind={part?.kind ?? 'fixing'} />
      <Section title={grommet ? 'Grommet' : 'Clamp'}>
        <PartButton label="Part" name="part" part={part} choose={() => void choose()} />
        <DesignatorField
          value={fixing.designator ?? ''}
          call={(designator) => ({ id: 'fixing.edit', args: { id: fixing.id, change: { designator } } })}
        />
        <StationFields
          name="station"
          station={fixing.station}
          commit={(station) => attempt({ id: 'fixing.edit', args: { id: fixing.id, change: { station } } })}
        />
        <AroundField
          station={fixing.station}
          minMm={grommet ? grommet.boreMinMm : clamp?.bundleMinMm}
          maxMm={grommet ? grommet.boreMaxMm : clamp?.bundleMaxMm}
        />
      </Section>
      {part ? <PartFacts part={part} /> : null}
    </>
  );
}
