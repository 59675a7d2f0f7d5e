import type { Board } from '../model/equipment';
import type { HeaderPart } from '../model/parts/header';
import type { Project } from '../model/project';
import { tiny } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { equipmentNeed, equipmentSource, fact, partFact, partNeed } from './shared/evidence';

/** Speaks of headers on boards. Peak and time are compared for reflow only: elsewhere the body stays out of the heat. */
export const solderProcess: Rule<'connector'> = {
  meta: {
    id: 'solder-process',
    revision: 1,
    severity: 'major',
    summary: 'A header is made for the solder process of its board, and for its reflow peak and time.',
    why: 'The body of a header that is not made for reflow softens in the oven: it warps, and its contacts lose their grip.',
    source: 'common practice; IPC/JEDEC J-STD-020 names peak and time as the limits of a part in reflow',
    message: '{{connector}} on {{board}}: {{problem}}',
    unknown:
      'Whether {{connector}} stands the soldering of {{board}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report) {
    const { connector, part, equipment: board } = resolved;
    if (part?.kind !== 'header' || board?.kind !== 'board') return;
    const names = { connector: connector.designator, board: board.designator };
    const common = {
      at: [connectorRef(resolved), { type: 'equipment' as const, id: board.id }],
      evidence: evidenceOf(part, board),
    };
    const problems = problemsOf(part, board);
    const needs = needsOf(part, board);
    if (problems.length > 0) report.fail({ ...common, data: { ...names, problem: problems.join('; ') } });
    else if (needs.length > 0) report.cannotVerify({ ...common, data: names, needs });
    else report.pass();
  },
  examples: () => ({
    good: [
      { name: 'a wave header in the wave', project: tiny() },
      { name: 'at the limit of peak and time', project: reflow({ peakC: 245, timeS: 30 }) },
    ],
    bad: [
      {
        name: 'a wave header in the oven',
        project: reflow({ peakC: 245, timeS: 30 }, { processes: ['wave', 'hand'] }),
        expect: ['X3'],
      },
      { name: 'the oven is too hot', project: reflow({ peakC: 250, timeS: 30 }), expect: ['X3'] },
      { name: 'the peak lasts too long', project: reflow({ peakC: 245, timeS: 40 }), expect: ['X3'] },
      { name: 'too hot, and the time is not stated', project: reflow({ peakC: 250 }), expect: ['X3'] },
    ],
    unknown: [
      {
        name: 'processes of the header not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').processes),
        expect: ['X3'],
      },
      {
        name: 'process of the board not stated',
        project: tiny((t) => {
          for (const e of t.project.equipment) if (e.kind === 'board') delete e.solderProcess;
        }),
        expect: ['X3'],
      },
      { name: 'peak not stated', project: reflow({ timeS: 30 }), expect: ['X3'] },
      {
        name: 'peak of the header not stated',
        project: reflow({ peakC: 245, timeS: 30 }, { processes: ['reflow'], reflowTimeMaxS: 30 }),
        expect: ['X3'],
      },
    ],
  }),
};

function problemsOf(header: HeaderPart, board: Board): string[] {
  const used = board.solderProcess;
  const problems: string[] = [];
  if (!used) return problems;
  if (header.processes && !header.processes.includes(used.process))
    problems.push(
      `${header.partNumber} is made for ${header.processes.join(', ') || 'no process'}, not for ${used.process}`,
    );
  if (used.process !== 'reflow') return problems;
  if (above(used.peakC, header.reflowPeakMaxC))
    problems.push(
      `the reflow peak is ${used.peakC} °C, ${header.partNumber} stands ${header.reflowPeakMaxC} °C`,
    );
  if (above(used.timeS, header.reflowTimeMaxS))
    problems.push(`the peak lasts ${used.timeS} s, ${header.partNumber} stands ${header.reflowTimeMaxS} s`);
  return problems;
}

const above = (value: number | undefined, max: number | undefined): boolean =>
  value !== undefined && max !== undefined && value > max;

function needsOf(header: HeaderPart, board: Board): Need[] {
  const used = board.solderProcess;
  const needs: Need[] = [];
  if (!header.processes) needs.push(partNeed(header, 'processes', 'solder processes'));
  if (!used) needs.push(equipmentNeed(board, 'solderProcess', 'solder process'));
  if (used?.process !== 'reflow') return needs;
  if (used.peakC === undefined) needs.push(equipmentNeed(board, 'solderProcess.peakC', 'reflow peak'));
  if (used.timeS === undefined) needs.push(equipmentNeed(board, 'solderProcess.timeS', 'time at the peak'));
  if (header.reflowPeakMaxC === undefined)
    needs.push(partNeed(header, 'reflowPeakMaxC', 'highest reflow peak'));
  if (header.reflowTimeMaxS === undefined)
    needs.push(partNeed(header, 'reflowTimeMaxS', 'longest time at the peak'));
  return needs;
}

function evidenceOf(header: HeaderPart, board: Board): Evidence[] {
  const used = board.solderProcess;
  const reflow = used?.process === 'reflow';
  return [
    ...fact('solder process', used?.process, equipmentSource(board)),
    ...partFact(header, 'solder processes', header.processes?.join(', ')),
    ...(reflow
      ? [
          ...fact('reflow peak', used.peakC, equipmentSource(board), '°C'),
          ...partFact(header, 'highest reflow peak', header.reflowPeakMaxC, '°C'),
          ...fact('time at the peak', used.timeS, equipmentSource(board), 's'),
          ...partFact(header, 'longest time at the peak', header.reflowTimeMaxS, 's'),
        ]
      : []),
  ];
}

/** X3 on a board that goes through the oven. */
function reflow(
  oven: { peakC?: number; timeS?: number },
  header: Partial<HeaderPart> = { processes: ['reflow'], reflowPeakMaxC: 245, reflowTimeMaxS: 30 },
): Project {
  return tiny((t) => {
    Object.assign(t.part('header', 'HEADER'), header);
    for (const e of t.project.equipment)
      if (e.kind === 'board') e.solderProcess = { process: 'reflow', ...oven };
  });
}
