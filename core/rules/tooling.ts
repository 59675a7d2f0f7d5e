import { PART_KIND_NAMES, type Part } from '../model/parts/part';
import type { ContactPart } from '../model/parts/contact';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Fix } from './finding';
import { partRef } from './refs';
import type { Rule } from './rule';
import { boughtParts, toolsByNumber } from './shared/bought-parts';
import { addTool } from './shared/example-tool';
import { fact, partFact, partNeed } from './shared/evidence';

/**
 * Speaks once a series is built, of contacts that are bought: the record has crimp specifications, and one of the crimp tools
 * that it names is on the tool list, that is, has its record in the project. A tool for taking contacts out crimps none.
 * Whether each wire has its specification is for `crimp-spec`.
 */
export const tooling: Rule<'project'> = {
  meta: {
    id: 'tooling',
    revision: 1,
    severity: 'major',
    summary: 'For a series every contact says how it is crimped, and the project holds a crimp tool for it.',
    why: 'An applicator takes weeks to come and costs more than the first lot; without it the contacts are crimped with what lies about.',
    source:
      'NASA LLIS-0465 (tool and setting for each crimp); common practice: each contact has its tool in the shop or in the cost',
    message: 'For {{contact}} no crimp tool is on the tool list; it takes {{tools}}',
    unknown: 'Whether {{contact}} can be crimped as it was proved cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check({ project }, report, { isSeries }) {
    if (!isSeries) return;
    const have = toolsByNumber(project.parts);
    for (const part of boughtParts(project)) {
      if (part.kind !== 'contact') continue;
      const at = [partRef(part)];
      const named = toolsOf(part);
      const needs = [
        ...(named.length === 0 ? [partNeed(part, 'tools', 'crimp tools')] : []),
        ...(part.crimps?.length ? [] : [partNeed(part, 'crimps', 'crimp specifications')]),
      ];
      if (named.length === 0) {
        report.cannotVerify({ open: true, at, data: { contact: part.partNumber }, needs });
        continue;
      }
      const crimping = named.filter((n) => isCrimpTool(have.get(n)?.form));
      const proved = new Set((part.crimps ?? []).flatMap((c) => c.tool ?? []));
      if (crimping.some((n) => have.has(n))) {
        if (needs.length === 0) report.pass();
        else report.cannotVerify({ open: true, at, data: { contact: part.partNumber }, needs });
        continue;
      }
      report.fail({
        open: true,
        at,
        data: {
          contact: part.partNumber,
          tools: [...(proved.size > 0 ? proved : crimping)].join(' or ') || 'others',
        },
        evidence: [
          ...partFact(part, 'tools', named.join(', ')),
          ...fact(`${PART_KIND_NAMES.tool} records`, have.size, 'parts of the project'),
        ],
        fix: fixOf([...proved, ...crimping][0]),
      });
    }
  },
  examples: () => ({
    good: [
      { name: 'no tool, for one harness', project: tiny() },
      { name: 'a tool for each', project: tiny((t) => equipped(t, ['C-SOCKET', 'C-PIN'])) },
    ],
    bad: [
      {
        name: 'no tool for the pin',
        project: tiny((t) => equipped(t, ['C-SOCKET'])),
        catalogue: toolsOffered(),
        expect: ['C-PIN'],
      },
      {
        name: 'only a tool to take it out',
        project: tiny((t) => {
          equipped(t, ['C-SOCKET']);
          addTool(t, 'TAKE-OUT', 'extraction', ['C-PIN']);
        }),
        catalogue: toolsOffered(),
        expect: ['C-PIN'],
      },
    ],
    unknown: [
      {
        name: 'the record names no tools',
        project: tiny((t) => {
          equipped(t, ['C-SOCKET', 'C-PIN']);
          delete t.part('contact', 'C-PIN').tools;
          t.part('contact', 'C-PIN').crimps = [];
        }),
        expect: ['C-PIN'],
      },
      {
        name: 'the record does not say how it is crimped',
        project: tiny((t) => {
          equipped(t, ['C-SOCKET', 'C-PIN']);
          delete t.part('contact', 'C-PIN').crimps;
        }),
        expect: ['C-PIN'],
      },
    ],
  }),
};

/** The tools of the record and of its crimp specifications. */
const toolsOf = (part: ContactPart): readonly string[] => [
  ...new Set([...(part.tools ?? []), ...(part.crimps ?? []).flatMap((c) => c.tool ?? [])]),
];

const isCrimpTool = (form: string | undefined): boolean =>
  form === undefined || form === 'hand' || form === 'press';

/** The tool with which the crimp was proved, else the first that the record names; it has to be in a catalogue. */
const fixOf = (tool: string | undefined): Fix | undefined =>
  tool === undefined
    ? undefined
    : { label: `Put ${tool} on the tool list`, command: 'part.add', args: { partNumber: tool } };

/** A series; every contact says how it is crimped and names its hand tool, and the project has those for the contacts given. */
function equipped(t: TinyDraft, contacts: readonly string[]): void {
  t.project.buildQuantities = [100];
  for (const n of ['C-SOCKET', 'C-PIN']) {
    t.part('contact', n).tools = [`HAND-${n}`];
    t.part('contact', n).crimps = [{ size: { system: 'awg', gauge: 22 }, heightMm: 0.9 }];
  }
  for (const n of contacts) addTool(t, `HAND-${n}`, 'hand', []);
}

/** What a catalogue has that the project lacks, with ids that no example uses. */
const toolsOffered = (): readonly Part[] =>
  tiny((t) => {
    for (let used = 0; used < 10; used++) t.newId();
    addTool(t, 'HAND-C-PIN', 'hand', []);
  }).parts.filter((p) => p.kind === 'tool');
