import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Spec, Validation } from '@cyclonedx/cyclonedx-library';
import { describe, expect, it } from 'vitest';
import { licencesText } from '../generate/shipped/licences';
import { sbomText } from '../generate/shipped/sbom';
import { readLock, shippedPackages } from '../generate/shipped/shipped-packages';

const root = fileURLToPath(new URL('../..', import.meta.url));
const packages = Object.entries(readLock(root)).filter(([path]) => path.includes('node_modules/')) as unknown as readonly [
  string,
  { readonly link?: boolean; readonly integrity?: string; readonly resolved?: string; readonly hasInstallScript?: boolean; readonly deprecated?: string },
][]; // prettier-ignore
const installed = packages.filter(([, p]) => !p.link);
const read = (path: string): string => readFileSync(join(root, path), 'utf8');

/** What may be bundled into a program that is given away; each asks for no more than its text beside it. */
const PERMISSIVE = new Set(['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'OFL-1.1']);

describe('the lock file', () => {
  it('holds a SHA-512 for every package', () => {
    expect(installed.filter(([, p]) => !p.integrity?.includes('sha512-')).map(([path]) => path)).toEqual([]);
  });

  it('takes packages from the registry only, and names no host', () => {
    expect(installed.filter(([, p]) => p.resolved !== undefined).map(([path]) => path)).toEqual([]);
  });

  it('holds no package that its makers gave up', () => {
    expect(installed.filter(([, p]) => p.deprecated).map(([path, p]) => `${path}: ${p.deprecated}`)).toEqual(
      [],
    );
  });

  it('lets only known packages run something at their installation', () => {
    expect(installed.filter(([, p]) => p.hasInstallScript).map(([path]) => path)).toEqual([
      'node_modules/electron-winstaller',
      'node_modules/esbuild',
    ]);
  });

  it.each(['package.json', 'core/package.json', 'renderer/package.json', 'electron/package.json'])(
    'is asked for exact versions by %s',
    (path) => {
      const { dependencies = {}, devDependencies = {} } = JSON.parse(read(path)) as Record<
        string,
        Record<string, string>
      >;
      const all = { ...dependencies, ...devDependencies };
      expect(Object.entries(all).filter(([, v]) => !/^(npm:\S+@)?\d+\.\d+\.\d+$/.test(v))).toEqual([]);
    },
  );
});

describe('what the program is made of', () => {
  it('may be given away', () => {
    expect(
      shippedPackages(root)
        .filter((p) => !PERMISSIVE.has(p.licence))
        .map((p) => `${p.name} ${p.licence}`),
    ).toEqual([]);
  });

  it('is told in a bill of materials that fits CycloneDX 1.6 and the lock file', async () => {
    const text = read('assets/sbom.cdx.json');
    expect(text).toBe(sbomText(root));
    expect(await new Validation.JsonStrictValidator(Spec.Version.v1dot6).validate(text)).toBeNull();
    const wrong = text.replace('"bomFormat"', '"bomForm"');
    expect(await new Validation.JsonStrictValidator(Spec.Version.v1dot6).validate(wrong)).not.toBeNull();
  });

  it('names for every dependency a component that is there', () => {
    const bom = JSON.parse(read('assets/sbom.cdx.json'));
    const refs = new Set(
      [bom.metadata.component, ...bom.components].map((c: { 'bom-ref': string }) => c['bom-ref']),
    );
    expect(refs.size).toBe(bom.components.length + 1);
    for (const { ref, dependsOn = [] } of bom.dependencies)
      expect([ref, ...dependsOn].filter((r: string) => !refs.has(r))).toEqual([]);
  });

  it('comes with the text of every licence', () => {
    const text = read('assets/third-party-licences.txt');
    expect(text).toBe(licencesText(root));
    for (const p of shippedPackages(root)) expect(text).toContain(`${p.name} ${p.version} (${p.licence})`);
  });
});
