import { RealFourier, transformSize } from '../../methods/signal/index.ts';

/** s before and after the onset that are taken as the blow itself */
const BEFORE = 0.002;
const AFTER = 0.016;
/** s over which the prediction is faded in and out */
const FADE = 0.002;
/** s, longest stretch that is predicted, and how long before the next blow it ends */
const LONGEST = 0.5;
const CLEAR = 0.003;
/** Share of the blows that must reach a delay for the response to be known there. */
const LEAST_REACHED = 0.25;

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
  const longest = before + Math.round(Math.min(LONGEST, 1.06 * period) * rate);
  const turns = turnsOf(samples.length, rate, times, before, longest).filter((turn) => turn.length > 2 * head);
  if (turns.length < 8) return out;
  const fourier = new RealFourier(transformSize(longest + head));
  const bins = fourier.bins;
  const row = (): Float64Array => new Float64Array(bins);
  const [xRe, xIm, yRe, yIm, crossRe, crossIm, own, whole] = [row(), row(), row(), row(), row(), row(), row(), row()];
  const fade = Math.max(2, Math.round(FADE * rate));
  const gate = new Float64Array(head).map((_, i) => rise(Math.min(i, head - 1 - i), fade));
  const blow = new Float64Array(head);
  const takeHead = (start: number): void => {
    for (let i = 0; i < head; i++) blow[i] = gate[i]! * samples[start + i]!;
    fourier.forward(blow, xRe, xIm, 0, head);
  };
  for (const { start, length } of turns) {
    takeHead(start);
    fourier.forward(samples, yRe, yIm, start, length);
    for (let k = 0; k < bins; k++) {
      own[k] = own[k]! + xRe[k]! ** 2 + xIm[k]! ** 2;
      whole[k] = whole[k]! + yRe[k]! ** 2 + yIm[k]! ** 2;
      crossRe[k] = crossRe[k]! + xRe[k]! * yRe[k]! + xIm[k]! * yIm[k]!;
      crossIm[k] = crossIm[k]! + xRe[k]! * yIm[k]! - xIm[k]! * yRe[k]!;
    }
  }
  const chance = 1 / turns.length;
  for (let k = 0; k < bins; k++) {
    const together = own[k]! * whole[k]!;
    const coherence = together > 0 ? (crossRe[k]! ** 2 + crossIm[k]! ** 2) / together : 0;
    const keep = coherence > chance ? (coherence - chance) / (1 - chance) / coherence : 0;
    const scale = own[k]! > 0 ? keep / own[k]! : 0;
    crossRe[k] = crossRe[k]! * scale;
    crossIm[k] = crossIm[k]! * scale;
  }
  const piece = new Float64Array(fourier.size);
  evenOut(piece);
  for (const { start, length } of turns) {
    takeHead(start);
    for (let k = 0; k < bins; k++) {
      yRe[k] = xRe[k]! * crossRe[k]! - xIm[k]! * crossIm[k]!;
      yIm[k] = xRe[k]! * crossIm[k]! + xIm[k]! * crossRe[k]!;
    }
    fourier.inverse(yRe, yIm, piece);
    for (let i = head - fade; i < length; i++) {
      const share = rise(i - head + fade, fade) * rise(length - 1 - i, fade);
      out[start + i] = out[start + i]! - share * piece[i]!;
    }
  }
  return out;

  /** The response at late delays rests on fewer turns; each delay is divided by the share of turns that reach it. */
  function evenOut(response: Float64Array): void {
    fourier.inverse(crossRe, crossIm, response);
    const reaching = new Float64Array(longest + 1);
    for (const { length } of turns) reaching[length] = reaching[length]! + chance;
    let share = 1;
    for (let i = 0; i < response.length; i++) {
      share -= reaching[i] ?? 0;
      // Delays before the onset are wrapped to the end of the row.
      if (i < longest) response[i] = share >= LEAST_REACHED ? response[i]! / share : 0;
      else if (i < response.length - head) response[i] = 0;
    }
    fourier.forward(response, crossRe, crossIm);
  }
}

/** A smooth step from 0 to 1 over `fade` places. */
function rise(place: number, fade: number): number {
  return place >= fade ? 1 : place < 0 ? 0 : 0.5 - 0.5 * Math.cos((Math.PI * (place + 0.5)) / fade);
}

/** First sample of each turn and how many samples it has until shortly before the next blow. */
function turnsOf(samples: number, rate: number, times: readonly number[], before: number, longest: number): { start: number; length: number }[] {
  return times.map((time, i) => {
    const start = Math.round(time * rate) - before;
    const next = times[i + 1] === undefined ? samples : Math.round((times[i + 1]! - CLEAR) * rate);
    return { start, length: start < 0 ? 0 : Math.min(longest, next - start, samples - start) };
  });
}
