import { InvalidArgumentError, Option } from 'commander';
import { z } from 'zod';
import type { Io } from '../../io';

/** `--date`: the day on which decisions on record are judged. The same day gives the same answer, whenever it is asked. */
export const dayOption = (): Option =>
  new Option('--date <day>', 'day on which decisions are judged, YYYY-MM-DD; today unless said').argParser(
    (text) => {
      if (!z.iso.date().safeParse(text).success)
        throw new InvalidArgumentError('It is not a day, YYYY-MM-DD.');
      return text;
    },
  );

export const dayOf = (options: Record<string, unknown>, io: Io): string =>
  (options['date'] as string | undefined) ?? io.today();
