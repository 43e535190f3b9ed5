import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { encodeWav } from '../../src/sound-files/encode-wav.ts';

export interface AubioSetting {
  readonly method: string;
  readonly threshold: number;
  readonly hop: number;
}

/** Settings tried for the rival: every method of aubio 0.4.9 at its default threshold, and those that gain by another one. */
export const AUBIO_SETTINGS: readonly AubioSetting[] = [
  { method: 'energy', threshold: 0.3, hop: 256 }, { method: 'energy', threshold: 0.6, hop: 256 }, { method: 'energy', threshold: 1, hop: 256 },
  { method: 'hfc', threshold: 0.3, hop: 256 }, { method: 'complex', threshold: 0.3, hop: 256 },
  { method: 'specdiff', threshold: 0.3, hop: 256 }, { method: 'specdiff', threshold: 0.6, hop: 128 }, { method: 'specdiff', threshold: 0.9, hop: 128 },
  { method: 'kl', threshold: 0.02, hop: 256 }, { method: 'mkl', threshold: 0.05, hop: 256 }, { method: 'specflux', threshold: 0.3, hop: 256 }, { method: 'specflux', threshold: 0.6, hop: 128 },
];

export const settingName = (s: AubioSetting): string => `aubio ${s.method} t=${s.threshold} hop=${s.hop}`;

/** Onset times (s) that Debian's aubioonset finds in a recording, by setting; and the seconds that it took. */
export function aubioOnsets(samples: Float32Array, rate: number, settings: readonly AubioSetting[]): { onsets: number[][]; seconds: number } {
  const folder = mkdtempSync(join(tmpdir(), 'tupwise-aubio-'));
  try {
    const path = join(folder, 'a.wav');
    writeFileSync(path, encodeWav(samples, rate));
    const started = performance.now();
    const onsets = settings.map((s) =>
      execFileSync('aubioonset', ['-i', path, '-O', s.method, '-t', String(s.threshold), '-H', String(s.hop), '-B', String(s.hop * 4)], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] })
        .split('\n').filter((line) => line.trim() !== '').map(Number).filter(Number.isFinite));
    return { onsets, seconds: (performance.now() - started) / 1000 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
