#!/usr/bin/env node
import { z } from 'zod';
import { run } from './run';

z.config({ jitless: true });

void run(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
}).then((code) => {
  process.exitCode = code;
});
