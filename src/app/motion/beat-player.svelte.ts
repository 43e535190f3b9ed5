import type { MotionRan, SecondSound } from '../../derived/motion/index.ts';
import { beatSound, exampleSound } from '../../views/motion/index.ts';

const ROUNDS = 8;

/** Plays what the model says a hammer sounds like. One sound at a time. */
class BeatPlayer {
  /** which sound is playing; empty for none */
  playing = $state('');
  #context: AudioContext | undefined;
  #source: AudioBufferSourceNode | undefined;

  /** Plays the beats of a run, or stops them where they play already. */
  run(name: string, run: MotionRan, stretch: number): void {
    this.#toggle(name, (rate) => beatSound(run, rate, ROUNDS, stretch));
  }

  example(name: string, sound: Pick<SecondSound, 'kind' | 'delay' | 'level'>): void {
    this.#toggle(name, (rate) => exampleSound(sound, rate));
  }

  stop(): void {
    this.#source?.stop();
    this.#source = undefined;
    this.playing = '';
  }

  #toggle(name: string, make: (rate: number) => Float32Array<ArrayBuffer>): void {
    const again = this.playing === name;
    this.stop();
    if (again) return;
    this.#context ??= new AudioContext();
    const context = this.#context;
    void context.resume();
    const samples = make(Math.min(96000, Math.max(8000, context.sampleRate)));
    const buffer = context.createBuffer(1, samples.length, context.sampleRate);
    buffer.copyToChannel(samples, 0);
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

export const player = new BeatPlayer();
