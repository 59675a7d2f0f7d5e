import type { ResolvedWire } from '@latchwork/core/derive/harness';
import { wireFigures } from '@latchwork/core/derive/wire-figures';
import { partOfKind, type Part } from '@latchwork/core/model/parts/part';
import type { WirePart } from '@latchwork/core/model/parts/wire';
import { wireSizeText } from '@latchwork/core/model/wire-size';
import { useApp } from '../../app/store';
import { LengthField } from '../../ui/length-field';
import { Length, Quantity } from '../../ui/quantity';
import { TextField } from '../../ui/text-field';
import { WorkedNumber } from '../../ui/worked-number';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';
import { fitOf } from './choose-contact';
import { ColourField } from './colour-field';
import { ComputedSection } from './computed-section';
import { DesignatorField, SignalField, attempt, orNull } from './fields';
import { LengthMakeUp } from './length-make-up';
import { lengthWorking } from './length-working';
import { PartButton } from './part-button';
import { LabelsHere } from './labels-here';
import { PartFacts } from './part-facts';
import { RefLink } from './ref-link';
import { RouteField } from './route-field';
import { CardHead, Section } from './section';
import { WireEndSection } from './wire-end';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'wire.edit' }>['args']['change'];

/** A wire, or a core of a cable. */
export function WireCard({ wire }: { wire: ResolvedWire }) {
  const { wire: w, conductor, length, group } = wire;
  const project = useApp((s) => s.history.project);
  const harness = useApp((s) => s.harness);
  const parts = useAllParts();
  const edit = (change: Change): string | null => attempt({ id: 'wire.edit', args: { ids: [w.id], change } });
  const offered = partOfKind(wire.part, 'wire')?.colours;
  return (
    <>
      <CardHead name={w.designator} kind={w.core ? `core ${w.core.name}` : 'wire'}>
        {conductor ? (
          <span className="card-size">
            <Quantity value={wireSizeText(conductor.size)} />
            {conductor.size.system === 'awg' && conductor.areaMm2 !== undefined ? (
              <span className="second mono"> {conductor.areaMm2} mm²</span>
            ) : null}
          </span>
        ) : null}
      </CardHead>
      <Section title="Wire">
        <PartButton label="Part" name="part" part={wire.part} choose={() => void choosePart(wire, parts)} />
        <ColourField colour={w.colour} offered={offered} choose={(colour) => void edit({ colour })} />
        <SignalField value={w.signal} choose={(signal) => void edit({ signal })} />
        <DesignatorField
          value={w.designator}
          call={(designator) => ({ id: 'wire.edit', args: { ids: [w.id], change: { designator } } })}
        />
        {group ? (
          <div className="field">
            <span className="field-label">Group</span>
            <span className="field-value">
              <RefLink to={{ type: 'group', id: group.id }} /> <span className="second">{group.form}</span>
            </span>
          </div>
        ) : null}
      </Section>
      <Section title="Length">
        <div className="field">
          <span className="field-label">Cut length</span>
          <span className="field-value">
            <WorkedNumber working={lengthWorking(wire, project)}>
              {length.cutMm === undefined ? 'not known' : <Length mm={length.cutMm} />}
            </WorkedNumber>{' '}
            <span className="second">{length.kind === 'unknown' ? '' : length.kind}</span>
          </span>
        </div>
        <LengthMakeUp wire={wire} />
        <RouteField wire={wire} />
        <LengthField
          label="Typed length"
          name="lengthMm"
          valueMm={w.lengthMm}
          placeholder={length.routeMm === undefined ? 'none' : 'from the route'}
          commit={(lengthMm) => edit({ lengthMm })}
        />
        <LengthField
          label="Extra"
          name="extraMm"
          valueMm={w.extraMm}
          placeholder="none"
          allow="signed"
          commit={(extraMm) => edit({ extraMm })}
        />
      </Section>
      <ComputedSection figures={wireFigures(harness, wire)} of={w.designator} />
      <WireEndSection wire={wire} index={0} />
      <WireEndSection wire={wire} index={1} />
      <Section title="Note" open={w.note !== undefined}>
        <TextField
          label="Note"
          name="note"
          multiline
          stack
          value={w.note ?? ''}
          commit={(t) => edit({ note: orNull(t) })}
        />
      </Section>
      <LabelsHere id={w.id} />
      {wire.part ? <PartFacts part={wire.part} /> : null}
    </>
  );
}

/** Lets the user choose the wire: those that the contacts on both ends take stand first. */
async function choosePart(wire: ResolvedWire, parts: readonly Part[]): Promise<void> {
  const ends = [wire.from, wire.to];
  const answer = await askPart<WirePart>({
    title: `Part of ${wire.wire.designator}`,
    parts: parts.filter((p) => p.kind === 'wire'),
    current: wire.part?.id,
    judge: (part) => {
      const fits = ends.flatMap(
        (end) => fitOf(partOfKind(end.connector?.part, 'housing'), end.contactPart, part) ?? [],
      );
      if (fits.some((f) => f.verdict === 'does-not-fit'))
        return { group: 'Does not suit the contacts on it: then a finding', rank: 2, note: part.description };
      return fits.every((f) => f.verdict === 'fits')
        ? { group: 'Suits the contacts on it', rank: 0, note: part.description }
        : { group: 'Cannot be verified', rank: 1, note: part.description };
    },
  });
  if (!answer?.part) return;
  const { part } = answer;
  // A colour that the new wire cannot be had in would be a wrong order; another one is then chosen with it.
  const kept = part.colours?.some((c) => JSON.stringify(c) === JSON.stringify(wire.wire.colour)) ?? true;
  const colour = kept ? undefined : part.colours?.[0];
  attempt({ id: 'wire.set-part', args: { ids: [wire.wire.id], part, ...(colour ? { colour } : {}) } });
}
