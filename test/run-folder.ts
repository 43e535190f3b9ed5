import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** What is dear to make and never changed lies here, for all test files of one run. */
    readonly runFolder: string;
  }
}

/** Gives the run a folder of its own, and clears it away behind it. */
export default function runFolder(project: TestProject): () => void {
  const path = mkdtempSync(join(tmpdir(), 'tupwise-run-'));
  chmodSync(path, 0o755);
  project.provide('runFolder', path);
  return () => rmSync(path, { recursive: true, force: true });
}
