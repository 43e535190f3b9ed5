#!/usr/bin/env node
// What `npx tupwise` runs: the program as it was built last. Where it never was, a sentence says how it comes to be.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const program = new URL('../dist/node/tupwise.mjs', import.meta.url);

if (existsSync(program)) await import(program.href);
else {
  console.error(`Tupwise: the program is not built yet. Run npm start once in ${fileURLToPath(new URL('..', import.meta.url))}: it sets up whatever is missing. After that this command works.`);
  process.exitCode = 1;
}
