import { encodeWav } from '../../sound-files/browser/index.ts';
import tapAddress from './recorder-worklet.ts?worker&url';

const COUNTDOWN = 3; // s
const RAIL = 0.985;
/** Blocks at the rail after which the recording is called overdriven. */
const OVERDRIVEN = 3;

/** Records from the microphone into a WAV file, after a countdown, without the gain control and filters that phones use for speech. */
export class Recorder {
  stage = $state<'idle' | 'asking' | 'counting' | 'recording'>('idle');
  /** s left of the countdown or of the recording */
  left = $state(0);
  /** loudest sample of the last block, 0 to 1 */
  level = $state(0);
  /** loudest of the whole recording */
  loudest = $state(0);
  /** blocks that stood at the rail */
  clipped = $state(0);
  words = $state('');
  /** counts the questions for the microphone, so that an answer that comes too late is known */
  #asked = 0;
  #stream: MediaStream | undefined;
  #context: AudioContext | undefined;
  #blocks: Float32Array[] = [];
  #timer: ReturnType<typeof setInterval> | undefined;
  #finish: ((file: Blob | undefined) => void) | undefined;

  /** Why there is no microphone here, or empty where there may be one. */
  static get missing(): string {
    if (navigator.mediaDevices?.getUserMedia === undefined || typeof AudioWorkletNode === 'undefined')
      return isSecureContext
        ? 'This browser gives no microphone to a page. Record with the phone’s own recorder and choose the file.'
        : 'A browser gives the microphone only to a page of this device or over https. Record with the phone’s own recorder and choose the file.';
    return '';
  }

  get overdriven(): boolean {
    return this.clipped >= OVERDRIVEN;
  }

  /** @param seconds to record. @returns the file, or undefined where there is none; `words` then say why */
  async record(seconds: number): Promise<Blob | undefined> {
    this.words = Recorder.missing;
    if (this.words !== '' || this.stage !== 'idle') return undefined;
    this.stage = 'asking';
    this.#blocks = [];
    this.loudest = 0;
    this.clipped = 0;
    const asked = (this.#asked += 1);
    try {
      const stream = await navigator.mediaDevices.getUserMedia({ audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 } });
      if (asked !== this.#asked) {
        // The reader had left it before the browser's question was answered.
        stream.getTracks().forEach((track) => track.stop());
        return undefined;
      }
      this.#stream = stream;
      this.#context = new AudioContext();
      await this.#context.audioWorklet.addModule(tapAddress);
      await inTime(this.#context.resume());
    } catch (failure) {
      if (asked !== this.#asked) return undefined;
      this.#close();
      this.words = `${reasonOf(failure)} Record with the phone’s own recorder and choose the file.`;
      return undefined;
    }
    if (asked !== this.#asked) return undefined;
    const tap = new AudioWorkletNode(this.#context, 'tap', { numberOfOutputs: 0 });
    this.#context.createMediaStreamSource(this.#stream).connect(tap);
    tap.port.onmessage = ({ data }: MessageEvent<Float32Array>) => this.#take(data);
    return new Promise((resolve) => {
      this.#finish = resolve;
      this.stage = 'counting';
      this.#count(COUNTDOWN, () => {
        this.#blocks = [];
        this.loudest = 0;
        this.clipped = 0;
        this.stage = 'recording';
        this.#count(seconds, () => this.stop());
      });
    });
  }

  /** Ends the recording now and keeps what there is; before it has begun, leaves it. */
  stop(): void {
    const { stage } = this;
    this.#asked += 1;
    const rate = this.#context?.sampleRate ?? 48_000;
    const gain = this.#stream?.getAudioTracks()[0]?.getSettings().autoGainControl === true;
    this.#close();
    const finish = this.#finish;
    this.#finish = undefined;
    if (stage !== 'recording' || this.#blocks.length === 0) return finish?.(undefined);
    const samples = new Float32Array(this.#blocks.reduce((sum, block) => sum + block.length, 0));
    let at = 0;
    for (const block of this.#blocks) {
      samples.set(block, at);
      at += block.length;
    }
    this.#blocks = [];
    if (this.overdriven) this.words = 'The blows were louder than the recorder can take: times hold, levels do not. Next time stand farther away.';
    else if (gain) this.words = 'This device turns its gain by itself, so levels are pressed together; times hold.';
    finish?.(new Blob([encodeWav(samples, rate) as Uint8Array<ArrayBuffer>], { type: 'audio/wav' }));
  }

  #take(block: Float32Array): void {
    let most = 0;
    for (const x of block) most = Math.max(most, Math.abs(x));
    this.level = most;
    this.loudest = Math.max(this.loudest, most);
    if (most >= RAIL) this.clipped += 1;
    if (this.stage === 'recording') this.#blocks.push(block);
  }

  #count(seconds: number, then: () => void): void {
    clearInterval(this.#timer);
    const end = performance.now() + 1000 * seconds;
    this.left = seconds;
    this.#timer = setInterval(() => {
      this.left = Math.max(0, (end - performance.now()) / 1000);
      if (this.left > 0) return;
      clearInterval(this.#timer);
      then();
    }, 100);
  }

  #close(): void {
    clearInterval(this.#timer);
    this.#stream?.getTracks().forEach((track) => track.stop());
    void this.#context?.close();
    this.#stream = undefined;
    this.#context = undefined;
    this.stage = 'idle';
    this.level = 0;
  }
}

/** ms; a device without any sound system never starts one, and says nothing. */
const PATIENCE = 5000;

const inTime = (starting: Promise<void>): Promise<void> =>
  Promise.race([starting, new Promise<void>((_, reject) => setTimeout(() => reject(new DOMException('no sound system', 'TimeoutError')), PATIENCE))]);

function reasonOf(failure: unknown): string {
  const name = failure instanceof DOMException ? failure.name : '';
  if (name === 'NotAllowedError') return 'The microphone was not allowed to this page.';
  if (name === 'NotFoundError') return 'This device has no microphone.';
  if (name === 'TimeoutError') return 'This device starts no sound for a page.';
  if (name === 'NotReadableError') return 'The microphone is in use by another program.';
  return 'The microphone could not be opened.';
}
