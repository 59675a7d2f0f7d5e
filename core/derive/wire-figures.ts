import { conductorArea } from '../calc/conductor-area';
import { conductorResistance } from '../calc/conductor-resistance';
import { INSULATIONS } from '../calc/data/insulation';
import { harnessMass } from '../calc/harness-mass';
import { pullForce } from '../calc/pull-force';
import { twistTakeUp } from '../calc/twist-take-up';
import { wireMass } from '../calc/wire-mass';
import type { Conductor } from '../model/parts/wire';
import { wireDiameterMm } from './bundle';
import { currentFigures } from './current-figures';
import type { Harness, ResolvedWire } from './harness';
import { isTwisted, twistOf } from './twist';
import { needsOf, openFigure, workedFigure, type WorkedFigure } from './worked-figure';

/** What can be computed about a wire in its harness, each with its working or with what it lacks. */
export function wireFigures(harness: Harness, wire: ResolvedWire): readonly WorkedFigure[] {
  const { conductor } = wire;
  if (!conductor) return [];
  return [
    resistance(wire, conductor),
    ...takeUp(harness, wire),
    ...mass(wire, conductor),
    ...currentFigures(harness, wire),
    ...pullOut(harness, wire, conductor),
  ];
}

export const areaOf = (conductor: Conductor) =>
  conductorArea.run({
    size: conductor.size,
    areaMm2: conductor.areaMm2,
    strands: conductor.stranding?.strands,
    strandDiameterMm: conductor.stranding?.strandDiameterMm,
  });

const isStranded = (conductor: Conductor): boolean =>
  conductor.stranding === undefined || conductor.stranding.strands > 1;

function resistance({ wire, length }: ResolvedWire, conductor: Conductor): WorkedFigure {
  const head = { key: 'resistance', label: 'Resistance', unit: 'ohm' };
  if (length.cutMm === undefined) return openFigure(head, [`length of ${wire.designator}`]);
  const area = areaOf(conductor);
  const result = conductorResistance.run({
    catalogueOhmPerKm: conductor.resistanceOhmPerKm,
    areaMm2: area.ok ? area.value.areaMm2 : undefined,
    stranded: isStranded(conductor),
    lengthMm: length.cutMm,
    temperatureC: 20,
  });
  if (!result.ok) return openFigure(head, needsOf(result.problem));
  const { ohm, basis, working } = result.value;
  if (basis === 'catalogue' || !area.ok) return workedFigure(head, ohm, working, `at 20 °C, ${basis}`);
  // A computed value stands on the area, so what is known of the area stands with it.
  const { sources, notes } = area.value.working;
  const both = { sources: [...working.sources, ...sources], notes: [...working.notes, ...notes] };
  return workedFigure(head, ohm, { ...working, ...both }, `at 20 °C, ${basis}`);
}

function takeUp(harness: Harness, { group, length }: ResolvedWire): WorkedFigure[] {
  if (!isTwisted(group)) return [];
  const head = { key: 'take-up', label: 'Twist take-up', unit: 'mm' };
  if (length.routeMm === undefined) return [openFigure(head, ['a route on the formboard'])];
  const conductors = group.wires.map((id) => harness.wireById.get(id)?.conductor);
  const twist = twistOf(group, conductors);
  if (twist.layMm === undefined || twist.pitchDiameterMm === undefined)
    return [openFigure(head, twist.needs)];
  const result = twistTakeUp.run({
    pitchDiameterMm: twist.pitchDiameterMm,
    layMm: twist.layMm,
    lengthMm: length.routeMm,
  });
  if (!result.ok) return [openFigure(head, needsOf(result.problem))];
  return [workedFigure(head, result.value.takeUpMm, result.value.working)];
}

/** Of the wire as cut: by its record, else estimated from copper and insulation. A core's mass is that of its cable. */
function mass(wire: ResolvedWire, conductor: Conductor): WorkedFigure[] {
  const { part, length } = wire;
  if (part?.kind !== 'wire') return [];
  const head = { key: 'mass', label: 'Mass', unit: 'g' };
  const name = part.partNumber;
  if (length.cutMm === undefined) return [openFigure(head, [`length of ${wire.wire.designator}`])];
  const item = { name, lengthMm: length.cutMm, quantity: 1 };
  if (part.massGPerM !== undefined) {
    const result = harnessMass.run({ items: [{ ...item, massGPerM: part.massGPerM }] });
    if (!result.ok) return [openFigure(head, needsOf(result.problem))];
    return [workedFigure(head, result.value.massG, result.value.working, 'catalogue')];
  }
  const area = areaOf(conductor);
  const diameterMm = wireDiameterMm(wire);
  const insulation = insulationOf(part.insulation);
  if (!area.ok || diameterMm === undefined || !insulation)
    return [openFigure(head, [`mass per metre of ${name}`])];
  const estimate = wireMass.run({
    areaMm2: area.value.areaMm2,
    stranded: isStranded(conductor),
    diameterMm,
    insulation,
  });
  if (!estimate.ok) return [openFigure(head, needsOf(estimate.problem))];
  const { massGPerM, working } = estimate.value;
  const figures = [
    ...working.figures,
    { name: 'Mass per metre', value: massGPerM, unit: 'g/m' },
    { name: 'Cut length', value: length.cutMm, unit: 'mm' },
  ];
  return [workedFigure(head, (massGPerM * length.cutMm) / 1000, { ...working, figures }, 'estimate')];
}

/** "PVC" and "ETFE, cross-linked" by the word they begin with. */
function insulationOf(text: string | undefined): keyof typeof INSULATIONS | undefined {
  const word = /^[a-z]+/i.exec(text ?? '')?.[0].toUpperCase();
  return (Object.keys(INSULATIONS) as (keyof typeof INSULATIONS)[]).find((k) => k === word);
}

/** What a crimp on this wire must hold by the table of the limit set; nothing where no end has a contact. */
function pullOut({ project }: Harness, wire: ResolvedWire, conductor: Conductor): WorkedFigure[] {
  if (!wire.from.contactPart && !wire.to.contactPart) return [];
  const head = { key: 'pull-force', label: 'Crimps hold at least', unit: 'N' };
  const named = project.limitSet.tables?.find((t) => t.id === 'pull-force')?.table;
  const table = pullForce.inputs.shape.table.safeParse(named);
  if (!table.success) return [openFigure(head, ['the table of pull-out forces in the limit set'])];
  const area = areaOf(conductor);
  const result = pullForce.run(
    pullForce.inputs.parse({
      table: table.data,
      size: conductor.size,
      areaMm2: area.ok ? area.value.areaMm2 : undefined,
    }),
  );
  if (!result.ok) return [openFigure(head, needsOf(result.problem))];
  const { minimumN, working, verified } = result.value;
  const notes = [...working.notes, 'By the table of the limit set; a crimp specification may ask for more.'];
  const mark = verified === 'yes' ? undefined : 'not verified';
  return [workedFigure(head, minimumN, { ...working, notes }, mark)];
}
