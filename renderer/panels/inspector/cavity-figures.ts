import type { CavityUse, Harness } from '@latchwork/core/derive/harness';
import { supplyCurrents } from '@latchwork/core/derive/supply-currents';
import { workedFigure, openFigure, type WorkedFigure } from '@latchwork/core/derive/worked-figure';
import { contactAllowance } from '@latchwork/core/rules/shared/contact-allowance';

/** What the contact in a wired cavity may carry and what it carries, by the supply that asks most of it. */
export function cavityFigures(harness: Harness, cavity: CavityUse): readonly WorkedFigure[] {
  const use = harness.connectorById.get(cavity.connector.connector.id);
  if (!use || cavity.ends.length === 0) return [];
  const set = harness.project.limitSet;
  const wires = cavity.ends.map((e) => e.wire);
  const supplies = harness.supplies.filter((s) => s.wires.some((w) => wires.includes(w)));
  const [supply] = supplies;
  if (!supply) return [];
  const may = mayCarry(contactAllowance(supply, use, cavity, set));
  // Wires of one crimp meet in the contact: the most it can carry onward is the sum of what they bring.
  const carried = supplies.map((s) =>
    wires.reduce((sum, w) => sum + (supplyCurrents(s, set).ofWire(w)?.currentA ?? 0), 0),
  );
  const mostA = Math.max(...carried);
  return mostA > 0 ? [carries(mostA, wires.length, may.value), may] : [may];
}

function mayCarry(allowance: ReturnType<typeof contactAllowance>): WorkedFigure {
  const head = { key: 'allowance', label: 'May carry', unit: 'A' };
  const { least, bounds, needs } = allowance;
  if (!least)
    return openFigure(
      head,
      needs.map((n) => n.what),
    );
  const evidence = bounds.flatMap((b) => b.evidence);
  return workedFigure(
    head,
    least.currentA,
    {
      formula: 'I = smallest of the ratings that have a say',
      figures: evidence.map((e) => ({ name: e.label, value: e.value, unit: e.unit ?? '' })),
      sources: [...new Set(evidence.map((e) => e.source))].map((title) => ({ title, verified: true })),
      notes: needs.map((n) => `Not known: ${n.what}.`),
    },
    needs.length > 0 ? 'not complete' : undefined,
  );
}

const carries = (currentA: number, wires: number, mayA: number | undefined): WorkedFigure =>
  workedFigure(
    { key: 'current', label: 'Carries', unit: 'A' },
    currentA,
    {
      formula: 'I = sum of I of the wires',
      figures: [{ name: 'Wires in the cavity', value: wires, unit: '' }],
      sources: [{ title: 'currents of the supply, as at the wires', verified: true }],
      notes: ['See the wire for how its current was found.'],
    },
    undefined,
    mayA,
  );
