import type { Adjustment, AssumedWeight, MotionDoubt, MotionResult, MotionSpec, MotionTrial } from '../../derived/motion/index.ts';
import type { MotionAnswer, MotionAsk } from './motion-ask.ts';

type Run = Extract<MotionAsk, { kind: 'run' }>;
type Advice = Extract<MotionAsk, { kind: 'advice' }>;
type WithoutId<T> = Omit<T, 'id'>;

/** No answer is wanted any more. */
const NOBODY = -1;

export const startWorker = (): Worker => new Worker(new URL('./motion-worker.ts', import.meta.url), { type: 'module' });

/**
 * Runs one hammer in workers beside the page. Only the newest question counts: while one is being answered the next waits, what is older is
 * dropped, and advice that is no longer wanted is cut off.
 */
export class MotionDesk {
  /** the newest answer, with the specification that it answers: the one on the page may have moved on */
  answer = $state.raw<{ readonly spec: MotionSpec; readonly result: MotionResult } | undefined>(undefined);
  doubt = $state.raw<MotionDoubt | undefined>(undefined);
  weights = $state.raw<readonly AssumedWeight[] | undefined>(undefined);
  trials = $state.raw<readonly MotionTrial[] | undefined>(undefined);
  adjustments = $state.raw<readonly Adjustment[] | undefined>(undefined);
  /** true while what is shown is not yet the answer to the newest question */
  busy = $state(false);
  failure = $state('');
  #runner: Worker | undefined;
  #adviser: Worker | undefined;
  #next = 0;
  #wanted = 0;
  #running: Run | undefined;
  #waiting: Run | undefined;
  #advising = 0;

  run(ask: WithoutId<Run>): void {
    this.#next += 1;
    const made = { ...ask, id: this.#next };
    this.#wanted = made.id;
    this.busy = true;
    if (this.#running !== undefined) {
      this.#waiting = made;
      return;
    }
    this.#send(made);
  }

  advise(ask: WithoutId<Advice>): void {
    this.stopAdvice();
    this.#next += 1;
    this.#advising = this.#next;
    this.#adviser ??= this.#listen(startWorker());
    this.#adviser.postMessage({ ...ask, id: this.#advising } satisfies MotionAsk);
  }

  /** Cuts off advice that is still being worked out and takes back what was said for another setting. */
  stopAdvice(): void {
    if (this.#advising !== 0) {
      this.#adviser?.terminate();
      this.#adviser = undefined;
      this.#advising = 0;
    }
    this.doubt = undefined;
    this.weights = undefined;
    this.trials = undefined;
    this.adjustments = undefined;
  }

  close(): void {
    this.#runner?.terminate();
    this.#adviser?.terminate();
    this.#runner = undefined;
    this.#adviser = undefined;
  }

  #send(ask: Run): void {
    this.#running = ask;
    this.#runner ??= this.#listen(startWorker());
    this.#runner.postMessage(ask satisfies MotionAsk);
  }

  #listen(worker: Worker): Worker {
    worker.onmessage = ({ data }: MessageEvent<MotionAnswer>) => this.#take(data);
    worker.onerror = (event) => {
      event.preventDefault();
      this.failure = 'The motion could not be worked out on this device.';
      this.busy = false;
      this.#running = undefined;
    };
    return worker;
  }

  /** Takes back an answer that belongs to nothing on the page any more. */
  forget(): void {
    this.stopAdvice();
    this.answer = undefined;
    this.#waiting = undefined;
    this.#wanted = NOBODY;
    this.busy = false;
  }

  #take(answer: MotionAnswer): void {
    if (answer.kind === 'run') {
      const asked = this.#running;
      this.#running = undefined;
      const waiting = this.#waiting;
      this.#waiting = undefined;
      this.failure = '';
      // An older answer is still shown while a slider moves, so that the hammer follows the hand.
      if (asked !== undefined && this.#wanted !== NOBODY) this.answer = { spec: asked.spec, result: answer.result };
      this.busy = this.#wanted !== NOBODY && answer.id !== this.#wanted;
      if (waiting !== undefined) this.#send(waiting);
    } else if (answer.kind === 'failed') {
      this.failure = `The motion could not be worked out: ${answer.words}.`;
      this.busy = false;
      this.#running = undefined;
    } else if (answer.id === this.#advising) {
      if (answer.kind === 'doubt') this.doubt = answer.doubt;
      if (answer.kind === 'weights') this.weights = answer.weights;
      if (answer.kind === 'trials') this.trials = answer.trials;
      if (answer.kind === 'adjustments') {
        this.adjustments = answer.adjustments;
        this.#advising = 0;
      }
    }
  }
}
