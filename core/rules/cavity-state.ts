import type { CavityUse, ConnectorUse } from '../derive/harness';
import { tiny } from '../model/tiny';
import type { Fix } from './finding';
import { cavityName, cavityRef, connectorRef } from './refs';
import type { Report, Rule } from './rule';
import { cavityList } from './shared/cavity-list';
import { fact, partFact } from './shared/evidence';

export const cavityState: Rule<'connector'> = {
  meta: {
    id: 'cavity-state',
    revision: 1,
    severity: 'minor',
    summary:
      'Every cavity of a housing is in one state: wired, plugged, spare contact, empty by intent, or blocked.',
    why:
      'A blank cavity may be a forgotten wire, and the shop cannot tell. One that is declared empty and wired at once ' +
      'is built one way and counted the other.',
    source: 'common practice: positions without a wire are marked as such on the pinout sheet',
    message: '{{where}} {{problem}}',
    unknown: 'The state of {{where}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check(use, report) {
    const judged = use.cavities.filter((c) => c.exists);
    const contradicting = judged.filter((c) => reportContradiction(c, report));
    const { connector, part } = use.resolved;
    if (part?.kind !== 'housing' || connector.supply !== 'harness') return;
    const blank = judged.filter(
      (c) =>
        c.state === 'undeclared' &&
        !c.entry?.contact &&
        !c.entry?.plug &&
        !part.keyPositions?.includes(c.cavity),
    );
    if (blank.length > 0) reportBlank(use, blank, report);
    else if (contradicting.length === 0) report.pass();
  },
  examples: () => ({
    good: [
      { name: 'two wired, one empty by intent', project: tiny() },
      {
        name: 'a position closed by the maker needs no declaration',
        project: tiny((t) => {
          t.part('housing', 'H-SOCKET').keyPositions = ['3'];
          t.connector('X1').cavities = [];
        }),
      },
      {
        name: 'blanks of a housing that comes with the equipment',
        project: tiny((t) => void (t.connector('X4').cavities = [])),
      },
    ],
    bad: [
      {
        name: 'cavity 3 left blank',
        project: tiny((t) => void (t.connector('X1').cavities = [])),
        expect: ['X1'],
      },
      {
        name: 'declared blocked, yet wired',
        project: tiny((t) => void t.connector('X1').cavities.push({ cavity: '1', state: 'blocked' })),
        expect: ['X1:1'],
      },
      {
        name: 'a spare contact that is not there',
        project: tiny((t) => void (t.connector('X2').cavities = [{ cavity: '3', state: 'spare-contact' }])),
        expect: ['X2:3'],
      },
      {
        name: 'declared empty with a contact in it',
        project: tiny((t) => {
          const id = t.newId();
          t.project.contacts.push({ id, part: t.part('contact', 'C-SOCKET').id });
          t.connector('X1').cavities = [{ cavity: '3', state: 'empty', contact: id }];
        }),
        expect: ['X1:3'],
      },
    ],
    unknown: [],
  }),
};

function reportBlank(use: ConnectorUse, blank: readonly CavityUse[], report: Report): void {
  const { connector, part } = use.resolved;
  const cavities = blank.map((c) => c.cavity);
  report.fail({
    open: true,
    at: [connectorRef(use), ...blank.map(cavityRef)],
    data: {
      where: connector.designator,
      problem: `says nothing of cavity ${cavityList(cavities)}: no wire, no declared state`,
    },
    evidence: [
      ...(part ? partFact(part, 'ways', part.ways) : []),
      ...fact('cavities without a state', cavityList(cavities), `project, ${connector.designator}`),
    ],
    fix: {
      label: `Declare ${connector.designator}:${cavityList(cavities)} empty by intent`,
      command: 'cavity.set-state',
      args: { connector: connector.id, cavities, state: 'empty' },
    },
  });
}

const STATE_WORDS = {
  plugged: 'plugged',
  'spare-contact': 'a spare contact',
  empty: 'empty by intent',
  blocked: 'blocked',
} as const;

/** What the declaration of a cavity says against what is in it. True when something was reported. */
function reportContradiction(c: CavityUse, report: Report): boolean {
  const problem = contradictionOf(c);
  if (!problem) return false;
  report.fail({
    at: [cavityRef(c)],
    data: { where: cavityName(c), problem },
    severity: 'major',
    evidence: [
      ...fact('declared state', c.entry?.state, `project, ${cavityName(c)}`),
      ...fact('wire ends', c.ends.length, `project, ${cavityName(c)}`),
    ],
    fix: fixOf(c),
  });
  return true;
}

function contradictionOf({ entry, ends, plug }: CavityUse): string | undefined {
  const state = entry?.state;
  if (ends.length > 0) {
    if (state) return `is declared ${STATE_WORDS[state]}, yet a wire ends there`;
    return plug ? 'holds a cavity plug, yet a wire ends there' : undefined;
  }
  const declared = state ? `is declared ${STATE_WORDS[state]}` : 'has no declared state';
  if (state === 'spare-contact' && !entry?.contact) return `${declared}, but no contact is named`;
  if (state !== 'spare-contact' && entry?.contact) return `${declared}, yet holds a contact`;
  if ((state === 'empty' || !state) && entry?.plug) return `${declared}, yet holds a cavity plug`;
  return undefined;
}

/** A wired cavity needs no declaration. An unwired one is cleared and says so. */
function fixOf(c: CavityUse): Fix {
  const wired = c.ends.length > 0;
  const args = { connector: c.connector.connector.id, cavities: [c.cavity], state: wired ? null : 'empty' };
  const label = wired
    ? `Take back the declaration of ${cavityName(c)}`
    : `Clear ${cavityName(c)} and declare it empty by intent`;
  return { label, command: 'cavity.set-state', args };
}
