import { join } from 'node:path';
import { afterAll, describe, test } from 'vitest';
import { openEmbeddedStore, openFileStore, openMemoryStore, openPostgresStore } from '../../../src/stores/index.ts';
import { postgresPrograms, startPostgres, type PostgresServer } from './postgres-server.ts';
import { storeContract } from './store-contract.ts';
import { temporaryFolder } from './temporary-folder.ts';

const folder = temporaryFolder();
const inFolder = (name: string) => join(folder.path, name);
const blobPath = (name: string) => (sha256: string) => join(folder.path, name, 'blobs', sha256.slice(0, 2), sha256);

storeContract('memory', { fresh: async () => openMemoryStore() });
storeContract('file', {
  fresh: () => openFileStore(inFolder('file')),
  again: () => openFileStore(inFolder('file')),
  blobPath: blobPath('file'),
});
storeContract('embedded', {
  fresh: () => openEmbeddedStore(inFolder('embedded')),
  again: () => openEmbeddedStore(inFolder('embedded')),
  blobPath: blobPath('embedded'),
});

const programs = postgresPrograms();
if (programs) {
  let server: PostgresServer | undefined;
  let url = '';
  storeContract('PostgreSQL', {
    fresh: async () => {
      server = await startPostgres(programs);
      console.log(`on ${server.version}`);
      url = server.newDatabase();
      return openPostgresStore(url, inFolder('postgres/blobs'));
    },
    again: () => openPostgresStore(url, inFolder('postgres/blobs')),
    blobPath: blobPath('postgres'),
  });
  afterAll(async () => {
    await server?.stop();
  });
} else {
  const reason = 'no PostgreSQL server under /usr/lib/postgresql; apt-get install postgresql brings one';
  console.log(`PostgreSQL store: skipped, ${reason}`);
  describe('PostgreSQL store', () => {
    test.skip(`the whole contract (${reason})`);
  });
}

afterAll(() => folder.remove());
