import { COLLECTIONS, type Project } from '@latchwork/core/model/project';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';
import { openProject } from './shared/open-project';

/** What a project file holds, without checking it. */
export const info: CliCommand = {
  name: 'info',
  summary: 'Show the title block of a project and what it holds.',
  describe: (command) =>
    void command
      .argument('<file>', 'project (.latchwork)')
      .option('--json', 'the same as JSON of a stable shape'),
  async run([file], options, io) {
    const project = await openProject(file as string);
    if (!project.ok) {
      io.err(`${project.problem}\n`);
      return COULD_NOT_RUN;
    }
    const facts = factsOf(project.value);
    io.out(options['json'] ? `${JSON.stringify(facts, null, 2)}\n` : textOf(facts));
    return CLEAN;
  },
};

type Facts = ReturnType<typeof factsOf>;

const factsOf = (p: Project) => ({
  format: 'latchwork-info',
  formatVersion: 1,
  projectFormatVersion: p.formatVersion,
  id: p.id,
  title: p.titleBlock.title,
  supplementaryTitle: p.titleBlock.supplementaryTitle ?? null,
  identificationNumber: p.titleBlock.identificationNumber,
  revision: p.revisions.at(-1)?.revision ?? null,
  status: p.revisions.at(-1)?.status ?? null,
  regulated: p.regulated,
  limitSet: { name: p.limitSet.name, revision: p.limitSet.revision },
  catalogues: cataloguesOf(p),
  counts: Object.fromEntries(COLLECTIONS.map((c) => [c, p[c].length])),
  notes: p.notes,
});

/** Catalogues that the embedded records come from, each once. */
const cataloguesOf = (p: Project): string[] =>
  [...new Set(p.parts.flatMap((part) => (part.catalogue ? [`${part.catalogue.name} ${part.catalogue.revision}`] : [])))].sort(); // prettier-ignore

function textOf(f: Facts): string {
  const counts = Object.entries(f.counts).filter(([, n]) => n > 0);
  return [
    `Title                  ${f.title}`,
    ...(f.supplementaryTitle ? [`Supplementary title    ${f.supplementaryTitle}`] : []),
    `Identification number  ${f.identificationNumber || 'not given'}`,
    `Revision               ${f.revision === null ? 'not given' : `${f.revision} (${f.status})`}`,
    `Limit set              ${f.limitSet.name}, revision ${f.limitSet.revision}`,
    `Regulated use          ${f.regulated ? 'yes' : 'no'}`,
    `File format            version ${f.projectFormatVersion}`,
    `Parts from             ${f.catalogues.join('; ') || 'no catalogue'}`,
    `Holds                  ${counts.map(([name, n]) => `${n} ${name}`).join(', ') || 'nothing yet'}`,
    ...f.notes.map((n) => `Note                   ${n}`),
    '',
  ].join('\n');
}
