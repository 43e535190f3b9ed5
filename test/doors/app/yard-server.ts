import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { serve } from '@hono/node-server';
import { putInventedYard } from '../../../src/server/invented-yard.ts';
import { serverApp } from '../../../src/server/index.ts';
import { openMemoryStore, START, type Store } from '../../../src/stores/index.ts';
import { HOME } from './built-page.ts';

/** A server of the invented yard that can die and come back at the same address, as a program does that was killed. */
export class YardServer {
  readonly store: Store = openMemoryStore();
  #server: ReturnType<typeof serve> | undefined;
  #port: number;

  /** @param port where it will live; 0: any that is free */
  constructor(readonly appFolder: string, port = 0) {
    this.#port = port;
  }

  static async start(appFolder: string): Promise<YardServer> {
    const yard = new YardServer(appFolder);
    await putInventedYard(yard.store, join(HOME, 'examples'));
    await yard.live();
    return yard;
  }

  get address(): string {
    return `http://localhost:${this.#port}`;
  }

  async live(): Promise<void> {
    const app = serverApp({ store: this.store, appFolder: this.appFolder, now: () => new Date().toISOString() });
    const server = await new Promise<ReturnType<typeof serve>>((resolve) => {
      const listening = serve({ fetch: app.fetch, hostname: '127.0.0.1', port: this.#port }, () => resolve(listening));
    });
    this.#server = server;
    this.#port = (server.address() as AddressInfo).port;
  }

  /** No answer from now on; open connections are cut. */
  async die(): Promise<void> {
    const server = this.#server;
    if (server === undefined) return;
    if ('closeAllConnections' in server) server.closeAllConnections();
    await new Promise<void>((resolve) => server.close(() => resolve()));
    this.#server = undefined;
  }

  /** The id of an invented hammer by its tag. */
  async hammer(tag: string): Promise<string> {
    const enrol = (await this.store.readSince(START)).entries.find((entry) => entry.kind === 'enrol' && (entry.body as { tag: string }).tag === tag);
    if (enrol === undefined) throw new Error(`no hammer with this tag is in the yard: ${tag}`);
    return enrol.hammer;
  }
}
