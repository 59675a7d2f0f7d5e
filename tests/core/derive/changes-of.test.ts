import { describe, expect, test } from 'vitest';
import { dispatchUnknown } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { changeHeading, fieldChangeText, valueText } from '@latchwork/core/derive/change-words';
import { changesOf } from '@latchwork/core/derive/changes-of';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';

const told = (before: Project, after: Project): string[] =>
  changesOf(before, after).flatMap((c) => [
    changeHeading(before, after, c),
    ...c.fields.map((f) => `  ${fieldChangeText(before, after, f)}`),
  ]);
const between = (change: (t: TinyDraft) => void) => told(tiny(), tiny(change));

test.each<[string, (t: TinyDraft) => void, string[]]>([
  ['nothing', () => {}, []],
  ['the title', (t) => void (t.project.titleBlock.title = 'New'), ['project changed', '  title block, title: Tiny example → New']],
  ['a number', (t) => void (t.wire('W1').ends[1].stripLengthMm = 4.5), ['wire W1 changed', expect.stringMatching(/^ {2}end 2, strip length \(mm\): .* → 4.5$/)]],
  ['something that was not there', (t) => void (t.wire('W1').note = 'mind'), ['wire W1 changed', '  note: none → mind']],
  ['the part of a contact', (t) => void (t.project.contacts[0]!.part = t.part('contact', 'C-PIN').id), ['contact C-PIN in X1:1 changed', '  part: C-SOCKET → C-PIN']],
  ['an object more', (t) => void t.project.nodes.push({ id: t.newId(), designator: 'N9', position: { x: 0, y: 0 } }), ['node N9 added']],
  ['an object less', (t) => void t.project.ties.splice(0), tiny().ties.map(() => expect.stringMatching(/^tie .* removed$/))],
  ['a limit', (t) => void (t.project.limitSet.limits[0]!.value = 7), ['project changed', expect.stringMatching(/limit set, limits strip-length-tolerance, value: .* → 7$/)]],
])('a changed project: %s', (_name, change, lines) => {
  expect(between(change)).toEqual(lines);
}); // prettier-ignore

test('an object that only moved in its list is the same object', () => {
  const p = tiny();
  expect(changesOf(p, { ...p, wires: [...p.wires].reverse() })).toEqual([]);
});

test('an id is told by the name of what it names', () => {
  const p = tiny();
  expect(valueText(p, p.wires[0]!.id)).toBe('W1');
  expect(valueText(p, [p.wires[0]!.id, 3, true])).toBe('W1, 3, yes');
});

describe('the fix of every rule that offers one', () => {
  const cases = RULES.flatMap((rule) =>
    rule.examples().bad.flatMap((example) => {
      const findings = checkHarness(deriveHarness(example.project), [rule]).findings;
      return findings.flatMap((f) => (f.fix ? [[`${rule.meta.id}: ${f.fix.label}`, example.project, f.fix] as const] : [])); // prettier-ignore
    }),
  );

  test('there are some', () => expect(cases.length).toBeGreaterThan(3));

  test.each(cases)('%s', (_name, project, fix) => {
    const after = dispatchUnknown(startHistory(project), { id: fix.command, args: fix.args }, { newId: countingIds(80_000), catalogue: [] }); // prettier-ignore
    if (!after.ok) return expect(after.problem.reason).not.toBe('');
    const lines = told(project, after.value.project);
    expect(lines.length).toBeGreaterThan(0);
    // Every id that is shown has found its name.
    expect(lines.join('\n')).not.toMatch(/[0-9a-f]{8}-[0-9a-f]{4}-/);
    return undefined;
  });
});
