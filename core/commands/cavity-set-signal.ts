import { z } from 'zod';
import { Id } from '../model/ids';
import { command } from './command';
import { dropIfBare, entryOf, refusePlace } from './shared/cavities';
import { draftObject, missing } from './shared/draft-object';

/** Says which signal the interface of the device assigns to a position. */
export const cavitySetSignal = command({
  id: 'cavity.set-signal',
  label: 'Assign signal to position',
  args: z.strictObject({ connector: Id, cavity: z.string(), signal: Id.nullable() }),
  // A signal on a position that does not exist can still be taken back.
  refuse: (project, { connector, cavity, signal }) =>
    signal === null
      ? missing(project, 'connectors', [connector], 'connector')
      : (refusePlace(project, connector, cavity) ?? missing(project, 'signals', [signal], 'signal')),
  run(draft, { connector: id, cavity, signal }, _context, project) {
    const connector = draftObject(draft, project, 'connectors', id);
    const entry = entryOf(connector, cavity);
    if (signal) entry.signal = signal;
    else delete entry.signal;
    dropIfBare(
      connector,
      connector.cavities.findIndex((e) => e.cavity === cavity),
    );
  },
});
