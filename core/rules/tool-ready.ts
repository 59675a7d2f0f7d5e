import { partOfKind } from '../model/parts/part';
import type { Project } from '../model/project';
import { tiny, type TinyDraft } from '../model/tiny';
import { partRef } from './refs';
import type { Rule } from './rule';
import { boughtParts, toolsByNumber } from './shared/bought-parts';
import { fact, partFact, partNeed } from './shared/evidence';
import { addTool } from './shared/example-tool';

/**
 * Speaks of tools on the tool list with which a contact that is bought is crimped: that its calibration holds on the day of
 * the last revision, and that it has the die, in its revision, that the specification names. What is not stated is asked for
 * once a series is built. Whether there is a tool at all: `tooling`.
 */
export const toolReady: Rule<'project'> = {
  meta: {
    id: 'tool-ready',
    revision: 1,
    severity: 'major',
    summary: 'A crimp tool is calibrated, and has the die and revision that the crimp was proved with.',
    why: 'A worn tool and a die of another revision make crimps that look right and hold less; nobody sees it before the field does.',
    source:
      'NASA LLIS-0465 (tool, positioner and setting for each connection type); common practice: calibration and die revision on record',
    message: '{{tool}}, with which {{contact}} is crimped, {{reason}}',
    unknown: 'Whether {{tool}} is ready to crimp {{contact}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check({ project }, report, { isSeries }) {
    const tools = toolsByNumber(project.parts);
    if (tools.size === 0) return;
    const day = lastDay(project);
    for (const part of boughtParts(project)) {
      const contact = partOfKind(part, 'contact');
      for (const number of new Set((contact?.crimps ?? []).flatMap((c) => c.tool ?? []))) {
        const tool = tools.get(number);
        if (!tool || !contact) continue;
        const dies = [
          ...new Set((contact.crimps ?? []).flatMap((c) => (c.tool === number ? (c.die ?? []) : []))),
        ];
        const names = { tool: tool.partNumber, contact: contact.partNumber };
        const at = [partRef(tool), partRef(contact)];
        const evidence = [
          ...partFact(tool, 'calibrated until', tool.calibratedUntil),
          ...fact('day of the last revision', day, 'project, revisions'),
          ...partFact(contact, 'dies of the specifications', dies.join(', ') || undefined),
          ...partFact(tool, 'dies in hand', tool.dies?.join(', ')),
        ];
        const lacking = tool.dies ? dies.filter((d) => !tool.dies?.includes(d)) : [];
        const reasons = [
          ...(day !== undefined && tool.calibratedUntil !== undefined && tool.calibratedUntil < day
            ? [`was calibrated until ${tool.calibratedUntil}, the revision is of ${day}`]
            : []),
          ...(lacking.length > 0 ? [`has no die ${lacking.join(', ')}`] : []),
        ];
        if (reasons.length > 0) {
          report.fail({ at, data: { ...names, reason: reasons.join('; ') }, evidence });
          continue;
        }
        const needs = [
          ...(tool.calibratedUntil === undefined
            ? [partNeed(tool, 'calibratedUntil', 'last day of the calibration')]
            : []),
          ...(tool.calibratedUntil !== undefined && day === undefined
            ? [{ what: 'date of the last revision', field: 'revisions' }]
            : []),
          ...(dies.length > 0 && tool.dies === undefined ? [partNeed(tool, 'dies', 'dies in hand')] : []),
        ];
        if (needs.length === 0) report.pass();
        else if (isSeries) report.cannotVerify({ open: true, at, data: names, needs, evidence });
      }
    }
  },
  examples: () => ({
    good: [
      { name: 'no tool on the list', project: tiny() },
      { name: 'calibrated, with its die', project: tiny((t) => equipped(t, {})) },
      {
        name: 'calibrated until that very day',
        project: tiny((t) => equipped(t, { calibratedUntil: '2026-03-01' })),
      },
      {
        name: 'nothing stated, for one harness',
        project: tiny((t) => equipped(t, { calibratedUntil: undefined, dies: undefined })),
      },
    ],
    bad: [
      {
        name: 'its calibration has run out',
        project: tiny((t) => equipped(t, { calibratedUntil: '2026-02-28' })),
        expect: ['PRESS'],
      },
      {
        name: 'the die in another revision',
        project: tiny((t) => equipped(t, { dies: ['D-12 A'] })),
        expect: ['PRESS'],
      },
    ],
    unknown: [
      {
        name: 'a series, and nobody says until when it is calibrated',
        project: tiny((t) => {
          t.project.buildQuantities = [100];
          equipped(t, { calibratedUntil: undefined });
        }),
        expect: ['PRESS'],
      },
      {
        name: 'a series, and nobody says which dies are in hand',
        project: tiny((t) => {
          t.project.buildQuantities = [100];
          equipped(t, { dies: undefined });
        }),
        expect: ['PRESS'],
      },
    ],
  }),
};

/** The day of the last revision, else of issue. */
const lastDay = ({ revisions, titleBlock }: Project): string | undefined =>
  revisions.at(-1)?.date ?? titleBlock.dateOfIssue;

/** A press with a die for the pin, of 2027 unless said otherwise; the last revision is of 1 March 2026. */
function equipped(
  t: TinyDraft,
  change: { calibratedUntil?: string | undefined; dies?: string[] | undefined },
): void {
  addTool(t, 'PRESS', 'press', ['C-PIN']);
  const tool = t.part('tool', 'PRESS');
  const state = { calibratedUntil: '2027-01-31', dies: ['D-12 B'], ...change };
  if (state.calibratedUntil !== undefined) tool.calibratedUntil = state.calibratedUntil;
  if (state.dies !== undefined) tool.dies = state.dies;
  t.part('contact', 'C-PIN').crimps = [
    { size: { system: 'awg', gauge: 22 }, heightMm: 0.9, tool: 'PRESS', die: 'D-12 B' },
  ];
  for (const r of t.project.revisions) r.date = '2026-03-01';
  t.project.titleBlock.dateOfIssue = '2026-03-01';
}
