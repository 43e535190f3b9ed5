import { rename, rm, writeFile } from 'node:fs/promises';
import { fontFace, reportHtml, reportPdfParts, type Paper, type Photographs } from '../print/index.ts';
import type { ReportTree } from '../views/index.ts';
import { BadInput, type Door } from './door.ts';
import { reasonOf } from './read-text.ts';
import { writeText } from './write-text.ts';

/**
 * Writes a sheet as PDF where the file's name ends so, else as one HTML page; whole or not at all. A PDF goes to the disk piece by
 * piece, so that a report with many photographs is never held whole.
 * @param path standard output where it is left out
 * @throws BadInput with a sentence where the file cannot be written
 */
export async function writePaper(path: string | undefined, tree: ReportTree, paper: Paper, door: Door, photographs?: Photographs): Promise<void> {
  if (path === undefined || !/\.pdf$/iu.test(path)) {
    await writeText(path, reportHtml(tree, { fontFace: await fontFace() }), door);
    return;
  }
  await writeBytes(path, reportPdfParts(tree, { paper, ...(photographs === undefined ? {} : { photographs }) }), door);
}

/** Writes bytes to a file, whole or not at all, piece by piece where they come so. @throws BadInput with a sentence where the file cannot be written */
export async function writeBytes(path: string, bytes: Uint8Array | AsyncIterable<Uint8Array>, door: Door): Promise<void> {
  const aside = `${path}.${process.pid}.part`;
  try {
    await writeFile(aside, bytes);
    await rename(aside, path);
  } catch (failure) {
    await rm(aside, { force: true }).catch(() => undefined);
    if (typeof (failure as { readonly code?: unknown }).code !== 'string') throw failure;
    throw new BadInput(`the file cannot be written; ${reasonOf(failure)}: ${path}`);
  }
  door.err(`written: ${path}\n`);
}
