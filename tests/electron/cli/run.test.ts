import { describe, expect, it } from 'vitest';
import { type CliCommand } from '../../../electron/cli/command';
import { type ExitCode } from '../../../electron/cli/io';
import { run } from '../../../electron/cli/run';

const echo: CliCommand = {
  name: 'echo',
  summary: 'Says it again.',
  describe: (command) =>
    void command.argument('<word>').option('--code <number>', 'exit code', '0').option('--json'),
  run: async ([word], options, io) => {
    if (word === 'fault') throw new Error('a bug');
    io.out(`${JSON.stringify({ word, ...options })}\n`);
    return Number(options['code']) as ExitCode;
  },
};

async function line(...argv: string[]): Promise<{ code: ExitCode; out: string; err: string }> {
  let out = '';
  let err = '';
  const code = await run(
    argv,
    {
      root: '',
      today: () => '2026-03-01',
      out: (text) => void (out += text),
      err: (text) => void (err += text),
    },
    [echo],
  );
  return { code, out, err };
}

describe('the command line', () => {
  it('hands arguments and options to the command, and gives back its code', async () => {
    expect(await line('echo', 'hello', '--code', '1', '--json')).toEqual({
      code: 1,
      out: '{"word":"hello","code":"1","json":true}\n',
      err: '',
    });
  });

  it.each([[['--help']], [['-h']], [['echo', '--help']], [['--version']]])(
    'answers %j on stdout with 0',
    async (argv) => {
      const { code, out, err } = await line(...argv);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out).not.toBe('');
    },
  );

  it.each([
    [[]],
    [['nothing']],
    [['--nothing']],
    [['echo']],
    [['echo', 'a', 'b']],
    [['echo', 'a', '--nothing']],
    [['echo', 'a', '--code']],
  ])('ends %j with 2, its words on stderr', async (argv) => {
    const { code, out, err } = await line(...argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).not.toBe('');
  });

  it('ends a fault of its own with 2 and does not pretend', async () => {
    const { code, out, err } = await line('echo', 'fault');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('a bug');
  });
});
