import type { BeatOptions, BeatResult } from '../../derived/sound/index.ts';
import { decodeInBrowser, type DecodedSound } from '../../sound-files/browser/index.ts';
import type { SoundAnswer, SoundAsk } from './sound-ask.ts';

/** s of a recording that are opened on a page at most: a phone has to hold them twice. */
export const LONGEST_ON_PAGE = 300;
/** Where this device keeps how many seconds of sound it listens through in one. */
const SPEED = 'tupwise.listening-speed';
const FIRST_GUESS = 25;
const EVERY = 120; // ms
/** How far the bar runs on by the usual speed beyond what the worker last told. */
const AHEAD = 0.2;
/** ms that marks must rest before what follows from them is worked out */
const REST = 350;

export type Range = Pick<BeatOptions, 'slowest' | 'fastest'>;

/** Opens one recording and has a worker beside the page listen to it. Only the newest question counts; it can be stopped. */
export class SoundDesk {
  stage = $state<'empty' | 'opening' | 'listening' | 'answered'>('empty');
  sound = $state.raw<DecodedSound | undefined>(undefined);
  result = $state.raw<BeatResult | undefined>(undefined);
  /** the file as it came, for keeping */
  file = $state.raw<Blob | undefined>(undefined);
  /** what cannot be done, in a sentence */
  words = $state('');
  /** what follows from the marks as a person put them; undefined while they are the program's own, and until it is worked out */
  reworked = $state.raw<BeatResult | undefined>(undefined);
  /** 0 to 1, how far the listening is: as the worker tells, and by this device's usual speed in between */
  share = $state(0);
  /** s that the last answer took, opening and listening */
  took = $state(0);
  #worker: Worker | undefined;
  #next = 0;
  #clock: ReturnType<typeof setInterval> | undefined;
  #started = 0;
  #told = 0;
  #rest: ReturnType<typeof setTimeout> | undefined;
  /** the question about marks that is being worked on, the marks it is about, and those that the page shows */
  #asked: number | undefined;
  #askedFor: readonly number[] | undefined;
  #wanted: readonly number[] | undefined;

  async open(file: Blob, range: Range = {}): Promise<void> {
    this.stop();
    const id = this.#next;
    this.sound = undefined;
    this.result = undefined;
    this.reworked = undefined;
    this.words = '';
    this.file = file;
    this.stage = 'opening';
    this.#started = performance.now();
    const outcome = await decodeInBrowser(file, LONGEST_ON_PAGE);
    if (id !== this.#next) return;
    if (outcome.state === 'not decoded') {
      this.words = outcome.words;
      this.file = undefined;
      this.stage = 'empty';
      return;
    }
    this.sound = outcome;
    this.#listen(outcome, range);
  }

  /** Listens again to what is open, for rates in another range. */
  again(range: Range): void {
    const { sound } = this;
    if (sound === undefined) return;
    this.stop();
    this.#started = performance.now();
    this.#listen(sound, range);
  }

  /** Works out again what follows from marks that a person put right; undefined: they are the program's own again. */
  rework(times: readonly number[] | undefined): void {
    clearTimeout(this.#rest);
    this.reworked = undefined;
    this.#wanted = times;
    if (times !== undefined) this.#rest = setTimeout(() => this.#askFrom(), REST);
  }

  #askFrom(): void {
    const { sound } = this;
    if (this.#asked !== undefined || this.#wanted === undefined || this.#wanted === this.#askedFor || sound === undefined || this.stage !== 'answered') return;
    this.#next += 1;
    this.#asked = this.#next;
    this.#askedFor = this.#wanted;
    this.#ask(sound, {}, [...this.#wanted]);
  }

  stop(): void {
    this.#next += 1;
    clearInterval(this.#clock);
    clearTimeout(this.#rest);
    this.#wanted = this.#askedFor = undefined;
    if (this.#asked !== undefined) {
      this.#asked = undefined;
      this.#worker?.terminate();
      this.#worker = undefined;
    }
    if (this.stage === 'listening') {
      this.#worker?.terminate();
      this.#worker = undefined;
    }
    if (this.stage === 'listening' || this.stage === 'opening') {
      this.stage = this.result === undefined ? 'empty' : 'answered';
      this.words = 'Stopped.';
    }
  }

  close(): void {
    this.stop();
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #listen(sound: DecodedSound, range: Range): void {
    this.stage = 'listening';
    this.words = '';
    this.share = 0;
    const started = performance.now();
    const guess = sound.secondsDecoded / usualSpeed();
    this.#told = 0;
    this.reworked = undefined;
    this.#clock = setInterval(() => {
      const guessed = (performance.now() - started) / 1000 / Math.max(0.2, guess);
      this.share = Math.max(this.share, Math.min(0.99, Math.max(this.#told, Math.min(guessed, this.#told + AHEAD))));
    }, EVERY);
    this.#ask(sound, range);
  }

  #ask(sound: DecodedSound, range: Range, times?: readonly number[]): void {
    if (this.#worker === undefined) {
      this.#worker = new Worker(new URL('./sound-worker.ts', import.meta.url), { type: 'module' });
      this.#worker.onerror = (event) => {
        event.preventDefault();
        this.#failed('');
      };
    }
    this.#worker.onmessage = ({ data }: MessageEvent<SoundAnswer>) => this.#take(data, sound);
    this.#worker.postMessage({ id: this.#next, samples: sound.samples, rate: sound.rate, options: { ...range, longest: LONGEST_ON_PAGE }, ...(times === undefined ? {} : { times }) } satisfies SoundAsk);
  }

  #take(answer: SoundAnswer, sound: DecodedSound): void {
    if (answer.id !== this.#next) return;
    if (answer.kind === 'under way') {
      this.#told = answer.share;
      return;
    }
    if (answer.id === this.#asked) {
      this.#asked = undefined;
      if (answer.kind === 'failed') return this.#failed(answer.words);
      // Marks that were moved on since are worked out next; this answer is no longer theirs.
      if (this.#wanted === this.#askedFor) this.reworked = answer.result;
      else this.#askFrom();
      return;
    }
    if (answer.kind === 'failed') return this.#failed(answer.words);
    clearInterval(this.#clock);
    if (sound.secondsDecoded > 10) localStorage.setItem(SPEED, String(sound.secondsDecoded / Math.max(0.05, answer.seconds)));
    this.took = (performance.now() - this.#started) / 1000;
    this.share = 1;
    this.result = answer.result;
    this.stage = 'answered';
  }

  #failed(words: string): void {
    clearInterval(this.#clock);
    this.#worker?.terminate();
    this.#worker = undefined;
    this.words = `This device could not listen through the recording${words === '' ? '; a shorter one may do' : `: ${words}`}.`;
    this.stage = this.result === undefined ? 'empty' : 'answered';
  }
}

function usualSpeed(): number {
  const held = Number(localStorage.getItem(SPEED));
  return held > 0.5 && held < 2000 ? held : FIRST_GUESS;
}
