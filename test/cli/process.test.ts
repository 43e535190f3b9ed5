import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { EXAMPLES } from './at-the-door.ts';

const HOME = join(EXAMPLES, '..');
const TSX = join(HOME, 'node_modules', 'tsx', 'dist', 'cli.mjs');

const spawned = (words: readonly string[], input = ''): { readonly status: number | null; readonly stdout: string; readonly stderr: string } =>
  spawnSync(process.execPath, [TSX, join(HOME, 'src', 'cli', 'main.ts'), ...words], { input, encoding: 'utf8', maxBuffer: 64e6 });

describe('the program as a process', () => {
  it('ends with the code of the verdict', () => {
    expect(spawned(['judge', join(EXAMPLES, 'kettlebrae-50-simply-good.yaml'), '--as-of', '2026-01-15']).status).toBe(0);
    expect(spawned(['judge', join(EXAMPLES, 'dunmarrow-90-cracked-leaf.yaml'), '--as-of', '2026-01-15']).status).toBe(30);
  });

  it('reads standard input, lists problems on standard error and ends with 2', () => {
    const heard = spawned(['judge', '-'], 'tupwise: 1\nhammer: {tag: x}\n');
    expect(heard.status).toBe(2);
    expect(heard.stdout).toBe('');
    expect(heard.stderr).toMatch(/-:2:9: hammer\.family: family is missing/);
  });

  it('shows the exit codes in its help', () => {
    const heard = spawned(['--help']);
    expect(heard.status).toBe(0);
    expect(heard.stdout).toMatch(/10 {2}fit within limits[\s\S]*20 {2}not known yet[\s\S]*30 {2}stand down/);
  });
});
