import { labelCarrier } from '@latchwork/core/derive/label-carrier';
import { labelPlan } from '@latchwork/core/derive/label-plan';
import { partIn } from '@latchwork/core/derive/harness';
import type { Label } from '@latchwork/core/model/topology';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { Length } from '../../ui/quantity';
import { RefLink } from './ref-link';
import { Section } from './section';

/** The labels of an object, and a button that makes them by the method of the project. */
export function LabelsHere({ id }: { id: string }) {
  const project = useApp((s) => s.history.project);
  const harness = useApp((s) => s.harness);
  const labels = project.labels.filter((l) => labelCarrier(l.on).id === id);
  const { labelMethod } = project;
  const plan = labelMethod ? labelPlan(harness, labelMethod, { ids: [id] }) : undefined;
  const toMake = plan ? plan.add.length + plan.follow.filter((f) => f.label.text !== f.text).length : 0;
  return (
    <Section title={`Labels (${labels.length})`} open={false}>
      {labels.map((l) => (
        <div className="field" key={l.id}>
          <span className="field-label">{endWords(l)}</span>
          <span className="field-value">
            <RefLink to={{ type: 'label', id: l.id }} />{' '}
            <span className="second">
              <span className="mono">{partIn(project, l.part)?.partNumber ?? 'no part'}</span>
              {l.datumDistanceMm === undefined ? null : (
                <>
                  , at <Length mm={l.datumDistanceMm} />
                </>
              )}
            </span>
          </span>
        </div>
      ))}
      {labelMethod ? null : (
        <p className="field-hint">The project does not say how ends are marked; its card has the methods.</p>
      )}
      {plan?.untold.map(({ on, needs }) => (
        <p className="field-hint" key={JSON.stringify(on)}>
          {'end' in on ? `End ${on.end + 1}` : 'It'} cannot be named: the method needs {needs}.
        </p>
      ))}
      {toMake > 0 ? (
        <div className="card-actions">
          <Button onClick={() => appStore.getState().dispatch({ id: 'labels.make', args: { ids: [id] } })}>
            {toMake === 1 ? 'Make the label' : `Make ${toMake} labels`}
          </Button>
        </div>
      ) : null}
    </Section>
  );
}

const endWords = ({ on }: Label): string =>
  on.at === 'wire-end' || on.at === 'cable-end' ? `End ${on.end + 1}` : 'On it';
