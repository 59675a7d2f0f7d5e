import { must } from '../base/assert-never';
import type { CavityUse, ConnectorUse, ResolvedMate } from '../derive/harness';
import { tiny, type TinyDraft } from '../model/tiny';
import type { ObjectRef } from './finding';
import { cavityName, cavityRef } from './refs';
import type { Rule } from './rule';
import { fact } from './shared/evidence';
import { mateSides } from './shared/mate-sides';

/**
 * Speaks of positions that are closed as a key: by the maker (key positions of the record), or blocked in the project. A
 * header has a pin in every position that is not closed; a housing has a contact where a wire ends or a spare sits.
 */
export const keyPlug: Rule<'mate'> = {
  meta: {
    id: 'key-plug',
    revision: 1,
    severity: 'major',
    summary: 'A position that is closed as a key names its plug, and no contact stands opposite.',
    why: 'A key plug against a pin keeps the halves from mating, or bends the pin; a position that is only said to be blocked keys nothing.',
    source: 'common practice: pin absent on the mate at a key position, and the plug in the parts list',
    message: '{{where}} is closed as a key: {{problem}}',
    unknown: 'What meets the key positions of {{a}} and {{b}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check(mate, report) {
    const sides = mateSides(mate);
    const closed = [...closedIn(mate.a), ...closedIn(mate.b)];
    if (!sides || closed.length === 0) return;
    const faults = closed.flatMap((c) => faultsOf(c, mate));
    for (const { at, where, problem, evidence } of faults)
      report.fail({ at, data: { where, problem }, evidence });
    if (faults.length > 0) return;
    if (mate.map.source === 'unknown')
      return report.cannotVerify({
        at: sides.at,
        data: sides.names,
        needs: [{ what: 'which cavities meet', at: must(sides.at[0], 'mate'), field: 'map' }],
      });
    report.pass();
  },
  examples: () => ({
    good: [
      { name: 'no key positions', project: tiny() },
      {
        name: 'closed by the makers of both halves',
        project: tiny((t) => {
          t.part('housing', 'H-SOCKET').keyPositions = ['3'];
          t.part('housing', 'H-PIN').keyPositions = ['3'];
          t.part('header', 'HEADER').keyPositions = ['3'];
        }),
      },
      {
        name: 'blocked with a plug, and nothing in the housing opposite',
        project: tiny((t) => block(t, 'X2', true)),
      },
    ],
    bad: [
      {
        name: 'a plug against a pin of the header',
        project: tiny((t) => block(t, 'X1', true)),
        expect: ['X1:3'],
      },
      { name: 'blocked, and no plug named', project: tiny((t) => block(t, 'X2', false)), expect: ['X2:3'] },
      {
        name: 'closed by the maker, and the header has a pin there',
        project: tiny((t) => {
          t.part('housing', 'H-SOCKET').keyPositions = ['3'];
          t.part('housing', 'H-PIN').keyPositions = ['3'];
        }),
        expect: ['X1:3'],
      },
    ],
    unknown: [
      {
        name: 'the corner is not stated, so it is not known what meets what',
        project: tiny((t) => {
          block(t, 'X2', true);
          delete t.part('housing', 'H-SOCKET').cavityOneCorner;
        }),
        expect: ['X2–X4'],
      },
    ],
  }),
};

interface Fault {
  readonly at: readonly ObjectRef[];
  readonly where: string;
  readonly problem: string;
  readonly evidence: ReturnType<typeof fact>;
}

const isByMaker = (c: CavityUse): boolean => c.connector.part?.keyPositions?.includes(c.cavity) ?? false;

const isClosed = (c: CavityUse): boolean => isByMaker(c) || c.state === 'blocked';

const closedIn = (use: ConnectorUse): readonly CavityUse[] =>
  use.cavities.filter((c) => c.exists && isClosed(c));

function faultsOf(c: CavityUse, mate: ResolvedMate): Fault[] {
  const { connector, part } = c.connector;
  const where = cavityName(c);
  const at = [cavityRef(c)];
  const evidence = fact('closed', isByMaker(c) ? 'by its maker' : 'blocked in the project', where);
  // A header is keyed by a pin that is left out; only a housing takes a plug.
  if (
    !isByMaker(c) &&
    part?.kind === 'housing' &&
    connector.supply === 'harness' &&
    c.plug?.kind !== 'cavity-plug'
  )
    return [{ at, where, problem: 'no key plug is named', evidence }];
  const opposite = mate.map.source === 'unknown' ? undefined : oppositeOf(c, mate);
  if (!opposite || isClosed(opposite) || !hasContact(opposite)) return [];
  const problem = `${cavityName(opposite)} opposite has a contact`;
  return [
    {
      at: [...at, cavityRef(opposite)],
      where,
      problem,
      evidence: [...evidence, ...fact('opposite', cavityName(opposite), 'map of the mate')],
    },
  ];
}

function oppositeOf(c: CavityUse, { a, b, map }: ResolvedMate): CavityUse | undefined {
  const isA = a.resolved === c.connector;
  const cavity = isA ? map.fromA.get(c.cavity) : map.fromB.get(c.cavity);
  return (isA ? b : a).cavities.find((o) => o.cavity === cavity && o.exists);
}

const hasContact = (c: CavityUse): boolean =>
  c.connector.part?.kind === 'header' || c.ends.length > 0 || c.spare !== undefined;

/** Blocks cavity 3 of a connector, with a key plug or without. */
function block(t: TinyDraft, designator: string, withPlug: boolean): void {
  const plug = t.newId();
  if (withPlug)
    t.project.parts.push({
      kind: 'cavity-plug', id: plug, maker: 'Example Works (invented)', partNumber: 'KEY-PLUG', description: 'Key plug',
    }); // prettier-ignore
  t.connector(designator).cavities = [{ cavity: '3', state: 'blocked', ...(withPlug ? { plug } : {}) }];
}
