import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { encodeWav } from '../../../src/sound-files/index.ts';
import { HAMMERS, ran, recordingOf } from '../../sound-views/model-hammers.ts';
import type { BeatClass, MotionRan } from '../../../src/derived/motion/index.ts';

export const RATE = 44_100;
export const FFMPEG = spawnSync('ffmpeg', ['-version']).status === 0;

/** A folder with recordings of the model's hammers in a noisy room, and with files that are none. */
export class MadeRecordings {
  readonly folder = mkdtempSync(join(tmpdir(), 'tupwise-recordings-'));

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }

  path(name: string): string {
    return join(this.folder, name);
  }

  write(name: string, bytes: Uint8Array | string): string {
    const path = this.path(name);
    writeFileSync(path, bytes);
    return path;
  }

  /** The program's own hammer of this kind, played through the room. */
  hammer(beatClass: BeatClass, seconds = 30, seed = 1): { readonly path: string; readonly run: MotionRan } {
    const hammer = HAMMERS.find((one) => one.beatClass === beatClass);
    if (hammer === undefined) throw new Error(`the model has no hammer of this kind here: ${beatClass}`);
    const run = ran(hammer.spec);
    return { run, path: this.write(`${beatClass}-${seconds}.wav`, encodeWav(recordingOf(run, { seconds, seed, rate: RATE }), RATE)) };
  }

  /** The same sound in another kind of file, by the system's ffmpeg. */
  as(path: string, name: string, options: readonly string[]): string {
    execFileSync('ffmpeg', ['-v', 'error', '-y', '-i', path, ...options, this.path(name)]);
    return this.path(name);
  }

  /** A WAV file of hours, nearly all of it a faint hiss: 8 bits at 8 kHz. */
  hours(name: string, hours: number): string {
    const bytes = new Uint8Array(44 + hours * 3600 * 8000);
    let state = 1;
    for (let i = 0; i < bytes.length; i++) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      bytes[i] = 127 + (state >>> 30);
    }
    const small = encodeWav(new Float32Array(0), 8000);
    bytes.set(small);
    const view = new DataView(bytes.buffer);
    view.setUint32(4, bytes.length - 8, true);
    view.setUint32(28, 8000, true);
    view.setUint16(32, 1, true);
    view.setUint16(34, 8, true);
    view.setUint32(40, bytes.length - 44, true);
    // A blow four times a second in the first minute.
    for (let k = 0; k < 240; k++) for (let i = 0; i < 400; i++) bytes[44 + Math.round((0.5 + 0.25 * k) * 8000) + i] = Math.round(128 + 110 * Math.exp(-i / 60) * Math.sin(i * (1.1 + (k % 7) * 0.02)));
    return this.write(name, bytes);
  }
}
