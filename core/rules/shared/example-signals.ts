import type { Draft } from 'immer';
import { must } from '../../base/assert-never';
import type { Signal } from '../../model/electrical';
import type { TinyDraft } from '../../model/tiny';

const named = (t: TinyDraft, name: string): Draft<Signal> =>
  must(
    t.project.signals.find((s) => s.name === name),
    `signal ${name}`,
  );

/** The supply of an example, and its return. */
export const sup = (t: TinyDraft): Draft<Signal> => named(t, 'SUP');
export const rtn = (t: TinyDraft): Draft<Signal> => named(t, 'RTN');
