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

/** What the same and other keys mean on the formboard. */
const BOARD_KEYS = [
  ['Walk over nodes, what stands there, segments, and what lies on them', 'Tab, Shift+Tab'],
  ['Move nodes; slide a thing along its run; turn a connector; shift a dimension', 'Arrow keys'],
  ['The same by 1 mm, or 1 degree', 'Alt+Arrow keys'],
  ['End a dimension, or a path that is chosen run by run', 'Enter'],
  ['Split a run where it is clicked, or set a node on the empty board', 'Double click'],
  ['Bend a run where it is clicked', 'Alt+Double click'],
  ['Pull a branch out of a run', 'Drag the run'],
  ['Drag without snapping; free angles', 'Alt; Shift'],
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
            <KeyTable caption="On the formboard" rows={BOARD_KEYS} />
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
