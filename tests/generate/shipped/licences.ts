import { shippedPackages } from './shipped-packages';

const LINE = '-'.repeat(78);

/** The licences of what is bundled into the program, each text once with the packages that it belongs to. */
export function licencesText(root: string): string {
  const byText = new Map<string, string[]>();
  for (const p of shippedPackages(root)) {
    const text = p.licenceText ?? `The package names this licence and brings no text: ${p.licence}`;
    byText.set(text, [...(byText.get(text) ?? []), `${p.name} ${p.version} (${p.licence})`]);
  }
  const parts = [...byText].map(([text, names]) => `${LINE}\n${names.join('\n')}\n\n${text}\n`);
  return `Latchwork contains the packages below, under the licences that follow them. The Electron runtime brings the\nlicences of Electron and Chromium in files of its own beside the program.\n\n${parts.join('\n')}`;
}
