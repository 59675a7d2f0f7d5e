import { conductorFit } from '../derive/crimp-fit';
import { conductorsOf, crimpsOf, type Crimp } from '../derive/crimps';
import type { CavityUse } from '../derive/harness';
import { doubleCrimpFit } from '../derive/contact-fit';
import { crimpSpecFor, doubleCrimpSpecFor } from '../derive/crimp-spec';
import { tiny, type TinyDraft } from '../model/tiny';
import { wireSizeText } from '../model/wire-size';
import type { Report, Rule } from './rule';
import { partFact, partNeed } from './shared/evidence';
import { crimpNames, crimpRefs } from './shared/crimp-data';
import { shareCrimp } from './shared/example-share';

/**
 * Speaks of crimps whose contact states how any wire is crimped into it; a contact that states nothing is told once, by
 * `tooling`. A specification is whole when it names height and tool. Two wires in one crimp have a specification of their
 * own; whether they may share it at all is `double-crimp`. What die a tool has, and whether it is calibrated: `tool-ready`.
 */
export const crimpSpec: Rule<'cavity'> = {
  meta: {
    id: 'crimp-spec',
    revision: 2,
    severity: 'major',
    summary:
      'For each contact and wire there is a crimp specification with its height and a tool of that contact.',
    why: 'A crimp is proved for one contact, one wire and one tool; with another of the three it may be loose or cut strands, and looks the same.',
    source:
      'NASA LLIS-0465 (tool, positioner and setting for each connection type); common practice: height and tool in the specification',
    message: '{{wires}} at {{cavity}}: the specification names tool {{tool}}, {{contact}} takes {{tools}}',
    unknown:
      'How {{wires}} is crimped into {{contact}} at {{cavity}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check(cavity, report) {
    for (const crimp of crimpsOf(cavity))
      if (crimp.ends.length <= 2 && (crimp.part.crimps?.length ?? 0) > 0) checkCrimp(cavity, crimp, report);
  },
  examples: () => ({
    good: [
      { name: 'the contact states no crimps', project: tiny() },
      { name: 'height and tool for the size', project: tiny((t) => specify(t, {})) },
      {
        name: 'a pair with a specification of its own',
        project: tiny((t) => shared(t, { second: AWG26, heightMm: 1, tool: 'PRESS' })),
      },
      {
        name: 'one of that very wire before one for its size',
        project: tiny((t) => {
          specify(t, {});
          t.part('contact', 'C-SOCKET').crimps?.unshift({
            size: AWG22,
            wirePart: 'WIRE-22',
            heightMm: 0.88,
            tool: 'PRESS',
          });
        }),
      },
    ],
    bad: [
      {
        name: 'a pair by a tool that the contact does not take',
        project: tiny((t) => shared(t, { second: AWG26, heightMm: 1, tool: 'PLIERS' })),
        expect: ['X1:1'],
      },
      {
        name: 'a tool that the contact does not take',
        project: tiny((t) => specify(t, { tool: 'PLIERS' })),
        expect: ['X1:1', 'X1:2'],
      },
    ],
    unknown: [
      {
        name: 'two wires in one crimp, specified one by one only',
        project: tiny((t) => shared(t, undefined)),
        expect: ['X1:1'],
      },
      {
        name: 'a specification of another size only',
        project: tiny((t) => specify(t, { size: { system: 'awg', gauge: 24 } })),
        expect: ['X1:1', 'X1:2'],
      },
      {
        name: 'a specification without its height',
        project: tiny((t) => specify(t, { heightMm: undefined })),
        expect: ['X1:1', 'X1:2'],
      },
    ],
  }),
};

function checkCrimp(cavity: CavityUse, crimp: Crimp, report: Report): void {
  const { part } = crimp;
  const [wire, other] = crimp.ends.map((e) => e.wire);
  const conductors = conductorsOf(crimp);
  // No maker specifies what does not fit; `conductor-range` and `double-crimp` say so.
  if (!wire || !conductors || conductorFit(part, conductors).verdict === 'does-not-fit') return;
  if (other && doubleCrimpFit(part, conductors).verdict === 'does-not-fit') return;
  const [a, b] = conductors;
  if (!a) return;
  const size = conductors.map((c) => wireSizeText(c.size)).join(' with ');
  const spec = b
    ? doubleCrimpSpecFor(part, a.size, b.size)
    : crimpSpecFor(part, a.size, wire.part?.partNumber);
  const common = {
    at: crimpRefs(cavity, crimp),
    evidence: [
      ...partFact(part, `crimp height for ${size}`, spec?.heightMm, 'mm'),
      ...partFact(part, `crimp tool for ${size}`, spec?.tool),
      ...partFact(part, 'tools of the contact', part.tools?.join(', ')),
    ],
  };
  const names = crimpNames(cavity, crimp);
  if (spec?.tool !== undefined && part.tools && !part.tools.includes(spec.tool)) {
    const data = { ...names, tool: spec.tool, tools: part.tools.join(', ') || 'none' };
    return report.fail({ ...common, data });
  }
  const needs = !spec
    ? [partNeed(part, 'crimps', `crimp specification for ${size}`)]
    : [
        ...(spec.heightMm === undefined ? [partNeed(part, 'crimps', `crimp height for ${size}`)] : []),
        ...(spec.tool === undefined ? [partNeed(part, 'crimps', `crimp tool for ${size}`)] : []),
        ...(part.tools ? [] : [partNeed(part, 'tools', 'tools')]),
      ];
  if (needs.length > 0) report.cannotVerify({ ...common, data: names, needs });
  else report.pass();
}

const AWG22 = { system: 'awg' as const, gauge: 22 };

const AWG26 = { system: 'awg' as const, gauge: 26 };

/** W1 and a thinner wire share the crimp at X1:1, an approved pair; each alone is specified, and the pair as given. */
function shared(t: TinyDraft, pair: object | undefined): void {
  specify(t, {});
  shareCrimp(t);
  const contact = t.part('contact', 'C-SOCKET');
  contact.doubleCrimps = [[AWG22, AWG26]];
  contact.crimps?.push({ size: AWG26, heightMm: 0.8, tool: 'PRESS' });
  if (pair) contact.crimps?.push({ size: AWG22, ...pair });
}

/** The socket with a specification for 22 AWG, height 0.9 mm, by a press of its own. */
function specify(t: TinyDraft, change: object): void {
  const contact = t.part('contact', 'C-SOCKET');
  const spec = { size: AWG22, heightMm: 0.9, tool: 'PRESS', ...change };
  contact.crimps = [
    Object.fromEntries(Object.entries(spec).filter(([, v]) => v !== undefined)) as typeof spec,
  ];
  contact.tools = ['PRESS'];
}
