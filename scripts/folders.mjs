import { fileURLToPath } from 'node:url';
import { join } from 'node:path';

/** The project's folder. */
export const HOME = fileURLToPath(new URL('..', import.meta.url));

/** What the scripts keep for themselves; may be deleted at any time. */
export const KEPT = join(HOME, '.tupwise');
