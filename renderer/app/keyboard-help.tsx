import { Heading, Dialog, Modal, ModalOverlay } from 'react-aria-components';
import { keysText } from './actions/action';
import { ACTIONS } from './actions/index';
import { openOverlay, useOverlay } from './overlays';
import './palette.css';

/** Keys that the sheet itself understands; its tools know them, the table of actions does not. */
const SHEET_KEYS = [
  ['Walk from object to object', 'Tab, Shift+Tab'],
  ['Into the cavities of a connector; there: start a wire, and end it', 'Enter'],
  ['From cavity to cavity', 'Arrow keys'],
  ['Move what is selected by the grid, with Alt by 1 mm', 'Arrow keys'],
  ['Stop what you are doing, then select nothing', 'Esc'],
] as const;

/** All keys in one place. */
export function KeyboardHelp() {
  if (useOverlay() !== 'keys') return null;
  const groups = [...new Set(ACTIONS.map((a) => a.group))];
  return (
    <ModalOverlay
      className="dialog-back"
      isOpen
      isDismissable
      onOpenChange={(open) => !open && openOverlay(null)}
    >
      <Modal className="dialog-box">
        <Dialog className="dialog">
          <header>
            <Heading slot="title" level={2}>
              Keyboard
            </Heading>
          </header>
          <div className="dialog-body" tabIndex={0} role="group" aria-label="Keys">
            <KeyTable caption="On the sheet" rows={SHEET_KEYS} />
            {groups.map((group) => {
              const keyed = ACTIONS.flatMap((a) =>
                a.group === group && a.keys ? [[a.label, keysText(a.keys)] as const] : [],
              );
              return keyed.length ? <KeyTable key={group} caption={group} rows={keyed} /> : null;
            })}
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function KeyTable({ caption, rows }: { caption: string; rows: readonly (readonly [string, string])[] }) {
  return (
    <table className="key-table">
      <caption>{caption}</caption>
      <tbody>
        {rows.map(([label, keys]) => (
          <tr key={label}>
            <td>{label}</td>
            <td>
              <kbd>{keys}</kbd>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
