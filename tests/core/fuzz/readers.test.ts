import { afterAll, describe, expect, it } from 'vitest';
import { parseCatalogue } from '@latchwork/core/catalogue/parse-catalogue';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { importCatalogueCsv } from '@latchwork/core/import/catalogue-csv';
import { importHarness } from '@latchwork/core/import/import-harness';
import { importProblemText } from '@latchwork/core/import/import-problem';
import { parseProject } from '@latchwork/core/model/parse';
import { openProblemText } from '@latchwork/core/model/problem';
import { serialiseCatalogue, serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { utf8Text } from '../../../electron/services/read-whole';
import { createRandom } from '../../generate/harness/random';
import { SAMPLE_TEXT } from '../model/sample-file';
import { mutated } from './mutate';

/** Inputs in all; more with FUZZ_INPUTS=1000000 in the environment, others with FUZZ_SEED=2. */
const INPUTS = Number(process.env['FUZZ_INPUTS'] ?? 100_000);
const SEED = Number(process.env['FUZZ_SEED'] ?? 1);
const LONGEST_MS = 2_000;

const PARTS = tiny().parts;
const CONNECTORS =
  'designator,part,mates_with,equipment\nX1,H-SOCKET,X3,\nX2,H-PIN,X4,\nX3,HEADER,X1,A1\nX4,H-SOCKET,,A2\n';
const FROM_TO =
  'wire,signal,from,from_cavity,to,to_cavity,size,colour,length_mm,current_a,voltage_v,group,note\n' +
  'W1,SUP,X1,1,X2,1,22 AWG,RD,300,1,12,P1,\nW2,RTN,X1,2,X2,2,0.35 mm2,BK/WH,300,1,0,P1,"by the ""wall"""\nW3,,X1,3,S1,,22 AWG,BU,120,,,,\n';
const PARTS_CSV =
  'kind,maker,part,description,interface,body_form,contact_kind,mounting,ways,rows,pitch_mm,series,price,currency\n' +
  'housing,Acre,H1,"Housing, 6 ways",I3,plug,pin,panel,6,2,3,S1 S2,0.5,EUR\ncontact,Acre,C1,Contact,,,pin,,,,,S1,0.02,EUR\n';

/** Reads a text. `problem`: why not, in words; null where it was read. Throws where what was read does not hold. */
type Reader = (text: string) => string | null;

/** Name, share of the inputs, texts to injure, reader. */
const READERS: readonly (readonly [string, number, readonly string[], Reader])[] = [
  ['project', 0.16, [serialiseProject(tiny()), SAMPLE_TEXT], (text) => {
    const parsed = parseProject(text);
    if (!parsed.ok) return openProblemText(parsed.problem);
    checkHarness(deriveHarness(parsed.value), RULES);
    expect(parseProject(serialiseProject(parsed.value))).toEqual(parsed);
    return null;
  }],
  ['catalogue', 0.24, [serialiseCatalogue({ format: 'latchwork-catalogue', formatVersion: 1, name: 'Tiny', revision: '1', parts: PARTS })], (text) => {
    const parsed = parseCatalogue(text);
    return parsed.ok ? null : openProblemText(parsed.problem);
  }],
  ['catalogue table', 0.3, [PARTS_CSV, PARTS_CSV.replaceAll(',', ';').replaceAll('\n', '\r\n')], (text) => {
    const made = importCatalogueCsv('parts.csv', text);
    return made.ok ? null : made.problem.map(importProblemText).join('\n');
  }],
  ['from-to and connector tables', 0.3, [FROM_TO, CONNECTORS], (text) => {
    const fromTo = { file: 'wires.csv', text: text.includes('mates') ? FROM_TO : text };
    const connectors = { file: 'places.csv', text: text.includes('mates') ? text : CONNECTORS };
    const made = importHarness({ fromTo, connectors, catalogue: PARTS, title: 'Sample' });
    if (!made.ok) return made.problem.map(importProblemText).join('\n');
    checkHarness(deriveHarness(made.value), RULES);
    return null;
  }],
]; // prettier-ignore

const figures: string[] = [];

afterAll(() => console.log(`fuzzed readers, seed ${SEED}:\n${figures.join('\n')}`));

const prototypes = [Object.prototype, Array.prototype, String.prototype, Function.prototype];
const keysOfPrototypes = () => prototypes.map((p) => Object.getOwnPropertyNames(p).join(' '));

describe.each(READERS)('the reader of a %s', (name, share, texts, read) => {
  const inputs = Math.ceil(INPUTS * share);
  it(
    `takes ${inputs} injured inputs without a crash, a hang or a change to what objects are`,
    { timeout: 1_200_000 },
    () => {
      const random = createRandom(SEED);
      const before = keysOfPrototypes();
      const count = { read: 0, refused: 0, notText: 0, longestMs: 0 };
      for (let i = 0; i < inputs; i++) {
        const bytes = mutated(Buffer.from(texts[i % texts.length] as string), random);
        const text = utf8Text(bytes);
        if (text === null) {
          count.notText++;
          continue;
        }
        const start = performance.now();
        let problem: string | null;
        try {
          problem = read(text);
        } catch (error) {
          throw new Error(`input ${i} of ${name}: ${JSON.stringify(text)}`, { cause: error });
        }
        count.longestMs = Math.max(count.longestMs, performance.now() - start);
        if (problem === null) count.read++;
        else {
          count.refused++;
          if (problem.trim().length < 10) throw new Error(`input ${i}: refused without words: ${problem}`);
        }
      }
      figures.push(
        `${name}: ${inputs} inputs, ${count.read} read, ${count.refused} refused, ${count.notText} not text, longest ${count.longestMs.toFixed(0)} ms`,
      );
      expect(keysOfPrototypes()).toEqual(before);
      expect(count.longestMs).toBeLessThan(LONGEST_MS);
      expect(count.read, 'inputs that were read').toBeGreaterThan(0);
    },
  );
});
