import type { ObjectRef } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { keyOfRef, useApp } from '../../app/store';
import { Button } from '../../ui/button';

/** The name of another object; a click selects it. */
export function RefLink({ to }: { to: ObjectRef }) {
  const text = useApp((s) => refText(s.history.project, to));
  const select = useApp((s) => s.select);
  const setView = useApp((s) => s.setView);
  return (
    <Button
      look="link"
      className="mono"
      onClick={() => {
        setView({ hover: null });
        select([keyOfRef(to)]);
      }}
      // The sheet lights it.
      onPointerEnter={() => setView({ hover: to })}
      onPointerLeave={() => setView({ hover: null })}
    >
      {text}
    </Button>
  );
}
