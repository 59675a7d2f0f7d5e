import { type ReactNode, useState } from 'react';
import type { Call } from '@latchwork/core/commands/dispatch';
import type { Decision } from '@latchwork/core/model/decision';
import { quantityLeft } from '@latchwork/core/model/approvals';
import { appStore } from '../../app/store';
import { today } from '../../app/today';
import { Button } from '../../ui/button';
import { DialogFrame } from '../../ui/dialogs';
import { SeverityMark } from '../../ui/severity-mark';
import { FormText } from './form-text';

interface Props {
  readonly decision: Decision;
  readonly done: (recorded: boolean | null) => void;
}

/** Harnesses that were built under a decision. */
export function UseForm({ decision, done }: Props) {
  const [quantity, setQuantity] = useState('1');
  const [items, setItems] = useState('');
  const [recordedBy, setRecordedBy] = useState('');
  const [date, setDate] = useState(today());
  return (
    <LaterForm
      title={`Use of ${decision.number}: ${quantityLeft(decision) ?? 0} of ${decision.quantity ?? 0} left`}
      call={() => ({
        id: 'decision.use',
        args: {
          decision: decision.id,
          use: { date, quantity: Number(quantity), recordedBy, ...(items ? { items } : {}) },
        },
      })}
      done={done}
    >
      <FormText label="Harnesses" type="number" value={quantity} set={setQuantity} autoFocus />
      <FormText label="Serial or lot numbers" value={items} set={setItems} />
      <FormText label="Recorded by" value={recordedBy} set={setRecordedBy} />
      <FormText label="Date" type="date" value={date} set={setDate} />
    </LaterForm>
  );
}

/** Ends a decision before its time. */
export function CloseForm({ decision, done }: Props) {
  const [by, setBy] = useState('');
  const [reason, setReason] = useState('');
  const [date, setDate] = useState(today());
  return (
    <LaterForm
      title={`Close ${decision.number}`}
      call={() => ({
        id: 'decision.close',
        args: { decision: decision.id, closed: { date, by, reason } },
      })}
      done={done}
    >
      <FormText label="Reason" lines={2} value={reason} set={setReason} autoFocus />
      <FormText label="Closed by" value={by} set={setBy} />
      <FormText label="Date" type="date" value={date} set={setDate} />
    </LaterForm>
  );
}

function LaterForm({
  title,
  call,
  done,
  children,
}: {
  title: string;
  call: () => Call;
  done: (recorded: boolean | null) => void;
  children: ReactNode;
}) {
  const [problem, setProblem] = useState<string | null>(null);
  const record = (): void => {
    const refused = appStore.getState().attempt(call());
    if (refused === null) done(true);
    else setProblem(refused);
  };
  return (
    <DialogFrame
      title={title}
      buttons={
        <>
          <Button onClick={() => done(null)}>Cancel</Button>
          <Button look="primary" onClick={record}>
            Record
          </Button>
        </>
      }
    >
      <div className="decision-form">{children}</div>
      {problem ? (
        <p className="field-problem" role="alert">
          <SeverityMark kind="critical" size={12} />
          {problem}
        </p>
      ) : null}
    </DialogFrame>
  );
}
