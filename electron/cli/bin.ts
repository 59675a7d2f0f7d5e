#!/usr/bin/env node
import { join } from 'node:path';
import { z } from 'zod';
import { localDay } from '../services/local-day';
import { run } from './run';

z.config({ jitless: true });

void run(process.argv.slice(2), {
  root: join(__dirname, '..', '..'),
  today: () => localDay(new Date()),
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
}).then((code) => {
  process.exitCode = code;
});
