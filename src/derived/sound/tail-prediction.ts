import { RealFourier, transformSize } from '../../methods/signal/index.ts';
import { addTurn, jointResponses, jointSums, spectrum, through, type Inputs, type Spectrum } from './joint-response.ts';

/** s before and after the onset that are taken as the blow itself */
const BEFORE = 0.002;
const AFTER = 0.016;
/** s before the onset in which what still rings from earlier is heard alone */
const LAST = 0.02;
/** s over which the prediction is faded in and out */
const FADE = 0.002;
/** s, longest stretch that is predicted, and how long before the next blow it ends */
const LONGEST = 0.5;
const CLEAR = 0.003;
/** Share of the blows that must reach a delay for the response to be known there. */
const LEAST_REACHED = 0.25;
/** A blow farther from its place after the last than this share of the period is not predicted from the last. */
const NEAR_PERIOD = 0.2;
/** Values of spectra that are kept; beyond them they are worked out twice. */
const MOST_KEPT = 6e6;
const LEAST_TURNS = 12;
/** Part of the period over which a turn is predicted; the next blow may come late. */
const LONGER = 1.02;

/** A recording without tails, and how the blow's first 16 ms go on. */
export interface WithoutTails {
  readonly dry: Float32Array;
  /** response of what follows to the blow, by sample after it; empty with too few turns */
  readonly response: Float64Array;
}

interface Turn {
  /** first sample, and how many until shortly before the next blow */
  readonly start: number;
  readonly length: number;
  /** samples by which the blow before it fell later than a usual period earlier; undefined without one */
  readonly late: number | undefined;
}

/**
 * A recording without what follows from the blows by itself: ringing, room and echoes.
 *
 * What is heard until the next blow is taken as the sum of three linear responses, the same for all turns: to the first
 * 16 ms of the blow, to the last 20 ms before it, in which whatever still rings is heard alone, and to the blow before
 * it. They are estimated together over all turns, and what they predict is taken out of each. A sound with a time of its
 * own does not follow from the blow and stays; this is the separation of the deterministic from the random part in
 * R. B. Randall and J. Antoni, Mech. Syst. Signal Process. 25 (2011) 485.
 * @param times s, blows
 * @param period s
 * @returns a new row, in which the first 16 ms of every blow are as they were, and the response to the blow itself
 */
export function withoutTails(samples: Float32Array, rate: number, times: readonly number[], period: number): WithoutTails {
  const out = samples.slice();
  const before = Math.round(BEFORE * rate);
  const head = before + Math.round(AFTER * rate);
  const last = Math.round(LAST * rate);
  const fade = Math.max(2, Math.round(FADE * rate));
  const longest = before + Math.round(Math.min(LONGEST, LONGER * period) * rate);
  const blows = turnsOf(samples.length, rate, times, before, last, longest, Math.round(period * rate));
  const usable = blows.map(({ start }) => start >= last && start + head <= samples.length);
  const used = blows.map(({ length }, i) => usable[i]! && length > 2 * head);
  const count = used.filter(Boolean).length;
  if (count < LEAST_TURNS) return { dry: out, response: new Float64Array(0) };
  const fourier = new RealFourier(transformSize(longest + fade));
  const { bins, size } = fourier;
  const [headGate, lastGate] = [gate(head, fade), gate(last, fade)];
  const keeps = blows.length * bins * 4 <= MOST_KEPT;
  const kept = Array.from({ length: keeps ? blows.length : 2 }, () => ({ own: spectrum(bins), last: spectrum(bins) }));
  const [shifted, heard] = [spectrum(bins), spectrum(bins)];
  const piece = new Float64Array(Math.max(head, last));
  const listen = (i: number): void => {
    const { own, last: late } = kept[i % kept.length]!;
    const { start } = blows[i]!;
    for (let k = 0; k < head; k++) piece[k] = headGate[k]! * samples[start + k]!;
    fourier.forward(piece, own.re, own.im, 0, head);
    for (let k = 0; k < last; k++) piece[k] = lastGate[k]! * samples[start - last + k]!;
    fourier.forward(piece, late.re, late.im, 0, last);
  };
  const inputsOf = (i: number): Inputs => [kept[i % kept.length]!.own, kept[i % kept.length]!.last, laterBy(blows[i]!, usable[i - 1] ? kept[(i - 1) % kept.length]!.own : undefined)];

  const sums = jointSums(bins);
  blows.forEach((turn, i) => {
    if (usable[i]) listen(i);
    if (!used[i]) return;
    fourier.forward(samples, heard.re, heard.im, turn.start, turn.length);
    addTurn(sums, inputsOf(i), heard);
  });
  const responses = jointResponses(sums, count);
  const row = new Float64Array(size);
  for (const one of responses.toReversed()) evenOut(one);
  const response = row.slice(0, longest);
  blows.forEach((turn, i) => {
    if (usable[i] && !keeps) listen(i);
    if (!used[i]) return;
    through(inputsOf(i), responses, heard);
    fourier.inverse(heard.re, heard.im, row);
    for (let k = head - fade; k < turn.length; k++) {
      const share = rise(k - head + fade, fade) * rise(turn.length - 1 - k, fade);
      out[turn.start + k] = out[turn.start + k]! - share * row[k]!;
    }
  });
  return { dry: out, response };

  /** The blow before a turn, as it would stand if it had fallen a usual period before it plus what it fell late. */
  function laterBy({ late }: Turn, previous: Spectrum | undefined): Spectrum {
    if (late === undefined || previous === undefined) {
      shifted.re.fill(0);
      shifted.im.fill(0);
      return shifted;
    }
    const angle = (-2 * Math.PI * late) / size;
    const [stepC, stepS] = [Math.cos(angle), Math.sin(angle)];
    let [c, s] = [1, 0];
    for (let k = 0; k < bins; k++) {
      const [x, y] = [previous.re[k]!, previous.im[k]!];
      shifted.re[k] = x * c - y * s;
      shifted.im[k] = x * s + y * c;
      const next = c * stepC - s * stepS;
      s = c * stepS + s * stepC;
      c = next;
    }
    return shifted;
  }

  /** The response at late delays rests on fewer turns; each delay is divided by the share of turns that reach it. */
  function evenOut(response: Spectrum): void {
    fourier.inverse(response.re, response.im, row);
    const reaching = new Float64Array(longest + 1);
    blows.forEach(({ length }, i) => {
      if (used[i]) reaching[length] = reaching[length]! + 1 / count;
    });
    let share = 1;
    for (let i = 0; i < size; i++) {
      share -= reaching[i] ?? 0;
      // Delays before the onset are wrapped to the end of the row.
      if (i < longest) row[i] = share >= LEAST_REACHED ? row[i]! / share : 0;
      else if (i < size - head) row[i] = 0;
    }
    fourier.forward(row, response.re, response.im);
  }
}

const gate = (length: number, fade: number): Float64Array => new Float64Array(length).map((_, i) => rise(Math.min(i, length - 1 - i), fade));

/** A smooth step from 0 to 1 over `fade` places. */
function rise(place: number, fade: number): number {
  return place >= fade ? 1 : place < 0 ? 0 : 0.5 - 0.5 * Math.cos((Math.PI * (place + 0.5)) / fade);
}

/** Every blow's turn; one that cannot be used has no length. */
function turnsOf(samples: number, rate: number, times: readonly number[], before: number, last: number, longest: number, usual: number): Turn[] {
  return times.map((time, i) => {
    const start = Math.round(time * rate) - before;
    const next = times[i + 1] === undefined ? samples : Math.round((times[i + 1]! - CLEAR) * rate);
    const late = i > 0 ? usual - (start - (Math.round(times[i - 1]! * rate) - before)) : undefined;
    return { start, length: start < last ? 0 : Math.min(longest, next - start, samples - start), late: late !== undefined && Math.abs(late) <= NEAR_PERIOD * usual ? late : undefined };
  });
}
