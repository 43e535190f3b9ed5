import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { temporaryFolder } from '../stores/temporary-folder.ts';

const HOME = join(import.meta.dirname, '../../..');
const temporary = temporaryFolder();
afterAll(() => temporary.remove());

/** A small project with these scripts and a program of two lines. */
function smallProject(name: string, withPackages: boolean): string {
  const folder = join(temporary.path, name);
  for (const part of ['src/app', 'src/cli']) mkdirSync(join(folder, part), { recursive: true });
  for (const part of ['scripts', 'package.json', 'package-lock.json', 'tsconfig.json', 'vite.config.ts', 'vite.node.config.ts'])
    cpSync(join(HOME, part), join(folder, part), { recursive: true });
  if (withPackages) symlinkSync(join(HOME, 'node_modules'), join(folder, 'node_modules'));
  writeFileSync(join(folder, 'src/app/index.html'), '<!doctype html><title>small</title><p>one</p>');
  writeFileSync(join(folder, 'src/cli/main.ts'), `console.log('one' as string);`);
  return folder;
}

function prepare(folder: string, more: { env?: Record<string, string>; flags?: readonly string[] } = {}) {
  const { npm_execpath: _, ...env } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [...(more.flags ?? []), join(folder, 'scripts/prepare.mjs'), 'start'], {
    encoding: 'utf8',
    env: { ...env, ...more.env },
  });
  return { status, words: stdout + stderr };
}

describe('setting up', () => {
  const folder = smallProject('builds', true);
  const built = () => spawnSync(process.execPath, [join(folder, 'dist/node/tupwise.mjs')], { encoding: 'utf8' }).stdout;

  test('builds what was not built, says so, and the second time does nothing and says nothing', () => {
    const first = prepare(folder);
    expect(first.words).toContain('building the program');
    expect(first.status).toBe(0);
    expect(built()).toBe('one\n');
    expect(readFileSync(join(folder, 'dist/app/index.html'), 'utf8')).toContain('<p>one</p>');
    expect(prepare(folder)).toEqual({ status: 0, words: '' });
  });

  test('the command says how it comes to be where nothing is built, and runs what is', () => {
    const command = (home: string) => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [join(home, JSON.parse(readFileSync(join(home, 'package.json'), 'utf8')).bin.tupwise), '--help'], { encoding: 'utf8' });
      return { status, stdout, stderr };
    };
    const bare = smallProject('never-built', true);
    const { status, stdout, stderr } = command(bare);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(/^Tupwise: the program is not built yet\. Run npm start once in .*never-built/);
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(command(folder)).toEqual({ status: 0, stdout: 'one\n', stderr: '' });
  });

  test('builds again when a source has other content, not when it only has another date', () => {
    const main = join(folder, 'src/cli/main.ts');
    writeFileSync(main, readFileSync(main));
    expect(prepare(folder).words).toBe('');
    writeFileSync(main, `console.log('two' as string);`);
    expect(prepare(folder).words).toContain('the sources have changed');
    expect(built()).toBe('two\n');
  });

  test('a build that fails says why, fails, and leaves the last good one', () => {
    writeFileSync(join(folder, 'src/cli/main.ts'), `import './missing.ts';`);
    const { status, words } = prepare(folder);
    expect(status).toBe(1);
    expect(words).toContain('building the program failed.');
    expect(words).toContain('missing.ts');
    expect(words).not.toMatch(/^\s+at .*prepare-steps/m);
    expect(built()).toBe('two\n');
    writeFileSync(join(folder, 'src/cli/main.ts'), `console.log('three' as string);`);
    expect(prepare(folder).status).toBe(0);
    expect(built()).toBe('three\n');
  });

  test('two at once: the second waits, and both end well', async () => {
    const { spawn } = await import('node:child_process');
    writeFileSync(join(folder, 'src/cli/main.ts'), `console.log('four' as string);`);
    const both = [0, 1].map(
      () =>
        new Promise<{ code: number | null; words: string }>((resolve) => {
          const child = spawn(process.execPath, [join(folder, 'scripts/prepare.mjs'), 'start']);
          let words = '';
          child.stdout.on('data', (data: Buffer) => (words += data));
          child.on('close', (code) => resolve({ code, words }));
        }),
    );
    const ended = await Promise.all(both);
    expect(ended.map(({ code }) => code)).toEqual([0, 0]);
    expect(ended.filter(({ words }) => words.includes('building the program again'))).toHaveLength(1);
    expect(built()).toBe('four\n');
  });
});

describe('what cannot be done is said in a sentence', () => {
  let nobody = '';
  beforeAll(async () => {
    // A port that was free a moment ago: nobody answers there.
    const probe = createServer();
    await new Promise<void>((resolve) => probe.listen(0, '127.0.0.1', resolve));
    nobody = `http://127.0.0.1:${(probe.address() as { port: number }).port}/`;
    await new Promise((resolve) => probe.close(resolve));
  });

  test('no network', () => {
    const folder = smallProject('no-network', false);
    const { status, words } = prepare(folder, { env: { npm_config_registry: nobody, npm_config_cache: join(temporary.path, 'empty-cache') } });
    expect(status).toBe(1);
    expect(words).toMatch(/fetching \d+ packages from the npm registry/);
    expect(words).toContain('The package registry cannot be reached; connect to the network and try again.');
  });

  test('a Node that is too old', () => {
    const old = `data:text/javascript,Object.defineProperty(process, 'versions', { value: { ...process.versions, node: '18.19.0' } })`;
    const { status, words } = prepare(smallProject('old-node', true), { flags: ['--import', old] });
    expect(status).toBe(1);
    expect(words).toBe('Tupwise: Node 20.19 or newer is needed; this is 18.19.0.\n');
  });

  test.each([
    ['npm error code ENOSPC', 'The disk is full'],
    ['npm error code EAI_AGAIN', 'The package registry cannot be reached'],
    ['npm error code EINTEGRITY', 'A package arrived other than it was published'],
    [`Error: EACCES: permission denied, mkdir '/x'`, 'may not be written'],
    ['something new\nand odd', 'It said:\n  something new'],
  ])('%s', async (output, sentence) => {
    const { reasonIn } = (await import(join(HOME, 'scripts/plain-words.mjs') as string)) as { reasonIn(output: string): string };
    expect(reasonIn(output)).toContain(sentence);
  });
});
