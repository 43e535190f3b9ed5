import { RealFourier, transformSize } from '../../methods/signal/index.ts';
import { addTurn, answer, jointResponses, jointSums, spectrum, type Inputs, type Spectrum } from './joint-response.ts';

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
    through(headGate, samples, start, piece);
    fourier.forward(piece, own.re, own.im, 0, head);
    through(lastGate, samples, start - last, piece);
    fourier.forward(piece, late.re, late.im, 0, last);
  };
  const inputsOf = (i: number): Inputs => {
    later(usable[i - 1] ? kept[(i - 1) % kept.length]!.own : undefined, blows[i]!.late, size, shifted);
    return [kept[i % kept.length]!.own, kept[i % kept.length]!.last, shifted];
  };

  const sums = jointSums(bins);
  for (const [i, turn] of blows.entries()) {
    if (usable[i]) listen(i);
    if (!used[i]) continue;
    fourier.forward(samples, heard.re, heard.im, turn.start, turn.length);
    addTurn(sums, inputsOf(i), heard);
  }
  const responses = jointResponses(sums, count);
  const row = new Float64Array(size);
  const shares = sharesReached(blows.filter((_, i) => used[i]), longest);
  for (const one of responses.toReversed()) {
    fourier.inverse(one.re, one.im, row);
    evenOut(row, shares, head);
    fourier.forward(row, one.re, one.im);
  }
  const response = row.slice(0, longest);
  const steps = Float64Array.from({ length: fade }, (_, place) => rise(place, fade));
  for (const [i, turn] of blows.entries()) {
    if (usable[i] && !keeps) listen(i);
    if (!used[i]) continue;
    answer(inputsOf(i), responses, heard);
    fourier.inverse(heard.re, heard.im, row);
    takeOut(out, turn, row, head, steps);
  }
  return { dry: out, response };
}

// What follows goes over every sample or bin of every turn. Functions of their own are compiled once and kept; within
// the function above they would be compiled again for every recording.

/** Samples from one on, through a gate. */
function through(gate: Float64Array, samples: Float32Array, from: number, into: Float64Array): void {
  for (let k = 0; k < gate.length; k++) into[k] = gate[k]! * samples[from + k]!;
}

/** The blow before a turn, as it would stand if it had fallen a usual period before it plus what it fell late; silence where there is none. */
function later(previous: Spectrum | undefined, late: number | undefined, size: number, into: Spectrum): void {
  const { re, im } = into;
  if (late === undefined || previous === undefined) {
    re.fill(0);
    im.fill(0);
    return;
  }
  const [pRe, pIm] = [previous.re, previous.im];
  const angle = (-2 * Math.PI * late) / size;
  const [stepC, stepS] = [Math.cos(angle), Math.sin(angle)];
  let c = 1;
  let s = 0;
  for (let k = 0; k < re.length; k++) {
    const x = pRe[k]!;
    const y = pIm[k]!;
    re[k] = x * c - y * s;
    im[k] = x * s + y * c;
    const next = c * stepC - s * stepS;
    s = c * stepS + s * stepC;
    c = next;
  }
}

/** Share of the turns that reach each delay. */
function sharesReached(turns: readonly Turn[], longest: number): Float64Array {
  const ending = new Float64Array(longest + 1);
  for (const { length } of turns) ending[length] = ending[length]! + 1 / turns.length;
  const shares = new Float64Array(longest);
  let share = 1;
  for (let i = 0; i < longest; i++) shares[i] = share -= ending[i]!;
  return shares;
}

/** A response at late delays rests on fewer turns; each delay is divided by the share of turns that reach it. Delays before the onset are wrapped to the end of the row. */
function evenOut(row: Float64Array, shares: Float64Array, head: number): void {
  for (let i = 0; i < shares.length; i++) row[i] = shares[i]! >= LEAST_REACHED ? row[i]! / shares[i]! : 0;
  row.fill(0, shares.length, Math.max(shares.length, row.length - head));
}

/** Takes a prediction out of a turn, faded in at the end of the blow and out at the end of the turn. */
function takeOut(out: Float32Array, { start, length }: Turn, row: Float64Array, head: number, steps: Float64Array): void {
  const fade = steps.length;
  for (let k = head - fade; k < length; k++) {
    const [begun, left] = [k - head + fade, length - 1 - k];
    const share = (begun < fade ? steps[begun]! : 1) * (left < fade ? steps[left]! : 1);
    out[start + k] = out[start + k]! - share * row[k]!;
  }
}

function gate(length: number, fade: number): Float64Array {
  const out = new Float64Array(length);
  for (let i = 0; i < length; i++) out[i] = rise(Math.min(i, length - 1 - i), fade);
  return out;
}

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
