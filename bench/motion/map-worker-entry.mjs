// A worker thread does not inherit the TypeScript loader, so it is registered here first.
import { register } from 'tsx/esm/api';

register();
await import('./map-worker.ts');
