import { must } from '../base/assert-never';
import type { CavityUse } from '../derive/harness';
import { tiny } from '../model/tiny';
import type { Fix } from './finding';
import { cavityName, cavityRef, wireRef } from './refs';
import type { Rule } from './rule';
import { partFact } from './shared/evidence';

export const cavityUnknown: Rule<'connector'> = {
  meta: {
    id: 'cavity-unknown',
    revision: 1,
    severity: 'major',
    summary: 'Every cavity that a wire or a declaration names is one that the part has.',
    why: 'A wire for a cavity that is not there hangs loose at the bench, or is put where there is room.',
    source: 'common practice: the pinout sheet lists the positions of the part',
    message: '{{cavity}} does not exist: {{part}} has {{ways}} ways',
    unknown: 'Whether {{cavity}} exists cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check(use, report) {
    const { part } = use.resolved;
    if (!part) return;
    const named = use.cavities.filter((c) => c.ends.length > 0 || c.entry);
    const absent = named.filter((c) => !c.exists);
    if (named.length > 0 && absent.length === 0) return report.pass();
    for (const c of absent)
      report.fail({
        at: [cavityRef(c), ...c.ends.map((e) => wireRef(e.wire))],
        data: { cavity: cavityName(c), part: part.partNumber, ways: part.ways },
        evidence: partFact(part, 'ways', part.ways),
        fix: fixOf(c),
      });
  },
  examples: () => ({
    good: [{ name: 'cavities 1 to 3 of three', project: tiny() }],
    bad: [
      {
        name: 'a wire ends in cavity 7 of three',
        project: tiny((t) => {
          const end = t.wire('W1').ends[0];
          if (end.at === 'cavity') end.cavity = '7';
        }),
        expect: ['X1:7'],
      },
      {
        name: 'a cavity beyond the last is declared empty',
        project: tiny((t) => void t.connector('X1').cavities.push({ cavity: '4', state: 'empty' })),
        expect: ['X1:4'],
      },
      {
        name: 'a pin list is longer than the header',
        project: tiny((t) => {
          const signal = must(t.project.signals[0], 'signal').id;
          t.connector('X3').cavities.push({ cavity: '4', signal });
        }),
        expect: ['X3:4'],
      },
    ],
    unknown: [],
  }),
};

/** Takes back a declaration that nothing but a mistake accounts for; a wire has to be moved by hand. */
function fixOf(c: CavityUse): Fix | undefined {
  const connector = c.connector.connector.id;
  if (c.ends.length > 0) return undefined;
  if (c.entry?.signal)
    return {
      label: `Take the signal off ${cavityName(c)}`,
      command: 'cavity.set-signal',
      args: { connector, cavity: c.cavity, signal: null },
    };
  return {
    label: `Take back the declaration of ${cavityName(c)}`,
    command: 'cavity.set-state',
    args: { connector, cavities: [c.cavity], state: null },
  };
}
