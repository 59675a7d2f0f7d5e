import type { ContactPart } from '../model/parts/contact';
import { tiny } from '../model/tiny';
import { partRef } from './refs';
import type { Rule } from './rule';
import { boughtParts, toolsByNumber } from './shared/bought-parts';
import { partFact, partNeed } from './shared/evidence';
import { addTool } from './shared/example-tool';

/** Speaks of bought contacts for which the project holds a crimp tool. */
export const contactForm: Rule<'project'> = {
  meta: {
    id: 'contact-form',
    revision: 2,
    severity: 'major',
    summary:
      'A contact is ordered in the form that its crimp tool takes: on a strip for a press, loose for a hand tool.',
    why: 'Loose contacts cannot be fed to a press, and a reel of four thousand on a strip has to be cut apart for a hand tool.',
    source: 'common practice: press applicator takes strip, hand tool loose pieces or cut strip',
    message: '{{contact}} comes {{form}}, and the tools on the list ({{tools}}) take it {{wanted}}',
    unknown: 'Whether {{contact}} comes in the form for its tool cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check({ project }, report) {
    const list = toolsByNumber(project.parts);
    if (list.size === 0) return;
    for (const part of boughtParts(project)) {
      if (part.kind !== 'contact') continue;
      const tools = (part.tools ?? [])
        .flatMap((n) => list.get(n) ?? [])
        .filter((t) => t.form === undefined || t.form === 'hand' || t.form === 'press');
      if (tools.length === 0) continue;
      const offered = formsOf(part);
      const common = {
        at: [partRef(part), ...tools.map(partRef)],
        evidence: [
          ...partFact(part, 'form', part.form),
          ...partFact(part, 'forms of its offers', offered.length > 0 ? offered.join(', ') : undefined),
          ...tools.flatMap((t) => partFact(t, `form of ${t.partNumber}`, t.form)),
        ],
      };
      const comes = new Set([part.form, ...offered]);
      if (tools.some((t) => t.form && comes.has(takes(t.form)))) {
        report.pass();
        continue;
      }
      const needs = [
        ...(part.form === undefined && offered.length === 0
          ? [partNeed(part, 'form', 'form (strip or loose)')]
          : []),
        ...tools.flatMap((t) => (t.form === undefined ? [partNeed(t, 'form', 'form')] : [])),
      ];
      if (needs.length > 0) report.cannotVerify({ ...common, data: { contact: part.partNumber }, needs });
      else
        report.fail({
          ...common,
          data: {
            contact: part.partNumber,
            form: FORM_WORDS[part.form ?? offered[0] ?? 'loose'],
            tools: tools.map((t) => t.partNumber).join(', '),
            wanted: FORM_WORDS[comes.has('strip') ? 'loose' : 'strip'],
          },
          // A strip can be cut apart; it only takes time.
          ...(comes.has('strip') ? { severity: 'minor' as const } : {}),
        });
    }
  },
  examples: () => ({
    good: [
      { name: 'no tool on the list', project: tiny() },
      { name: 'strip for the press', project: tiny((t) => addTool(t, 'PRESS', 'press', ['C-PIN'])) },
      {
        name: 'strip for a hand tool, and a press is there too',
        project: tiny((t) => {
          addTool(t, 'PRESS', 'press', ['C-PIN']);
          addTool(t, 'HAND', 'hand', ['C-PIN']);
        }),
      },
      {
        name: 'strip for a hand tool, and an offer cuts it apart',
        project: tiny((t) => {
          addTool(t, 'HAND', 'hand', ['C-PIN']);
          t.part('contact', 'C-PIN').offers = [
            { supplier: 'Example Trading (invented)', currency: 'EUR', form: 'loose', priceBreaks: [] },
          ];
        }),
      },
    ],
    bad: [
      {
        name: 'loose for the press',
        project: tiny((t) => {
          addTool(t, 'PRESS', 'press', ['C-PIN']);
          t.part('contact', 'C-PIN').form = 'loose';
        }),
        expect: ['C-PIN'],
      },
      {
        name: 'strip for the hand',
        project: tiny((t) => addTool(t, 'HAND', 'hand', ['C-SOCKET'])),
        expect: ['C-SOCKET'],
      },
    ],
    unknown: [
      {
        name: 'form of the contact not stated',
        project: tiny((t) => {
          addTool(t, 'PRESS', 'press', ['C-PIN']);
          delete t.part('contact', 'C-PIN').form;
        }),
        expect: ['C-PIN'],
      },
      {
        name: 'form of the tool not stated',
        project: tiny((t) => addTool(t, 'TOOL', undefined, ['C-PIN'])),
        expect: ['C-PIN'],
      },
    ],
  }),
};

/** Forms that its offers name; one of them may differ from that of the record. */
const formsOf = (part: ContactPart): Form[] => [...new Set((part.offers ?? []).flatMap((o) => o.form ?? []))];

type Form = NonNullable<ContactPart['form']>;

const takes = (tool: string): Form => (tool === 'press' ? 'strip' : 'loose');

const FORM_WORDS: Readonly<Record<Form, string>> = { strip: 'on a strip', loose: 'loose' };
