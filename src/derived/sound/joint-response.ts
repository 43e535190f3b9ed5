/** Spectrum of one stretch, as many values as there are bins. */
export interface Spectrum {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Three inputs of a turn. */
export type Inputs = readonly [Spectrum, Spectrum, Spectrum];

export const spectrum = (bins: number): Spectrum => ({ re: new Float64Array(bins), im: new Float64Array(bins) });

const COUNT = 3;
/** Sums kept for each bin: powers of the three inputs and of what was heard, then the six mutual spectra in two parts each. */
const SUMS = 16;

export const jointSums = (bins: number): Float64Array => new Float64Array(SUMS * bins);

/** Adds a turn, its inputs and what was heard, to the sums from which the responses follow. All in one sweep, for speed. */
export function addTurn(sums: Float64Array, [a, b, c]: Inputs, heard: Spectrum): void {
  const [aRe, aIm, bRe, bIm, cRe, cIm, yRe, yIm] = [a.re, a.im, b.re, b.im, c.re, c.im, heard.re, heard.im];
  for (let k = 0, p = 0; k < yRe.length; k++, p += SUMS) {
    const [ar, ai, br, bi] = [aRe[k]!, aIm[k]!, bRe[k]!, bIm[k]!];
    const [cr, ci, yr, yi] = [cRe[k]!, cIm[k]!, yRe[k]!, yIm[k]!];
    sums[p] = sums[p]! + ar * ar + ai * ai;
    sums[p + 1] = sums[p + 1]! + br * br + bi * bi;
    sums[p + 2] = sums[p + 2]! + cr * cr + ci * ci;
    sums[p + 3] = sums[p + 3]! + yr * yr + yi * yi;
    sums[p + 4] = sums[p + 4]! + ar * br + ai * bi;
    sums[p + 5] = sums[p + 5]! + ar * bi - ai * br;
    sums[p + 6] = sums[p + 6]! + ar * cr + ai * ci;
    sums[p + 7] = sums[p + 7]! + ar * ci - ai * cr;
    sums[p + 8] = sums[p + 8]! + br * cr + bi * ci;
    sums[p + 9] = sums[p + 9]! + br * ci - bi * cr;
    sums[p + 10] = sums[p + 10]! + ar * yr + ai * yi;
    sums[p + 11] = sums[p + 11]! + ar * yi - ai * yr;
    sums[p + 12] = sums[p + 12]! + br * yr + bi * yi;
    sums[p + 13] = sums[p + 13]! + br * yi - bi * yr;
    sums[p + 14] = sums[p + 14]! + cr * yr + ci * yi;
    sums[p + 15] = sums[p + 15]! + cr * yi - ci * yr;
  }
}

/** Part of each input's own power that keeps inputs apart which are nearly the same. */
const RIDGE = 1e-6;

/**
 * The responses to the three inputs together, by least squares at each frequency, each frequency shrunk by the multiple
 * coherence less what as many inputs would explain by chance (multiple input linear models: J. S. Bendat and A. G. Piersol,
 * Random Data, section 7.3; from memory).
 * @param sums over the turns
 * @param turns how many, more than three
 */
export function jointResponses(sums: Float64Array, turns: number): Inputs {
  const bins = sums.length / SUMS;
  const out: Inputs = [spectrum(bins), spectrum(bins), spectrum(bins)];
  const width = COUNT + 1;
  const [re, im] = [new Float64Array(COUNT * width), new Float64Array(COUNT * width)];
  const chance = COUNT / turns;
  for (let k = 0, p = 0; k < bins; k++, p += SUMS) {
    mutual(re, im, width, 0, 1, sums[p + 4]!, sums[p + 5]!);
    mutual(re, im, width, 0, 2, sums[p + 6]!, sums[p + 7]!);
    mutual(re, im, width, 1, 2, sums[p + 8]!, sums[p + 9]!);
    for (let a = 0; a < COUNT; a++) {
      re[a * width + a] = sums[p + a]! * (1 + RIDGE) + 1e-300;
      im[a * width + a] = 0;
      re[a * width + COUNT] = sums[p + 10 + 2 * a]!;
      im[a * width + COUNT] = sums[p + 11 + 2 * a]!;
    }
    solve(re, im, COUNT);
    let explained = 0;
    for (let a = 0; a < COUNT; a++) explained += re[a * width + COUNT]! * sums[p + 10 + 2 * a]! + im[a * width + COUNT]! * sums[p + 11 + 2 * a]!;
    const coherence = sums[p + 3]! > 0 ? Math.min(1, Math.max(0, explained / sums[p + 3]!)) : 0;
    const keep = coherence > chance ? (coherence - chance) / (1 - chance) / coherence : 0;
    for (let a = 0; a < COUNT; a++) {
      out[a]!.re[k] = keep * re[a * width + COUNT]!;
      out[a]!.im[k] = keep * im[a * width + COUNT]!;
    }
  }
  return out;
}

/** What the inputs give through the responses. @param into is overwritten */
export function answer([a, b, c]: Inputs, [f, g, h]: Inputs, into: Spectrum): void {
  const [aRe, aIm, bRe, bIm, cRe, cIm] = [a.re, a.im, b.re, b.im, c.re, c.im];
  const [fRe, fIm, gRe, gIm, hRe, hIm] = [f.re, f.im, g.re, g.im, h.re, h.im];
  const { re, im } = into;
  for (let k = 0; k < re.length; k++) {
    re[k] = aRe[k]! * fRe[k]! - aIm[k]! * fIm[k]! + bRe[k]! * gRe[k]! - bIm[k]! * gIm[k]! + cRe[k]! * hRe[k]! - cIm[k]! * hIm[k]!;
    im[k] = aRe[k]! * fIm[k]! + aIm[k]! * fRe[k]! + bRe[k]! * gIm[k]! + bIm[k]! * gRe[k]! + cRe[k]! * hIm[k]! + cIm[k]! * hRe[k]!;
  }
}

/** Enters a mutual spectrum and its mirror. */
function mutual(re: Float64Array, im: Float64Array, width: number, a: number, b: number, real: number, imaginary: number): void {
  re[a * width + b] = re[b * width + a] = real;
  im[a * width + b] = imaginary;
  im[b * width + a] = -imaginary;
}

/** Gauss' elimination of a small positive Hermitian system, its right side in the last column, where the answer is left. */
function solve(re: Float64Array, im: Float64Array, count: number): void {
  const width = count + 1;
  for (let a = 0; a < count; a++) {
    const pivot = Math.max(1e-300, re[a * width + a]!);
    for (let b = a + 1; b < count; b++) {
      const [fRe, fIm] = [re[b * width + a]! / pivot, im[b * width + a]! / pivot];
      for (let c = a; c <= count; c++) {
        const [x, y] = [re[a * width + c]!, im[a * width + c]!];
        re[b * width + c] = re[b * width + c]! - fRe * x + fIm * y;
        im[b * width + c] = im[b * width + c]! - fRe * y - fIm * x;
      }
    }
  }
  for (let a = count - 1; a >= 0; a--) {
    let [x, y] = [re[a * width + count]!, im[a * width + count]!];
    for (let b = a + 1; b < count; b++) {
      const [fRe, fIm, gRe, gIm] = [re[a * width + b]!, im[a * width + b]!, re[b * width + count]!, im[b * width + count]!];
      x -= fRe * gRe - fIm * gIm;
      y -= fRe * gIm + fIm * gRe;
    }
    const pivot = Math.max(1e-300, re[a * width + a]!);
    re[a * width + count] = x / pivot;
    im[a * width + count] = y / pivot;
  }
}
