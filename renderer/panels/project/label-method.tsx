import { useMemo, useState } from 'react';
import { labelPlan, type LabelPlan } from '@latchwork/core/derive/label-plan';
import type { LabelMethod } from '@latchwork/core/derive/label-texts';
import { METHOD_WORDS } from '@latchwork/core/exports/labels/method-words';
import { Project } from '@latchwork/core/model/project';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { CheckField } from '../../ui/check-field';
import { ChoiceField, choicesOf } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';

const METHODS = Project.shape.labelMethod.unwrap().options;

/** How ends are marked, and labels made by it, with what that would do. */
export function LabelMethodFields() {
  const method = useApp((s) => s.history.project.labelMethod);
  return (
    <>
      <ChoiceField
        label="Marks say"
        name="labelMethod"
        value={method ?? ''}
        choices={[{ value: '', text: 'not settled' }, ...choicesOf(METHODS)]}
        hint={method ? METHOD_WORDS[method] : 'methods of IEC 62491'}
        choose={(value) =>
          appStore.getState().dispatch({
            id: 'project.edit',
            args: { change: { labelMethod: value === '' ? null : value } },
          })
        }
      />
      {method ? <MakeLabels method={method} /> : null}
    </>
  );
}

function MakeLabels({ method }: { method: LabelMethod }) {
  const harness = useApp((s) => s.harness);
  const [rewrite, setRewrite] = useState(false);
  const [atWiresMm, setAtWires] = useState<number>();
  const [atConnectorsMm, setAtConnectors] = useState<number>();
  const plan = useMemo(() => labelPlan(harness, method, { rewrite }), [harness, method, rewrite]);
  return (
    <>
      <LengthField
        label="New ones, on wires"
        name="atWiresMm"
        valueMm={atWiresMm}
        allow="not-negative"
        placeholder="not stated"
        hint="from the wire stop of the end, or the end of the jacket"
        commit={(mm) => (setAtWires(mm ?? undefined), null)}
      />
      <LengthField
        label="New ones, at connectors"
        name="atConnectorsMm"
        valueMm={atConnectorsMm}
        allow="not-negative"
        placeholder="not stated"
        hint="from the rear face of the connector"
        commit={(mm) => (setAtConnectors(mm ?? undefined), null)}
      />
      <CheckField label="Write over texts that were typed by hand" checked={rewrite} choose={setRewrite} />
      <p className="field-hint" data-plan>
        {planWords(plan)}
      </p>
      <div className="card-actions">
        <Button
          onClick={() =>
            appStore.getState().dispatch({
              id: 'labels.make',
              args: {
                rewrite,
                ...(atWiresMm === undefined ? {} : { atWiresMm }),
                ...(atConnectorsMm === undefined ? {} : { atConnectorsMm }),
              },
            })
          }
        >
          Make labels
        </Button>
      </div>
    </>
  );
}

/** "82 new, 3 change their text, 12 stay, 14 by hand stay." */
export function planWords({ add, follow, kept, untold }: LabelPlan): string {
  const changed = follow.filter(({ label, text }) => label.text !== text).length;
  const [first] = untold;
  return [
    `${add.length} new`,
    changed > 0 ? `${changed} change their text` : null,
    follow.length > changed ? `${follow.length - changed} say it already` : null,
    kept.length > 0 ? `${kept.length} typed by hand stay` : null,
    first ? `${untold.length} cannot be named: the method needs ${first.needs}` : null,
  ]
    .filter((t) => t !== null)
    .join(', ')
    .concat('.');
}
