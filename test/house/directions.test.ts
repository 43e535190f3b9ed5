import { describe, expect, test } from 'vitest';
import { cycleProblems, directionProblems } from './direction-problems.ts';
import { sourceFiles, type SourceFile } from './source-file.ts';

const sources = sourceFiles(['src'], ['.ts', '.svelte']);
const sample = (path: string, text: string): SourceFile => ({ path, text });

describe('imports go one way through the house', () => {
  test('in the sources', () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(directionProblems(sources)).toEqual([]);
  });

  test.each([
    ['entries import no judgement', 'src/entries/entry.ts', `import type { Grade } from '../knowledge/index.ts';`],
    ['entries import nothing computed', 'src/entries/codec/decode.ts', `import { picture } from '../../derived/index.ts';`],
    ['stores import entries only', 'src/stores/file-store.ts', `import type { Part } from '../hammer/index.ts';`],
    ['methods know no hammer', 'src/methods/elements/spring.ts', `export type { Part } from '../../hammer/index.ts';`],
    ['methods import downward', 'src/methods/numerics/root.ts', `import { beam } from '../elements/index.ts';`],
    ['inner rooms have an entrance', 'src/methods/elements/spring.ts', `import { root } from '../numerics/find-root.ts';`],
    ['rooms have an entrance', 'src/derived/stack/stack.ts', `import { PARTS } from '../../hammer/parts/upper-die.ts';`],
    ['derived rooms import upward', 'src/derived/stack/stack.ts', `import type { Duty } from '../duty/index.ts';`],
    ['derived rooms do not look at the whole', 'src/derived/duty/duty.ts', `import { picture } from '../picture.ts';`],
    ['late imports count', 'src/derived/stack/stack.ts', `const late = () => import('../../views/index.ts');`],
    ['types written in place count', 'src/entries/entry.ts', `type G = import('../knowledge/index.ts').Grade;`],
    ['the server does not start the command line', 'src/server/server.ts', `import '../cli/index.ts';`],
    ['the page does not open files', 'src/app/yard.ts', `import { openStore } from '../stores/index.ts';`],
    ['the page is read in its script element', 'src/app/yard.svelte', `<script lang="ts">\nimport { serve } from '../server/index.ts';\n</script><p>yard</p>`],
    ['the core has no Node', 'src/views/report.ts', `import { readFileSync } from 'node:fs';`],
    ['the core has no packages', 'src/derived/stack/stack.ts', `import { parse } from 'yaml';`],
    ['imports carry their ending', 'src/hammer/part.ts', `import { x } from './vocabulary';`],
    ['nobody lives outside the rooms', 'src/common/words.ts', ''],
    ['a new inner room takes its place in the order', 'src/derived/weather/rain.ts', ''],
  ])('a breach is seen: %s', (_rule, path, text) => {
    expect(directionProblems([sample(path, text)])).toHaveLength(1);
  });

  test('a breach is seen: a shared file opens a way back up', () => {
    const shared = sample('src/derived/shared.ts', `import type { Duty } from './duty/index.ts';`);
    const user = sample('src/derived/stack/stack.ts', `import type { Shared } from '../shared.ts';`);
    expect(directionProblems([shared])).toEqual([]);
    expect(directionProblems([shared, user])).toHaveLength(1);
  });

  test('what is allowed is not complained of', () => {
    expect(
      directionProblems([
        sample('src/derived/duty/duty.ts', `import { Known } from '../survey/index.ts'; import { Quantity } from '../../methods/quantity/index.ts'; import { own } from './own.ts';`),
        sample('src/cli/main.ts', `import { serve } from '../server/index.ts'; import { Command } from 'commander'; import fs from 'node:fs';`),
        sample('src/app/main.ts', `import { mount } from 'svelte'; import { elevation } from '../views/index.ts'; import { openBrowserStore } from '../stores/browser/index.ts'; import './yard.css';`),
      ]),
    ).toEqual([]);
  });
});

describe('imports go in no ring', () => {
  test('in the sources', () => expect(cycleProblems(sources)).toEqual([]));

  test('a ring is seen', () => {
    const ring = [
      sample('src/hammer/a.ts', `import './b.ts';`),
      sample('src/hammer/b.ts', `import type { C } from './c.ts';`),
      sample('src/hammer/c.ts', `export * from './a.ts';`),
    ];
    expect(cycleProblems(ring)).toEqual(['imports go in a ring: src/hammer/a.ts -> src/hammer/b.ts -> src/hammer/c.ts -> src/hammer/a.ts']);
    expect(cycleProblems(ring.slice(0, 2))).toEqual([]);
  });
});
