import { z } from 'zod';
import type { Part } from '../model/parts/part';
import { command } from './command';
import { embedPart } from './shared/embed-part';

/**
 * Takes a record from a catalogue into the project by its number, of that maker where several bear it: a tool for the tool
 * list, or an alternate that is to be held against its part. Nothing is placed by it.
 */
export const partAdd = command({
  id: 'part.add',
  label: 'Take part record into the project',
  args: z.strictObject({ partNumber: z.string().min(1), maker: z.string().optional() }),
  refuse(project, { partNumber, maker }, { catalogue }) {
    if (named(project.parts, partNumber, maker))
      return `The project holds a record of ${partNumber} already.`;
    return named(catalogue, partNumber, maker) ? null : `No catalogue has a record of ${partNumber}.`;
  },
  run(draft, { partNumber, maker }, { catalogue }, project) {
    const part = named(catalogue, partNumber, maker);
    if (part) embedPart(draft, project, part);
  },
});

const named = (parts: readonly Part[], partNumber: string, maker: string | undefined): Part | undefined =>
  parts.find((p) => p.partNumber === partNumber && (maker === undefined || p.maker === maker));
