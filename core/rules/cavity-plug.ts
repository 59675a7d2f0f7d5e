import type { CavityUse, ConnectorUse } from '../derive/harness';
import { band, bandText } from '../derive/fit-band';
import type { HousingPart } from '../model/parts/housing';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Need } from './finding';
import { cavityName, cavityRef, connectorRef, wireRef } from './refs';
import type { Report, Rule } from './rule';
import { cavityList } from './shared/cavity-list';
import { fact, partFact, partNeed } from './shared/evidence';

/**
 * Speaks of housings of the harness. In one that is not sealed it only asks that a cavity declared plugged names its
 * plug. Where it is not known whether the housing is sealed, only a cavity that is open makes a difference.
 */
export const cavityPlug: Rule<'connector'> = {
  meta: {
    id: 'cavity-plug',
    revision: 1,
    severity: 'major',
    summary: 'In a sealed housing every unwired cavity is plugged and every wire has a seal that fits it.',
    why: 'Water enters by one open cavity or one loose seal and creeps to all contacts of the connector.',
    source: 'AC 43.13-1B 11-234 (every cavity filled, unwired ones plugged); common practice for wire seals',
    message: '{{where}}: {{problem}}',
    unknown: 'Whether {{where}} is sealed cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check(use, report) {
    const { connector, part } = use.resolved;
    if (part?.kind !== 'housing' || connector.supply !== 'harness') return;
    const judged = use.cavities.filter((c) => c.exists && !part.keyPositions?.includes(c.cavity));
    const open = judged.filter(isOpen);
    const plugs = judged.filter((c) => reportPlug(c, part, report));
    if (part.sealed === undefined && open.length > 0) reportUnknown(use, part, open, report);
    if (!part.sealed) return;
    if (open.length > 0) reportOpen(use, part, open, report);
    const seals = judged.filter((c) => c.ends.length > 0 && reportSeals(c, part, report));
    if (open.length + plugs.length + seals.length === 0) report.pass();
  },
  examples: () => ({
    good: [
      { name: 'not sealed', project: tiny() },
      { name: 'sealed, plugged, with seals that fit', project: tiny((t) => seal(t)) },
      {
        name: 'not known whether sealed, and no cavity open',
        project: tiny((t) => {
          seal(t);
          delete t.part('housing', 'H-SOCKET').sealed;
        }),
      },
    ],
    bad: [
      {
        name: 'sealed, the cavity empty and the wires without seals',
        project: tiny((t) => void (t.part('housing', 'H-SOCKET').sealed = true)),
        expect: ['X1', 'X1:1', 'X1:2'],
      },
      {
        name: 'sealed, and the cavity left open',
        project: tiny((t) => {
          seal(t);
          t.connector('X1').cavities = [{ cavity: '3', state: 'empty' }];
        }),
        expect: ['X1'],
      },
      {
        name: 'the plug of another housing',
        project: tiny((t) => {
          seal(t);
          t.project.parts.push({ ...t.part('cavity-plug', 'PLUG'), id: t.newId(), partNumber: 'PLUG-L' });
          t.part('housing', 'H-SOCKET').cavityPlug = 'PLUG-L';
        }),
        expect: ['X1:3'],
      },
      {
        name: 'declared plugged, and no plug named',
        project: tiny((t) => void (t.connector('X1').cavities = [{ cavity: '3', state: 'plugged' }])),
        expect: ['X1:3'],
      },
      {
        name: 'the wire is too thick for the seal',
        project: tiny((t) => {
          seal(t);
          t.part('wire-seal', 'SEAL').odMaxMm = 1.19;
        }),
        expect: ['X1:1', 'X1:2'],
      },
      {
        name: 'two wires through one seal',
        project: tiny((t) => {
          seal(t);
          const [first, second] = [t.wire('W1').ends[0], t.wire('W2').ends[0]];
          if (first.at === 'cavity' && second.at === 'cavity') second.cavity = first.cavity;
          t.connector('X1').cavities.push({ cavity: '2', state: 'blocked' });
        }),
        expect: ['X1:1'],
      },
    ],
    unknown: [
      {
        name: 'a cavity is open and the record does not say whether the housing is sealed',
        project: tiny((t) => void delete t.part('housing', 'H-PIN').sealed),
        expect: ['X2'],
      },
      {
        name: 'range of the seal not stated',
        project: tiny((t) => {
          seal(t);
          delete t.part('wire-seal', 'SEAL').odMaxMm;
        }),
        expect: ['X1:1', 'X1:2'],
      },
      {
        name: 'diameter of the wire not stated',
        project: tiny((t) => {
          seal(t);
          delete t.part('wire', 'WIRE-22').odMm;
        }),
        expect: ['X1:1', 'X1:2'],
      },
    ],
  }),
};

/** A cavity that lets water in unless something more is done. */
const isOpen = (c: CavityUse): boolean =>
  c.ends.length === 0 && !c.entry?.plug && c.state !== 'blocked' && c.state !== 'plugged';

/** A plug is named where one is declared, and it is the one that the housing takes. True when it is not so. */
function reportPlug(c: CavityUse, part: HousingPart, report: Report): boolean {
  // What blocks a cavity is a key, and asked about by `key-plug`.
  const declared =
    c.ends.length === 0 && c.state !== 'blocked' && (c.state === 'plugged' || c.entry?.plug !== undefined);
  const wanted = part.cavityPlug;
  const found = c.plug?.partNumber;
  const unfit = found !== undefined && wanted !== undefined && found !== wanted;
  if (!declared || (c.plug?.kind === 'cavity-plug' && !unfit)) return false;
  report.fail({
    at: [cavityRef(c)],
    data: {
      where: cavityName(c),
      problem:
        found === undefined
          ? 'declared plugged, but no plug is named'
          : `${found} is not the plug of ${part.partNumber}`,
    },
    evidence: [
      ...partFact(part, 'cavity plug', wanted),
      ...fact('plug', found ?? 'none', `project, ${cavityName(c)}`),
    ],
    fix: plugFix(c.connector.connector.id, [c.cavity], cavityName(c), wanted),
  });
  return true;
}

function reportUnknown(
  use: ConnectorUse,
  part: HousingPart,
  open: readonly CavityUse[],
  report: Report,
): void {
  const { connector } = use.resolved;
  report.cannotVerify({
    at: [connectorRef(use)],
    data: { where: connector.designator },
    needs: [partNeed(part, 'sealed', 'sealing (yes or no)')],
    evidence: fact(
      'open cavities',
      cavityList(open.map((c) => c.cavity)),
      `project, ${connector.designator}`,
    ),
  });
}

function reportOpen(use: ConnectorUse, part: HousingPart, open: readonly CavityUse[], report: Report): void {
  const { connector } = use.resolved;
  const cavities = open.map((c) => c.cavity);
  report.fail({
    open: true,
    at: [connectorRef(use), ...open.map(cavityRef)],
    data: {
      where: connector.designator,
      problem: `sealed, and cavity ${cavityList(cavities)} is neither wired nor plugged`,
    },
    evidence: [
      ...partFact(part, 'sealed', 'yes'),
      ...partFact(part, 'cavity plug', part.cavityPlug),
      ...fact('open cavities', cavityList(cavities), `project, ${connector.designator}`),
    ],
    fix: plugFix(connector.id, cavities, `${connector.designator}:${cavityList(cavities)}`, part.cavityPlug),
  });
}

/** The command finds the plug by the number that the housing's record names. */
const plugFix = (connector: string, cavities: readonly string[], where: string, plug: string | undefined) =>
  plug === undefined
    ? undefined
    : {
        label: `Plug ${where} with ${plug}`,
        command: 'cavity.set-state',
        args: { connector, cavities, state: 'plugged' },
      };

/** One seal to a wire, and its range holds the diameter of the insulation. True when something was reported. */
function reportSeals(c: CavityUse, part: HousingPart, report: Report): boolean {
  const problems: string[] = [];
  const needs: Need[] = [];
  const evidence = partFact(part, 'sealed', 'yes');
  if (c.ends.length > 1) problems.push(`${c.ends.length} wires pass one seal`);
  for (const { wire, end } of c.ends) {
    const name = wire.wire.designator;
    const { seal } = end;
    if (!seal) {
      problems.push(`${name} has no seal`);
      continue;
    }
    const low = wire.conductor?.odMinMm ?? wire.conductor?.odMm;
    const high = wire.conductor?.odMaxMm ?? wire.conductor?.odMm;
    if (wire.part) evidence.push(...partFact(wire.part, `diameter of ${name}`, odText(low, high)));
    evidence.push(
      ...partFact(seal, 'smallest diameter', seal.odMinMm, 'mm'),
      ...partFact(seal, 'largest diameter', seal.odMaxMm, 'mm'),
    );
    const answer = band(low, high, seal.odMinMm, seal.odMaxMm);
    if (answer === 'outside') problems.push(`${name} is outside the range of seal ${seal.partNumber}`);
    if (answer !== 'open') continue;
    if (seal.odMinMm === undefined) needs.push(partNeed(seal, 'odMinMm', 'smallest diameter'));
    if (seal.odMaxMm === undefined) needs.push(partNeed(seal, 'odMaxMm', 'largest diameter'));
    if (low === undefined || high === undefined)
      needs.push(
        wire.part
          ? partNeed(wire.part, 'odMm', 'insulation diameter')
          : { what: `part of ${name}`, at: wireRef(wire), field: 'part' },
      );
  }
  const common = { at: [cavityRef(c), ...c.ends.map((e) => wireRef(e.wire))], evidence };
  const where = cavityName(c);
  if (problems.length > 0) report.fail({ ...common, data: { where, problem: problems.join('; ') } });
  else if (needs.length > 0) report.cannotVerify({ ...common, data: { where }, needs });
  return problems.length + needs.length > 0;
}

function odText(low: number | undefined, high: number | undefined): string | undefined {
  if (low === undefined && high === undefined) return undefined;
  return low === high ? `${low} mm` : bandText(low, high, 'mm');
}

/** X1 sealed as it should be. */
function seal(t: TinyDraft): void {
  const made = (partNumber: string) => ({
    id: t.newId(),
    maker: 'Example Works (invented)',
    partNumber,
    description: '',
  });
  const plug = { ...made('PLUG'), kind: 'cavity-plug' as const };
  const wireSeal = { ...made('SEAL'), kind: 'wire-seal' as const, odMinMm: 1, odMaxMm: 1.5 };
  t.project.parts.push(plug, wireSeal);
  Object.assign(t.part('housing', 'H-SOCKET'), { sealed: true, cavityPlug: 'PLUG' });
  t.connector('X1').cavities = [{ cavity: '3', state: 'plugged', plug: plug.id }];
  for (const name of ['W1', 'W2']) {
    const end = t.wire(name).ends[0];
    if (end.at === 'cavity') end.seal = wireSeal.id;
  }
}
