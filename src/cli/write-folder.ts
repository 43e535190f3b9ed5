import { mkdir, mkdtemp, readdir, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { BadInput } from './door.ts';
import { reasonOf } from './read-text.ts';

/** Puts a file into the folder that is being made; `name` may lie in a folder below, with `/` between. */
export type Put = (name: string, content: string | Uint8Array | AsyncIterable<Uint8Array>) => Promise<void>;

/**
 * Makes a folder whole or not at all: everything is written beside it first, then it takes its name.
 * @param replace whether a folder that is there may be written over; it must be empty otherwise
 * @throws BadInput with a sentence where there is something already or the disk says no
 */
export async function writeFolder(folder: string, replace: boolean, fill: (put: Put) => Promise<void>): Promise<void> {
  const place = resolve(folder);
  await refuseFull(place, folder, replace);
  let aside: string | undefined;
  try {
    await mkdir(dirname(place), { recursive: true });
    aside = await mkdtemp(join(dirname(place), `.${basename(place)}-`));
    const home = aside;
    await fill(async (name, content) => {
      await mkdir(dirname(join(home, name)), { recursive: true });
      await writeFile(join(home, name), content);
    });
    await takeName(home, place);
  } catch (failure) {
    if (aside !== undefined) await rm(aside, { recursive: true, force: true }).catch(() => undefined);
    if (typeof (failure as { readonly code?: unknown }).code !== 'string') throw failure;
    throw new BadInput(`the folder cannot be written; ${reasonOf(failure)}: ${folder}`);
  }
}

async function refuseFull(place: string, folder: string, replace: boolean): Promise<void> {
  const there = await stat(place).catch(() => undefined);
  if (there === undefined) return;
  if (!there.isDirectory()) throw new BadInput(`something that is no folder has this name; another name: ${folder}`);
  if (!replace && (await readdir(place)).length > 0) throw new BadInput(`the folder is there and not empty; another name, or --replace to write over it: ${folder}`);
}

/** The old folder steps aside under a name of its own and goes only once the new one stands. */
async function takeName(fresh: string, place: string): Promise<void> {
  const old = `${fresh}.old`;
  const stood = await rename(place, old).then(() => true, (failure: { readonly code?: string }) => {
    if (failure.code === 'ENOENT') return false;
    throw failure;
  });
  try {
    await rename(fresh, place);
  } catch (failure) {
    if (stood) await rename(old, place);
    throw failure;
  }
  if (stood) await rm(old, { recursive: true, force: true });
}
