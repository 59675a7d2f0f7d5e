import fc from 'fast-check';
import { produce } from 'immer';
import { describe, expect, it } from 'vitest';
import { parseProject } from '@latchwork/core/model/parse';
import { COLLECTIONS, Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { countingIds } from '@latchwork/core/model/ids';
import { newProject } from '@latchwork/core/model/new-project';
import { SAMPLE_TEXT, sampleProject } from './sample-file';

/** The same value with the keys of every object the other way round. */
function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([k, v]) => [k, reversed(v)]),
  );
}

describe('the text of a project', () => {
  it('is the same bytes after opening and saving', () => {
    expect(serialiseProject(sampleProject())).toBe(SAMPLE_TEXT);
  });

  it('does not depend on the order in which fields were set', () => {
    expect(serialiseProject(reversed(sampleProject()) as Project)).toBe(SAMPLE_TEXT);
  });

  it('starts with format and version, so that any program can tell what it is', () => {
    expect(SAMPLE_TEXT.split('\n').slice(0, 3)).toEqual([
      '{',
      '  "format": "latchwork-project",',
      '  "formatVersion": 2,',
    ]);
  });

  it('ends with one line feed and has no other line ends', () => {
    expect(SAMPLE_TEXT.endsWith('}\n')).toBe(true);
    expect(SAMPLE_TEXT.endsWith('\n\n')).toBe(false);
    expect(SAMPLE_TEXT).not.toContain('\r');
  });

  it('has one line per object, so that a change of one wire is a change of one line', () => {
    const before = SAMPLE_TEXT.split('\n');
    const after = serialiseProject(
      produce(sampleProject(), (p) => {
        p.wires[1]!.lengthMm = 777;
      }),
    ).split('\n');
    expect(after).toHaveLength(before.length);
    expect(after.filter((line, i) => line !== before[i])).toHaveLength(1);
  });

  it('lists every collection, empty ones too', () => {
    const id = countingIds();
    const text = serialiseProject(newProject({ id: id(), revisionId: id() }));
    for (const name of COLLECTIONS) expect(text).toContain(`"${name}": []`);
  });

  it('refuses to write what could not be read back', () => {
    const wrong = { ...sampleProject(), shoeSize: 42 };
    expect(() => serialiseProject(wrong)).toThrow(/shoeSize/);
  });
});

const text = fc.oneof(fc.string({ minLength: 1 }), fc.string({ unit: 'binary', minLength: 1 }));
const size = fc.double({ min: 1e-6, max: 1e9, noNaN: true });

/** Projects with odd texts and numbers in the fields that people fill in. */
const projects = fc
  .record({
    title: text,
    notes: fc.array(text, { maxLength: 4 }),
    designators: fc.array(text, { minLength: 4, maxLength: 4 }),
    position: fc.record({
      x: fc.double({ noNaN: true, noDefaultInfinity: true }),
      y: fc.double({ noNaN: true, noDefaultInfinity: true }),
    }),
    lengths: fc.array(fc.option(size, { nil: undefined }), { minLength: 2, maxLength: 2 }),
    wireNote: fc.option(text, { nil: undefined }),
    keep: fc.subarray(['groups', 'labels', 'decisions', 'ties', 'fuses'] as const),
  })
  .map((f) =>
    produce(sampleProject(), (p) => {
      p.titleBlock.title = f.title;
      p.notes = f.notes;
      p.connectors.forEach((c, i) => {
        c.designator = f.designators[i]!;
        c.position = f.position;
      });
      p.wires.forEach((w, i) => {
        w.designator = f.designators[i + 2]!;
        w.lengthMm = f.lengths[i]!;
        w.note = f.wireNote!;
      });
      for (const name of ['groups', 'labels', 'decisions', 'ties', 'fuses'] as const)
        if (!f.keep.includes(name)) p[name] = [];
    }),
  );

describe('any project', () => {
  it('comes back equal, and its text does not change by saving again', () => {
    fc.assert(
      fc.property(projects, (project) => {
        const written = serialiseProject(project);
        const read = parseProject(written);
        expect(read.ok).toBe(true);
        if (!read.ok) return;
        expect(JSON.stringify(read.value)).toBe(JSON.stringify(Project.parse(project)));
        expect(serialiseProject(read.value)).toBe(written);
      }),
      { numRuns: 60 },
    );
  });

  it('that is cut short is never taken for a whole one', () => {
    const whole = serialiseProject(tiny());
    fc.assert(
      fc.property(fc.integer({ min: 0, max: whole.length - 3 }), (n) => {
        const p = parseProject(whole.slice(0, n));
        expect(p.ok).toBe(false);
        if (!p.ok) expect(p.problem.code).toBe('not-json');
      }),
      { numRuns: 100 },
    );
  });

  it('with one character changed opens as a project or as a named problem, never as an error', () => {
    fc.assert(
      fc.property(fc.nat(SAMPLE_TEXT.length - 1), fc.string({ maxLength: 2 }), (at, put) => {
        const p = parseProject(SAMPLE_TEXT.slice(0, at) + put + SAMPLE_TEXT.slice(at + 1));
        if (!p.ok)
          expect(['not-json', 'not-ours', 'too-new', 'bad-shape', 'broken-reference']).toContain(
            p.problem.code,
          );
      }),
      { numRuns: 300 },
    );
  });
});
