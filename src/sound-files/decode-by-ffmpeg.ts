import { spawn } from 'node:child_process';
import { notDecoded, partNote, type DecodeOutcome } from './decoded-sound.ts';

/** Samples a second that everything is brought to; enough for every band that is looked at. */
const RATE = 44_100;
const LONGEST_WAIT = 120_000; // ms

/**
 * A sound file through the ffmpeg that the system has. It is a program beside ours, not a part of it; where it is
 * missing, a sentence says so.
 * @param path of a local file
 * @param kind what the file is, in words
 * @param longest s to decode at most
 * @param program name or path of ffmpeg
 */
export function decodeByFfmpeg(path: string, kind: string, longest: number, program = 'ffmpeg'): Promise<DecodeOutcome> {
  return new Promise((resolve) => {
    // Only local files and pipes: a playlist must not make it fetch anything.
    const options = ['-nostdin', '-v', 'error', '-protocol_whitelist', 'file,pipe', '-i', `file:${path}`, '-map', '0:a:0', '-t', String(longest + 1), '-ac', '1', '-ar', String(RATE), '-f', 'f32le', 'pipe:1'];
    const child = spawn(program, options, { stdio: ['ignore', 'pipe', 'pipe'] });
    const most = Math.floor(longest * RATE) * 4;
    const pieces: Buffer[] = [];
    let [bytes, errors, more] = [0, '', false];
    const timer = setTimeout(() => child.kill('SIGKILL'), LONGEST_WAIT);
    child.stdout.on('data', (piece: Buffer) => {
      if (bytes >= most) {
        more = true;
        return;
      }
      pieces.push(piece);
      bytes += piece.length;
    });
    child.stderr.on('data', (piece: Buffer) => {
      if (errors.length < 2000) errors += piece.toString('utf8');
    });
    child.on('error', () => {
      clearTimeout(timer);
      resolve(notDecoded(kind, `This is ${kind}. To read it here the program ffmpeg must be installed on this computer; or save the recording as WAV and choose that.`));
    });
    child.on('close', () => {
      clearTimeout(timer);
      const whole = Buffer.concat(pieces).subarray(0, Math.min(bytes, most));
      const count = Math.floor(whole.length / 4);
      if (count === 0) {
        resolve(notDecoded(kind, /matches no streams|does not contain any stream/i.test(errors) ? `This is ${kind}, and it has no sound track.` : `This is ${kind}, but its sound could not be read; it may be cut short or damaged. Record again, or save it as WAV.`));
        return;
      }
      const samples = new Float32Array(count);
      for (let i = 0; i < count; i++) samples[i] = whole.readFloatLE(4 * i);
      const seconds = count / RATE;
      const notes = [...(errors === '' ? [] : ['Part of the file is damaged; what could be read was read.']), ...(more ? [partNote(Math.max(seconds, longest + 60), seconds).replace(/^[^;]*;/, 'The recording is long;')] : [])];
      resolve({ state: 'decoded', samples, rate: RATE, channels: 1, seconds, secondsDecoded: seconds, kind, notes });
    });
  });
}
