import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { channels, type Channel } from '@latchwork/core/bridge/channels';
import { contract } from '@latchwork/core/bridge/contract';
import { serveCall } from '@latchwork/core/bridge/serve-call';
import { createHandlers, openServices } from '../../../electron/services/handlers';
import { tempFolder } from '../temp-folder';

const RUNS = Number(process.env['FUZZ_CALLS'] ?? 40);

/** Texts that could lead a host astray. */
const texts = fc.oneof(
  fc.string({ maxLength: 20 }),
  fc.constantFrom('../secret', '..\\secret', '/etc/passwd', 'C:\\secret', 'con', 'a/b', '.', '..', '~', 'x\0.latchwork', '%2e%2e/secret', 'secret.txt', '__proto__', '', 'lamp.latchwork', '\u202egnp.exe'), // prettier-ignore
);

interface JsonSchema {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly items?: JsonSchema | false;
  readonly prefixItems?: readonly JsonSchema[];
  readonly additionalProperties?: JsonSchema | boolean;
  readonly format?: string;
}

/** Values of the right shape, for a schema of the contract; of any shape where the schema is beyond this. */
function shaped(schema: JsonSchema): fc.Arbitrary<unknown> {
  if ('const' in schema) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  const options = schema.anyOf ?? schema.oneOf;
  if (options) return fc.oneof(...options.map(shaped));
  if (schema.properties) {
    const fields = Object.fromEntries(Object.entries(schema.properties).map(([k, s]) => [k, shaped(s)]));
    return fc.record(fields, { requiredKeys: [...(schema.required ?? [])] });
  }
  switch (schema.type) {
    case 'string':
      if (schema.format === 'uuid') return fc.uuid();
      if (schema.format === 'date') return fc.constant('2026-03-01');
      return texts;
    case 'boolean':
      return fc.boolean();
    case 'integer':
      return fc.integer({ min: 0, max: 9 });
    case 'number':
      return fc.double({ noNaN: true, noDefaultInfinity: true, min: 0, max: 1e6 });
    case 'null':
      return fc.constant(null);
    case 'array':
      if (schema.prefixItems) return fc.tuple(...schema.prefixItems.map(shaped));
      return fc.array(shaped(schema.items || {}), { maxLength: 3 });
    case 'object':
      return typeof schema.additionalProperties === 'object'
        ? fc.dictionary(texts, shaped(schema.additionalProperties), { maxKeys: 3 })
        : fc.constant({});
    default:
      return fc.jsonValue();
  }
}

const schemaOf = (channel: Channel): JsonSchema =>
  z.toJSONSchema(contract[channel].request, { unrepresentable: 'any', io: 'input' }) as JsonSchema;

function bench() {
  const folder = tempFolder();
  const places = {
    dataFolder: join(folder, 'data'),
    workFolder: join(folder, 'inside', 'work'),
    demosFolder: join(folder, 'demos'),
    cataloguesFolder: join(folder, 'catalogues'),
    fontsFolder: join(process.cwd(), 'assets', 'fonts'),
    windowFolder: join(folder, 'window'),
  };
  for (const f of [places.demosFolder, places.workFolder]) mkdirSync(f, { recursive: true });
  for (const f of [folder, join(folder, 'inside')]) writeFileSync(join(f, 'secret'), 'do not touch');
  const handlers = createHandlers(openServices(places), {
    host: 'browser', version: '1', dialogs: null, initial: null, openExternal: async () => ({ status: 'here' }),
  }); // prettier-ignore
  return { folder, handlers };
}

describe('messages of a window that cannot be trusted', () => {
  const untouched = (folder: string): void => {
    for (const f of [folder, join(folder, 'inside')]) expect(readFileSync(join(f, 'secret'), 'utf8')).toBe('do not touch'); // prettier-ignore
    expect(readdirSync(folder).filter((n) => !['data', 'demos', 'inside', 'secret'].includes(n))).toEqual([]);
    expect(readdirSync(join(folder, 'inside')).filter((n) => !['secret', 'work'].includes(n))).toEqual([]);
  };

  it.each(channels)('%s: of the right shape with anything in it', { timeout: 60_000 }, async (channel) => {
    const { folder, handlers } = bench();
    await fc.assert(
      fc.asyncProperty(shaped(schemaOf(channel)), async (request) => {
        const result = await serveCall(handlers, channel, request);
        const answer = JSON.stringify(result);
        expect(answer).not.toContain('do not touch');
        expect(answer).not.toContain('root:x:0');
      }),
      { numRuns: RUNS },
    );
    untouched(folder);
  });

  it.each(channels)('%s: of any shape', { timeout: 60_000 }, async (channel) => {
    const { folder, handlers } = bench();
    await fc.assert(
      fc.asyncProperty(fc.jsonValue(), async (request) => {
        const result = await serveCall(handlers, channel, request);
        const empty = JSON.stringify(request) === '{}';
        if (!contract[channel].request.safeParse(request).success) expect(result.ok).toBe(false);
        else if (!empty) expect(result.ok).toBe(true);
      }),
      { numRuns: RUNS },
    );
    untouched(folder);
  });
});
