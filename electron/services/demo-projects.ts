import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { PROJECT_ENDING } from './project-file';

/** Of a demo only its title block is looked at; the window parses the rest. */
const Head = z.object({
  titleBlock: z.object({ title: z.string(), supplementaryTitle: z.string().optional() }),
});

export interface DemoEntry {
  readonly demo: string;
  readonly title: string;
  readonly supplementaryTitle: string;
}

/** The demos that come with the program, by file name. One that cannot be read is left out. */
export async function listDemos(folder: string): Promise<DemoEntry[]> {
  const names = await readdir(folder).catch(() => []);
  const entries = await Promise.all(
    names
      .filter((name) => name.endsWith(PROJECT_ENDING))
      .sort()
      .map(async (name): Promise<DemoEntry | null> => {
        const text = await readFile(join(folder, name), 'utf8').catch(() => '');
        const head = headOf(text);
        if (!head) return null;
        return {
          demo: name.slice(0, -PROJECT_ENDING.length),
          title: head.titleBlock.title,
          supplementaryTitle: head.titleBlock.supplementaryTitle ?? '',
        };
      }),
  );
  return entries.filter((entry) => entry !== null);
}

function headOf(text: string): z.infer<typeof Head> | null {
  try {
    return Head.parse(JSON.parse(text));
  } catch {
    return null;
  }
}
