import { byId } from '@latchwork/core/base/by-id';
import type { Fuse } from '@latchwork/core/model/electrical';
import { useApp } from '../../app/store';
import { Length, Quantity } from '../../ui/quantity';
import { PartFacts } from './part-facts';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';

/** A fuse in a wire. */
export function FuseCard({ fuse }: { fuse: Fuse }) {
  const part = useApp((s) => byId(s.history.project.parts).get(fuse.part ?? ''));
  return (
    <>
      <CardHead name={fuse.designator} kind="fuse" />
      <Section title="Fuse">
        <dl className="facts">
          <div>
            <dt>In wire</dt>
            <dd>
              <RefLink to={{ type: 'wire', id: fuse.wire }} />
            </dd>
          </div>
          <div>
            <dt>Rated current</dt>
            <dd>{fuse.ratedA === undefined ? 'not known' : <Quantity value={fuse.ratedA} unit="A" />}</dd>
          </div>
          <div>
            <dt>From the source</dt>
            <dd>{fuse.fromSourceMm === undefined ? 'not known' : <Length mm={fuse.fromSourceMm} />}</dd>
          </div>
        </dl>
      </Section>
      {part ? <PartFacts part={part} /> : null}
    </>
  );
}
