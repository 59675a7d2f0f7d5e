import { usesOf, type PartUse } from '@latchwork/core/exports/parts/uses-of';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { roundTo } from '@latchwork/core/model/length-text';
import type { Project } from '@latchwork/core/model/project';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';
import { openProject } from './shared/open-project';

/** Where a part stands in several projects: before it is replaced or bought for the last time. */
export const whereUsed: CliCommand = {
  name: 'where-used',
  summary: 'List every object of one or more projects that uses a part.',
  describe: (command) =>
    void command
      .argument('<part>', 'part number')
      .argument('<files...>', 'projects (.latchwork)')
      .option('--maker <name>', 'only the part of this maker')
      .option('--json', 'the same as JSON of a stable shape'),
  async run([part, files], options, io) {
    const partNumber = part as string;
    const maker = options['maker'] as string | undefined;
    const found: FoundIn[] = [];
    for (const file of files as string[]) {
      const project = await openProject(file);
      if (!project.ok) {
        io.err(`${project.problem}\n`);
        return COULD_NOT_RUN;
      }
      found.push(foundIn(file, project.value, partNumber, maker));
    }
    io.out(options['json'] ? `${JSON.stringify(jsonOf(partNumber, found), null, 2)}\n` : textOf(partNumber, found));
    return CLEAN;
  },
}; // prettier-ignore

interface FoundIn {
  readonly file: string;
  readonly project: Project;
  readonly uses: readonly PartUse[];
}

function foundIn(file: string, project: Project, partNumber: string, maker: string | undefined): FoundIn {
  const uses = usesOf(deriveHarness(project)).filter(
    (u) => u.part.partNumber === partNumber && (maker === undefined || u.part.maker === maker),
  );
  return { file, project, uses };
}

const jsonOf = (part: string, found: readonly FoundIn[]) => ({
  format: 'latchwork-where-used',
  formatVersion: 1,
  part,
  projects: found.map(({ file, project, uses }) => ({
    file,
    id: project.id,
    title: project.titleBlock.title,
    identificationNumber: project.titleBlock.identificationNumber,
    revision: project.revisions.at(-1)?.revision ?? null,
    buildQuantities: project.buildQuantities,
    perHarness: sumsOf(uses),
    uses: uses.map((u) => ({
      maker: u.part.maker,
      use: u.use,
      where: u.where,
      colour: u.colour,
      quantity: u.quantity,
      unit: u.unit,
      suppliedWith: u.supply,
      object: u.object,
      remark: u.remark,
    })),
  })),
});

/** Pieces and metres of one harness by what brings them; null where one of them is not known. */
function sumsOf(uses: readonly PartUse[]): { suppliedWith: string; unit: string; quantity: number | null }[] {
  const sums = new Map<string, { suppliedWith: string; unit: string; quantity: number | null }>();
  for (const { supply, unit, quantity } of uses) {
    if (supply === null || unit === null) continue;
    const key = `${supply} ${unit}`;
    const sum = sums.get(key) ?? { suppliedWith: supply, unit, quantity: 0 };
    sum.quantity = sum.quantity === null || quantity === null ? null : roundTo(sum.quantity + quantity, 3);
    sums.set(key, sum);
  }
  return [...sums.values()];
}

function textOf(part: string, found: readonly FoundIn[]): string {
  return found
    .map(({ file, project, uses }) => {
      const revision = project.revisions.at(-1)?.revision;
      const name = `${file}: ${project.titleBlock.title}${revision === undefined ? '' : `, revision ${revision}`}`;
      if (uses.length === 0) return `${name}\n  does not use ${part}\n`;
      const sums = sumsOf(uses).map(
        (s) => `${s.quantity ?? 'not known'} ${s.unit} for one harness, supplied with the ${s.suppliedWith}`,
      );
      const lines = uses.map((u) =>
        [
          `  ${u.where}`,
          u.use,
          u.colour,
          u.quantity === null ? null : `${u.quantity} ${u.unit ?? ''}`,
          u.remark,
        ]
          .filter((x) => x !== null)
          .join(', '),
      );
      return `${name}\n  ${sums.join('; ') || 'named only'}; builds of ${project.buildQuantities.join(', ')}\n${lines.join('\n')}\n`;
    })
    .join('');
}
