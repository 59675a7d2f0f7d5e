import type { CavityUse } from '../../derive/harness';
import type { Fix } from '../finding';
import { cavityName } from '../refs';

/** Choose the contact that fits for every wire end in the cavity. */
export const fitContact = (cavity: CavityUse): Fix => ({
  label: `Choose the contact that fits ${cavityName(cavity)}`,
  command: 'contact.fit',
  args: { places: [{ connector: cavity.connector.connector.id, cavity: cavity.cavity }] },
});
