// A process that appends until it is killed, and says on its output what the store has promised to keep.
import { openEmbeddedStore, openFileStore } from '../../../src/stores/index.ts';

const [kind, folder, name] = process.argv.slice(2) as [string, string, string];
const store = await (kind === 'file' ? openFileStore(folder) : openEmbeddedStore(folder));
process.stdout.write('open\n');
for (let round = 0; ; round++) {
  const entries = [0, 1, 2].map((part) => ({
    id: `${name}-${String(round).padStart(6, '0')}-${part}`,
    hammer: 'hammer-1',
    at: '2026-03-01T10:00:00Z',
    by: 'a tester',
    kind: 'statement',
    body: { words: 'w'.repeat(200), round },
  }));
  await store.append(entries);
  process.stdout.write(`${round}\n`);
}
