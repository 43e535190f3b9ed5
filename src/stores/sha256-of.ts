import { createHash } from 'node:crypto';

/** SHA-256 of bytes, 64 hexadecimal digits. */
export function sha256Of(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** True for text that can be a SHA-256; anything else never becomes a path. */
export function isSha256(text: string): boolean {
  return /^[0-9a-f]{64}$/.test(text);
}

/** @throws where there is nothing to keep, or no media type to show it by */
export function checkBlob(bytes: Uint8Array, mediaType: string): void {
  if (bytes.length === 0) throw new Error('a photograph or recording cannot be kept; allowed is one byte or more: 0');
  if (!/^[a-z]+\/[a-z0-9][a-z0-9.+-]*(;[\x20-\x7e]*)?$/i.test(mediaType))
    throw new Error(`a media type cannot be kept; allowed is kind/format, such as image/jpeg: ${JSON.stringify(mediaType)}`);
}
