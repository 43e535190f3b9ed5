import type { Store } from '../stores/index.ts';

/** What the server needs from outside. */
export interface ServerSettings {
  readonly store: Store;
  /** Folder of the built page. */
  readonly appFolder: string;
  /** Version of the program, which the papers name; left out where nobody says it. */
  readonly version?: string;
  /** The present instant, ISO 8601; a test hands in a fixed one. */
  readonly now: () => string;
}
