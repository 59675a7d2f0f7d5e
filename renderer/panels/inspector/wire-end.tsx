import type { ResolvedEnd, ResolvedWire } from '@latchwork/core/derive/harness';
import { partOfKind } from '@latchwork/core/model/parts/part';
import { appStore } from '../../app/store';
import { Button } from '../../ui/button';
import { LengthField } from '../../ui/length-field';
import { useAllParts } from '../shelf/use-all-parts';
import { chooseContactFor, fitOf } from './choose-contact';
import { attempt } from './fields';
import { FitChip } from './fit-chip';
import { PartButton } from './part-button';
import { RefLink } from './ref-link';
import { Section } from './section';

/** One end of a wire: where it is, its contact, how far it is stripped. */
export function WireEndSection({ wire, index }: { wire: ResolvedWire; index: 0 | 1 }) {
  const parts = useAllParts();
  const end = index === 0 ? wire.from : wire.to;
  const fit = fitOf(partOfKind(end.connector?.part, 'housing'), end.contactPart, wire.conductor);
  const strip = 'stripLengthMm' in end.end ? end.end.stripLengthMm : undefined;
  const at = end.end.at === 'cavity' ? end.end : null;
  return (
    <Section title={index === 0 ? 'From' : 'To'}>
      <div className="field">
        <span className="field-label">Ends in</span>
        <span className="field-value">
          <EndPlace end={end} />
        </span>
      </div>
      {at ? (
        <>
          <PartButton
            label="Contact"
            name={`contact-${index}`}
            part={end.contactPart}
            choose={() => void chooseContactFor(wire, index, end, parts)}
            after={
              <div className="card-actions end-fit">
                {fit ? (
                  <FitChip fit={fit} title={`Fit of ${end.contactPart?.partNumber ?? 'the contact'}`} />
                ) : null}
                {fit?.verdict === 'fits' ? null : (
                  <Button
                    look="link"
                    onClick={() =>
                      appStore.getState().dispatch({
                        id: 'contact.fit',
                        args: { places: [{ connector: at.connector, cavity: at.cavity }] },
                      })
                    }
                  >
                    Choose one that fits
                  </Button>
                )}
              </div>
            }
          />
          {end.seal ? (
            <div className="field">
              <span className="field-label">Wire seal</span>
              <span className="field-value mono">{end.seal.partNumber}</span>
            </div>
          ) : null}
        </>
      ) : null}
      <LengthField
        label="Strip length"
        name={`stripLengthMm-${index}`}
        valueMm={strip}
        hint={
          end.contactPart?.stripLengthMm === undefined
            ? undefined
            : `the contact asks for ${end.contactPart.stripLengthMm} mm${end.contactPart.stripToleranceMm === undefined ? '' : ` ± ${end.contactPart.stripToleranceMm} mm`}`
        }
        commit={(stripLengthMm) =>
          attempt({ id: 'wire.set-strip-length', args: { id: wire.wire.id, end: index, stripLengthMm } })
        }
      />
    </Section>
  );
}

function EndPlace({ end }: { end: ResolvedEnd }) {
  switch (end.end.at) {
    case 'cavity':
      return <RefLink to={{ type: 'cavity', id: end.end.connector, cavity: end.end.cavity }} />;
    case 'splice':
      return <RefLink to={{ type: 'splice', id: end.end.splice }} />;
    case 'free':
      return <span>{end.end.text ?? 'free end'}</span>;
  }
}
