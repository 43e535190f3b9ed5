import type { AddressInfo } from 'node:net';
import { serve } from '@hono/node-server';
import { openStore } from '../stores/index.ts';
import { putInventedYard } from './invented-yard.ts';
import { serverApp } from './server-app.ts';

export interface StartSettings {
  /** Where the yard lives. */
  readonly folder: string;
  readonly databaseUrl?: string | undefined;
  readonly port: number;
  readonly appFolder: string;
  /** Version of the program. */
  readonly version?: string;
  readonly examplesFolder: string;
  readonly say: (words: string) => void;
}

export interface RunningServer {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Opens the yard and listens on the loopback address only. */
export async function startServer(settings: StartSettings): Promise<RunningServer> {
  settings.say(`opening the yard in ${settings.folder}`);
  const store = await openStore({ folder: settings.folder, databaseUrl: settings.databaseUrl });
  const put = await putInventedYard(store, settings.examplesFolder);
  if (put > 0) settings.say(`the yard was empty: ${put} invented hammers were put in`);
  const app = serverApp({ store, appFolder: settings.appFolder, ...(settings.version === undefined ? {} : { version: settings.version }), now: endOfToday });
  try {
    const server = await new Promise<ReturnType<typeof serve>>((resolve, reject) => {
      const listening = serve({ fetch: app.fetch, hostname: '127.0.0.1', port: settings.port }, () => resolve(listening));
      listening.once('error', reject);
    });
    const { port } = server.address() as AddressInfo;
    return {
      address: `http://localhost:${port}/`,
      close: async () => {
        await new Promise<void>((resolve) => {
          server.close(() => resolve());
          // A browser keeps its connections open for later; waiting for them would keep the folder locked.
          if ('closeAllConnections' in server) server.closeAllConnections();
        });
        await store.close();
      },
    };
  } catch (failure) {
    await store.close();
    throw failure;
  }
}

/** A visit entered without an hour counts as noon, so today counts to its end. */
const endOfToday = (): string => `${new Date().toISOString().slice(0, 10)}T23:59:59Z`;
