import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readLock, shippedPackages, type ShippedPackage } from './shipped-packages';

/**
 * What the program is made of, as CycloneDX 1.6 JSON. Without serial number and time, which the format allows to be left
 * out: the same lock file gives the same text.
 */
export function sbomText(root: string): string {
  const packages = shippedPackages(root);
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const lock = readLock(root);
  const electron = lock['node_modules/electron'];
  if (!electron) throw new Error('Electron is not in the lock file');
  const program = `pkg:npm/latchwork@${version}`;
  const runtime = `pkg:npm/electron@${electron.version}`;
  const refOf = new Map(packages.map((p) => [p.path, purlOf(p)]));
  const refs = (paths: readonly string[]): string[] => [...new Set(paths.flatMap((p) => refOf.get(p) ?? []))];
  const needed = new Set(packages.flatMap((p) => refs(p.needs)));
  const bom = {
    $schema: 'http://cyclonedx.org/schema/bom-1.6.schema.json',
    bomFormat: 'CycloneDX',
    specVersion: '1.6',
    version: 1,
    metadata: {
      component: { type: 'application', 'bom-ref': program, name: 'latchwork', version, licenses: licences('MIT') },
    },
    components: [
      { type: 'framework', 'bom-ref': runtime, name: 'electron', version: electron.version, purl: runtime, licenses: licences('MIT') },
      ...unique(packages).map((p) => ({
        type: 'library',
        'bom-ref': purlOf(p),
        ...nameOf(p),
        version: p.version,
        purl: purlOf(p),
        ...(p.licence === 'NOASSERTION' ? {} : { licenses: licences(p.licence) }),
        hashes: [{ alg: 'SHA-512', content: hexOf(p.integrity) }],
      })),
    ],
    dependencies: [
      { ref: program, dependsOn: [runtime, ...unique(packages).map(purlOf).filter((ref) => !needed.has(ref))] },
      { ref: runtime },
      ...unique(packages).map((p) => ({ ref: purlOf(p), dependsOn: refs(p.needs) })),
    ],
  }; // prettier-ignore
  return `${JSON.stringify(bom, null, 2)}\n`;
}

const unique = (packages: readonly ShippedPackage[]): readonly ShippedPackage[] => [
  ...new Map(packages.map((p) => [purlOf(p), p])).values(),
];

const purlOf = ({ name, version }: ShippedPackage): string =>
  `pkg:npm/${name.replace('@', '%40')}@${version}`;

function nameOf({ name }: ShippedPackage): { group?: string; name: string } {
  const [scope, rest] = name.split('/');
  return rest === undefined ? { name } : { group: scope as string, name: rest };
}

const licences = (licence: string): object[] =>
  / (OR|AND) /.test(licence) ? [{ expression: licence }] : [{ license: { id: licence } }];

const hexOf = (integrity: string): string => {
  const hash = integrity.split(' ').find((h) => h.startsWith('sha512-'));
  if (!hash) throw new Error(`no SHA-512 in ${integrity}`);
  return Buffer.from(hash.slice('sha512-'.length), 'base64').toString('hex');
};
