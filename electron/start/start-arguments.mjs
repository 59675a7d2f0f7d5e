/** The demo that a first start opens; the first of these that exists. */
const firstDemos = ['bench-lamp'];

const chooses = new Set(['--serve', '--browser', '--electron']);

/**
 * What is handed on to the shell: the words of the user, and a demo where they name nothing to open.
 * @param {readonly string[]} argv
 * @param {(demo: string) => boolean} exists
 * @returns {string[]}
 */
export function withFirstDemo(argv, exists) {
  const rest = argv.filter((word) => !chooses.has(word));
  const names = rest.some(
    (word) => word.endsWith('.latchwork') || word === '--demo' || word.startsWith('--demo='),
  );
  const demo = names ? undefined : firstDemos.find(exists);
  return demo ? [...rest, `--demo=${demo}`] : rest;
}
