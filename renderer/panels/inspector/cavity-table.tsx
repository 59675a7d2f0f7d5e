import type { CavityUse, ConnectorUse } from '@latchwork/core/derive/harness';
import { appStore, useApp } from '../../app/store';
import { setCavityState, stateChoices } from './cavity-state';

/** All cavities of a connector: number, what is in it, signal, contact. A click on a number selects the cavity. */
export function CavityTable({ use }: { use: ConnectorUse }) {
  const selection = useApp((s) => s.view.selection);
  const id = use.resolved.connector.id;
  return (
    <table className="mini-table cavity-table">
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">Holds</th>
          <th scope="col">Signal</th>
          <th scope="col">Contact</th>
        </tr>
      </thead>
      <tbody>
        {use.cavities.map((c) => (
          <tr key={c.cavity} aria-selected={selection.has(`${id}:${c.cavity}`)}>
            <td>
              <button
                type="button"
                className="button mono"
                data-look="link"
                aria-label={`Select cavity ${c.cavity}`}
                onClick={() => appStore.getState().select([`${id}:${c.cavity}`])}
              >
                {c.cavity}
              </button>
            </td>
            <td>{c.state === 'wired' ? <WiresIn cavity={c} /> : <StateChoice cavity={c} />}</td>
            <td className="mono">{signalOf(c)}</td>
            <td className="mono" title={contactOf(c)}>
              {contactOf(c) ?? <span className="second">–</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function WiresIn({ cavity }: { cavity: CavityUse }) {
  return cavity.ends.map((e) => (
    <button
      key={`${e.wire.wire.id} ${e.index}`}
      type="button"
      className="button mono"
      data-look="link"
      onClick={() => appStore.getState().select([e.wire.wire.id])}
    >
      {e.wire.wire.designator}
    </button>
  ));
}

function StateChoice({ cavity }: { cavity: CavityUse }) {
  return (
    <select
      className="input"
      aria-label={`State of cavity ${cavity.cavity}`}
      value={cavity.state}
      onChange={(e) => void setCavityState(cavity, e.target.value)}
    >
      {stateChoices(cavity).map((c) => (
        <option key={c.value} value={c.value}>
          {c.text}
        </option>
      ))}
    </select>
  );
}

/** What the interface declares there, else what the wire carries. */
export const signalOf = (c: CavityUse): string | undefined =>
  c.signal?.name ?? c.ends.find((e) => e.wire.signal)?.wire.signal?.name;

export const contactOf = (c: CavityUse): string | undefined =>
  c.ends.find((e) => e.end.contactPart)?.end.contactPart?.partNumber ??
  c.spare?.partNumber ??
  c.plug?.partNumber;
