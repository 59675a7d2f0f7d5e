import { must } from '../base/assert-never';
import { finishesAgree } from '../calc/finishes-agree';
import type { ConnectorUse, ResolvedMate } from '../derive/harness';
import type { ContactPart } from '../model/parts/contact';
import type { HeaderPart } from '../model/parts/header';
import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { cavityList } from './shared/cavity-list';
import { partFact, partNeed } from './shared/evidence';
import { mateSides } from './shared/mate-sides';

/**
 * Speaks of cavities in which both halves are known to have a contact: those of a header, and those that a housing is
 * loaded with. A housing that comes with the equipment and shows no contacts is outside its subject.
 */
export const matePlating: Rule<'mate'> = {
  meta: {
    id: 'mate-plating',
    revision: 1,
    severity: 'major',
    summary: 'Contacts that meet have the same finish, or both a noble one.',
    why:
      'Tin that rubs on gold is carried over and oxidises on a surface too hard to break the oxide: resistance climbs ' +
      'and the contact drops out after months.',
    source:
      'Chudnovsky, "Detrimental processes and aging of plating", CRC Press (tin on gold); other pairs common practice',
    message: 'Contacts of {{a}}:{{cavities}} ({{finishA}}) meet contacts of {{b}} ({{finishB}})',
    unknown: 'Whether the finishes of {{a}} and {{b}} agree cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check(mate, report) {
    const sides = mateSides(mate);
    // Halves of different shape do not meet at all; mate-interface tells why.
    if (!sides || (mate.map.source === 'unknown' && mate.map.needs.length === 0)) return;
    const meetings = meetingsOf(mate);
    if (meetings.length === 0) return;
    const parts = [...new Set(meetings.flatMap((m) => [m.a, m.b]))];
    const common = {
      at: sides.at,
      evidence: parts.flatMap((p) => partFact(p, `finish of ${p.partNumber}`, p.finish)),
    };
    const wrong = meetings.filter((m) => m.a.finish && m.b.finish && !finishesAgree(m.a.finish, m.b.finish));
    const bare = parts.filter((p) => !p.finish);
    if (mate.map.source === 'unknown' && !sameVerdict(meetings, wrong)) {
      const needs = [{ what: 'which cavities meet', at: must(sides.at[0], 'mate'), field: 'map' }];
      return report.cannotVerify({ ...common, data: sides.names, needs });
    }
    if (wrong.length > 0) {
      const finishes = (side: 'a' | 'b'): string => [...new Set(wrong.map((m) => m[side].finish))].join(', ');
      const cavities = cavityList([...new Set(wrong.map((m) => m.cavity))]);
      const data = { ...sides.names, cavities, finishA: finishes('a'), finishB: finishes('b') };
      return report.fail({ ...common, data });
    }
    if (bare.length === 0) return report.pass();
    const needs = bare.map((p) => partNeed(p, 'finish', 'finish'));
    report.cannotVerify({ ...common, data: sides.names, needs });
  },
  examples: () => ({
    good: [
      { name: 'tin on tin', project: tiny() },
      {
        name: 'gold on palladium-nickel',
        project: tiny((t) => {
          t.part('contact', 'C-SOCKET').finish = 'gold';
          t.part('header', 'HEADER').finish = 'palladium-nickel';
        }),
      },
      {
        name: 'the contacts of a housing that comes with the equipment are not shown',
        project: tiny((t) => void (t.part('contact', 'C-PIN').finish = 'gold')),
      },
      {
        name: 'the corner is not stated, but all contacts are alike',
        project: tiny((t) => void delete t.part('header', 'HEADER').cavityOneCorner),
      },
    ],
    bad: [
      {
        name: 'gold sockets on a tin header',
        project: tiny((t) => void (t.part('contact', 'C-SOCKET').finish = 'gold')),
        expect: ['X1–X3'],
      },
      {
        name: 'one gold contact among tin ones',
        project: tiny((t) => {
          const end = t.wire('W2').ends[0];
          const id = end.at === 'cavity' ? end.contact : undefined;
          const contact = must(t.project.contacts.find((c) => c.id === id), 'contact of W2'); // prettier-ignore
          contact.part = t.part('contact', 'C-SOCKET-AU').id;
        }),
        expect: ['X1–X3'],
      },
      {
        name: 'silver on tin, wire to wire',
        project: tiny((t) => {
          const mate = must(t.project.mates[0], 'mate');
          mate.b = t.connector('X2').id;
          t.project.mates = [mate];
          t.part('contact', 'C-PIN').finish = 'silver';
        }),
        expect: ['X1–X2'],
      },
    ],
    unknown: [
      {
        name: 'finish of the header not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').finish),
        expect: ['X1–X3'],
      },
      {
        name: 'finish of the contact not stated',
        project: tiny((t) => void delete t.part('contact', 'C-SOCKET').finish),
        expect: ['X1–X3'],
      },
    ],
  }),
};

type Plated = ContactPart | HeaderPart;
interface Meeting {
  /** Cavity of half a. */
  readonly cavity: string;
  readonly a: Plated;
  readonly b: Plated;
}

/** Contacts that meet. Where it is not known which do, every contact of one half with every one of the other. */
function meetingsOf({ a, b, map }: ResolvedMate): Meeting[] {
  const ofB = platedBy(b);
  return [...platedBy(a)].flatMap(([cavity, here]) => {
    if (map.source === 'unknown') return [...ofB.values()].map((there) => ({ cavity, a: here, b: there }));
    const there = ofB.get(map.fromA.get(cavity) ?? '');
    return there ? [{ cavity, a: here, b: there }] : [];
  });
}

/** What carries the finish in each cavity that has a contact. */
function platedBy(use: ConnectorUse): ReadonlyMap<string, Plated> {
  const { part } = use.resolved;
  const out = new Map<string, Plated>();
  for (const c of use.cavities) {
    if (!c.exists) continue;
    const loaded = c.ends.find((e) => e.end.contactPart)?.end.contactPart ?? c.spare;
    if (part?.kind === 'header' && !part.keyPositions?.includes(c.cavity)) out.set(c.cavity, part);
    else if (part?.kind === 'housing' && loaded) out.set(c.cavity, loaded);
  }
  return out;
}

/** All combinations are wrong, or none is: then the answer does not hang on which cavities meet. */
const sameVerdict = (all: readonly Meeting[], wrong: readonly Meeting[]): boolean =>
  wrong.length === 0 || wrong.length === all.length;
