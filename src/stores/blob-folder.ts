import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { syncFolder, writeWhole } from './durable-file.ts';
import { DamagedBlob } from './failures.ts';
import { isSha256, sha256Of } from './sha256-of.ts';

/** Bytes in files named by their SHA-256, in 256 folders by its first two digits. */
export class BlobFolder {
  constructor(private readonly folder: string) {}

  /** @returns SHA-256 of the bytes, which outlast a power cut from now on */
  async put(bytes: Uint8Array): Promise<string> {
    const sha256 = sha256Of(bytes);
    const path = this.pathOf(sha256);
    if (await this.holds(sha256)) return sha256;
    const made = await mkdir(join(path, '..'), { recursive: true });
    if (made !== undefined) {
      await syncFolder(this.folder);
      await syncFolder(join(this.folder, '..'));
    }
    await writeWhole(path, bytes);
    return sha256;
  }

  /** @throws DamagedBlob where the bytes no longer have their SHA-256 */
  async get(sha256: string): Promise<Uint8Array | undefined> {
    if (!isSha256(sha256)) return undefined;
    const bytes = await readFile(this.pathOf(sha256)).catch((failure: NodeJS.ErrnoException) => {
      if (failure.code === 'ENOENT') return undefined;
      throw failure;
    });
    if (bytes === undefined) return undefined;
    const found = sha256Of(bytes);
    if (found !== sha256) throw new DamagedBlob(sha256, found);
    return new Uint8Array(bytes);
  }

  /** Whether the bytes are there and whole; damaged ones are to be written again. */
  private async holds(sha256: string): Promise<boolean> {
    try {
      return (await this.get(sha256)) !== undefined;
    } catch (failure) {
      if (failure instanceof DamagedBlob) return false;
      throw failure;
    }
  }

  private pathOf(sha256: string): string {
    return join(this.folder, sha256.slice(0, 2), sha256);
  }
}
