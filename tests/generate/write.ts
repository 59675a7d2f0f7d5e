import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { products } from './products';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Writes every generated file of the repository: npx tsx tests/generate/write.ts */
for (const { path, text } of products()) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text());
  console.log(path);
}
