import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Recipe } from './synthesiser/index.ts';

const CODECS: Record<NonNullable<Recipe['codec']>, { readonly encode: readonly string[]; readonly file: string }> = {
  'aac-32k': { encode: ['-c:a', 'aac', '-b:a', '32k'], file: 'm4a' },
  'aac-64k': { encode: ['-c:a', 'aac', '-b:a', '64k'], file: 'm4a' },
  'opus-16k': { encode: ['-c:a', 'libopus', '-b:a', '16k', '-ar', '48000'], file: 'webm' },
  'mp3-48k': { encode: ['-c:a', 'libmp3lame', '-b:a', '48k'], file: 'mp3' },
  gsm: { encode: ['-c:a', 'libgsm', '-ar', '8000'], file: 'gsm' },
};

/** A recording squeezed by a phone's codec and opened again, by the system's ffmpeg. */
export function throughCodec(samples: Float32Array, rate: number, codec: NonNullable<Recipe['codec']>): { samples: Float32Array; rate: number } {
  const folder = mkdtempSync(join(tmpdir(), 'tupwise-codec-'));
  try {
    const { encode, file } = CODECS[codec];
    const raw = join(folder, 'raw');
    writeFileSync(raw, new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength));
    const squeezed = join(folder, `squeezed.${file}`);
    execFileSync('ffmpeg', ['-v', 'error', '-f', 'f32le', '-ar', String(rate), '-ac', '1', '-i', raw, ...encode, squeezed]);
    const opened = execFileSync('ffmpeg', ['-v', 'error', '-i', squeezed, '-f', 'f32le', '-ac', '1', '-ar', String(rate), '-'], { maxBuffer: 1 << 30 });
    return { samples: new Float32Array(opened.buffer.slice(opened.byteOffset, opened.byteOffset + opened.byteLength - (opened.byteLength % 4))), rate };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
