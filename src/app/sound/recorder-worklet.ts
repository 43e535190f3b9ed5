// Runs beside the page in the browser's sound thread: hands on every block of samples as it comes, unchanged.
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor): void;

/** Samples gathered before they are handed on: about 50 ms. */
const BLOCK = 2048;

class Tap extends AudioWorkletProcessor {
  #block = new Float32Array(BLOCK);
  #filled = 0;

  process([channels]: readonly (readonly Float32Array[])[]): boolean {
    const first = channels?.[0];
    if (first === undefined || channels === undefined) return true;
    for (let i = 0; i < first.length; i += 1) {
      let sum = 0;
      for (const channel of channels) sum += channel[i] ?? 0;
      this.#block[this.#filled] = sum / channels.length;
      this.#filled += 1;
      if (this.#filled === BLOCK) {
        this.port.postMessage(this.#block, [this.#block.buffer]);
        this.#block = new Float32Array(BLOCK);
        this.#filled = 0;
      }
    }
    return true;
  }
}

registerProcessor('tap', Tap);
