import { RealFourier, transformSize } from '../../methods/signal/index.ts';

/** s before and after the onset that are taken as the blow itself */
const BEFORE = 0.002;
const AFTER = 0.016;
/** s over which the prediction is faded in and out */
const FADE = 0.002;
/** s, longest stretch that is predicted */
const LONGEST = 0.5;
/** share of the stretch over which the prediction is let go, so slowly that its end does not look like an onset */
const RELEASE = 0.2;

/**
 * A recording without what follows from each blow by itself: ringing, room and echoes.
 *
 * One linear response from the first 16 ms of a blow to what is heard until the next is estimated over all blows
 * (cross spectrum over own spectrum, each frequency shrunk by its coherence), and what it predicts is taken out of each
 * turn. A sound with a time of its own does not follow from the blow and stays; this is the separation of the
 * deterministic from the random part in R. B. Randall and J. Antoni, Mech. Syst. Signal Process. 25 (2011) 485.
 * @param times s, blows
 * @param period s
 * @returns a new row; the first 16 ms of every blow are as they were
 */
export function withoutTails(samples: Float32Array, rate: number, times: readonly number[], period: number): Float32Array {
  const out = samples.slice();
  const before = Math.round(BEFORE * rate);
  const head = before + Math.round(AFTER * rate);
  const length = before + Math.round(Math.min(LONGEST, 0.97 * period) * rate);
  const starts = times.map((t) => Math.round(t * rate) - before).filter((s) => s >= 0 && s + length <= samples.length);
  if (starts.length < 8 || length <= 2 * head) return out;
  const fourier = new RealFourier(transformSize(length + head));
  const bins = fourier.bins;
  const [xRe, xIm, yRe, yIm, crossRe, crossIm] = Array.from({ length: 6 }, () => new Float64Array(bins)) as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  const [own, whole] = [new Float64Array(bins), new Float64Array(bins)];
  const fade = Math.max(2, Math.round(FADE * rate));
  const release = Math.round(RELEASE * length);
  const gate = new Float64Array(head).map((_, i) => (i < fade ? 0.5 - 0.5 * Math.cos((Math.PI * (i + 0.5)) / fade) : i >= head - fade ? 0.5 - 0.5 * Math.cos((Math.PI * (head - i - 0.5)) / fade) : 1));
  const blow = new Float64Array(head);
  for (const start of starts) {
    takeHead(start);
    fourier.forward(blow, xRe, xIm, 0, head);
    fourier.forward(samples, yRe, yIm, start, length);
    for (let k = 0; k < bins; k++) {
      own[k]! += xRe[k]! ** 2 + xIm[k]! ** 2;
      whole[k]! += yRe[k]! ** 2 + yIm[k]! ** 2;
      crossRe[k]! += xRe[k]! * yRe[k]! + xIm[k]! * yIm[k]!;
      crossIm[k]! += xRe[k]! * yIm[k]! - xIm[k]! * yRe[k]!;
    }
  }
  const chance = 1 / starts.length;
  for (let k = 0; k < bins; k++) {
    const together = own[k]! * whole[k]!;
    const coherence = together > 0 ? (crossRe[k]! ** 2 + crossIm[k]! ** 2) / together : 0;
    const keep = coherence > chance ? (coherence - chance) / (1 - chance) / coherence : 0;
    const scale = own[k]! > 0 ? keep / own[k]! : 0;
    crossRe[k] = crossRe[k]! * scale;
    crossIm[k] = crossIm[k]! * scale;
  }
  const predicted = new Float64Array(fourier.size);
  for (const start of starts) {
    takeHead(start);
    fourier.forward(blow, xRe, xIm, 0, head);
    for (let k = 0; k < bins; k++) {
      yRe[k] = xRe[k]! * crossRe[k]! - xIm[k]! * crossIm[k]!;
      yIm[k] = xRe[k]! * crossIm[k]! + xIm[k]! * crossRe[k]!;
    }
    fourier.inverse(yRe, yIm, predicted);
    for (let i = head - fade; i < length; i++) {
      const share = i < head ? 0.5 - 0.5 * Math.cos((Math.PI * (i - head + fade + 0.5)) / fade) : Math.min(1, (length - i) / release);
      out[start + i] = out[start + i]! - share * predicted[i]!;
    }
  }
  return out;

  function takeHead(start: number): void {
    for (let i = 0; i < head; i++) blow[i] = gate[i]! * samples[start + i]!;
  }
}
