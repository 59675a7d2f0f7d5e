import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Bench, bench } from './bench';

let b: Bench;
beforeEach(async () => (b = await bench()));
afterEach(() => b.remove());

const TEXT = serialiseProject(tiny());

describe('rescue', () => {
  it('writes what can be read to a new file, tells what is lost, and leaves the damaged one alone', async () => {
    const broken = TEXT.slice(0, TEXT.indexOf('"designator":"W2"'));
    const file = await b.write('broken.latchwork', broken);
    const ran = await b.run('rescue', file, '--out', b.path('new.latchwork'));
    expect(ran).toMatchObject({ code: 0, err: expect.stringContaining('Look it through') });
    expect(ran.out).toContain('lost: segments: not in the file any more');
    const project = parseProject(await b.read('new.latchwork'));
    expect(project.ok && project.value.wires.map((w) => w.designator)).toEqual(['W1']);
    expect(await b.read('broken.latchwork')).toBe(broken);
  });

  it('reads around bytes that are no text', async () => {
    const bytes = Buffer.from(TEXT);
    bytes[TEXT.indexOf('"designator":"W2"')] = 0xff;
    const file = await b.write('broken.latchwork', bytes);
    expect((await b.run('rescue', file, '--out', b.path('new.latchwork'))).code).toBe(0);
    expect(await b.read('new.latchwork')).toContain('"designator":"W1"');
  });

  it('never writes over the damaged file', async () => {
    const file = await b.write('broken.latchwork', TEXT.slice(0, 900));
    expect((await b.run('rescue', file, '--out', file)).code).toBe(2);
    expect(await b.read('broken.latchwork')).toBe(TEXT.slice(0, 900));
  });

  it('writes nothing where there is nothing to rescue', async () => {
    const file = await b.write('x.latchwork', 'hello');
    const ran = await b.run('rescue', file, '--out', b.path('new.latchwork'));
    expect(ran).toMatchObject({ code: 2, err: expect.stringContaining('Nothing in this file') });
    expect(await b.files()).toEqual(['x.latchwork']);
  });
});
