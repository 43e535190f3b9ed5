import type { DecodedSound } from '../../sound-files/browser/index.ts';

const BEFORE = 0.06; // s heard before a blow
const AFTER = 0.3;
const CLICK = 0.012;
const LONGEST = 12;

/** Plays pieces of an open recording. One at a time. */
class SoundPlayer {
  /** what is playing; empty for nothing */
  playing = $state('');
  #context: AudioContext | undefined;
  #source: AudioBufferSourceNode | undefined;

  /** One blow, with a little before it. */
  blow(sound: DecodedSound, time: number): void {
    this.#play(`blow ${time}`, sound, time - BEFORE, time + AFTER, []);
  }

  /** A stretch with a short high tone laid on every mark, so that the ear can hold the marks against the blows. */
  stretch(sound: DecodedSound, from: number, to: number, marks: readonly number[]): void {
    if (this.playing === 'stretch') return this.stop();
    this.#play('stretch', sound, from, Math.min(to, from + LONGEST), marks);
  }

  stop(): void {
    this.#source?.stop();
    this.#source = undefined;
    this.playing = '';
  }

  #play(name: string, sound: DecodedSound, from: number, to: number, marks: readonly number[]): void {
    this.stop();
    this.#context ??= new AudioContext();
    const context = this.#context;
    void context.resume();
    const first = Math.max(0, Math.floor(from * sound.rate));
    const piece = sound.samples.slice(first, Math.min(sound.samples.length, Math.ceil(to * sound.rate)));
    if (piece.length === 0) return;
    let peak = 1e-4;
    for (const x of piece) peak = Math.max(peak, Math.abs(x));
    for (let i = 0; i < piece.length; i += 1) piece[i] = (piece[i]! * 0.7) / peak;
    for (const mark of marks) {
      const start = Math.round(mark * sound.rate) - first;
      for (let i = 0; i < CLICK * sound.rate; i += 1) if (start + i >= 0 && start + i < piece.length) piece[start + i]! += 0.3 * Math.sin((2 * Math.PI * 2400 * i) / sound.rate) * (1 - i / (CLICK * sound.rate));
    }
    const buffer = context.createBuffer(1, piece.length, Math.min(192_000, Math.max(8000, sound.rate)));
    buffer.copyToChannel(piece, 0);
    const source = context.createBufferSource();
    source.buffer = buffer;
    source.connect(context.destination);
    source.onended = () => {
      if (this.#source === source) this.stop();
    };
    source.start();
    this.#source = source;
    this.playing = name;
  }
}

export const player = new SoundPlayer();
