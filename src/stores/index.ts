export * from './store.ts';
export * from './failures.ts';
export { openMemoryStore } from './memory-store.ts';
export { openFileStore, type FileStore } from './file-store.ts';
export { openEmbeddedStore } from './embedded-store.ts';
export { openPostgresStore } from './postgres-store.ts';
export { openStore, type StorePlace } from './open-store.ts';
