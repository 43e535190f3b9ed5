/**
 * The discrete Fourier transform of real samples, for one size that is a power of two, or three times one.
 *
 * A real row of n samples is packed into n/2 complex ones, transformed by an in-place radix-2 sweep whose passes
 * are merged by twos into one of radix 4, and unpacked by the symmetry of real spectra (Cooley and Tukey,
 * Math. Comp. 19 (1965) 297; the packing is in Brigham, The Fast Fourier Transform, 1974, section 10-10). Of a size
 * with a factor three, each third is swept so, and a pass of radix 3 puts them together.
 * Tables are made once; a transform allocates nothing.
 */
export class RealFourier {
  readonly size: number;
  /** Number of bins from zero to half the sampling rate, both included. */
  readonly bins: number;
  private readonly half: number;
  /** Complex samples in a part that is swept by twos: all of them, or a third. */
  private readonly part: number;
  private readonly order: Uint32Array;
  private readonly cosine: Float64Array;
  private readonly sine: Float64Array;
  private readonly workRe: Float64Array;
  private readonly workIm: Float64Array;

  /** @param size number of samples, a power of two, 4 or more, or three times one; anything else is a programmer's mistake and throws */
  constructor(size: number) {
    const odd = size % 3 === 0 ? 3 : 1;
    if (!Number.isInteger(size) || size < 4 * odd || odd * 2 ** Math.round(Math.log2(size / odd)) !== size)
      throw new Error(`The size of a transform must be a power of two, 4 or more, or three times one: ${size}`);
    this.size = size;
    this.half = size / 2;
    this.part = this.half / odd;
    this.bins = this.half + 1;
    this.cosine = new Float64Array(this.half);
    this.sine = new Float64Array(this.half);
    // The second quarter of the circle is the first one turned.
    const quarter = this.half / 2;
    for (let k = 0; k <= quarter; k++) {
      this.cosine[k] = k === quarter ? 0 : Math.cos((2 * Math.PI * k) / size);
      this.sine[k] = Math.sin((2 * Math.PI * k) / size);
    }
    for (let k = 1; k < quarter; k++) {
      this.cosine[quarter + k] = -this.sine[k]!;
      this.sine[quarter + k] = this.cosine[k]!;
    }
    // Where each sample stands before the sweep: in bit-reversed order, and of three parts every third in each.
    const reversed = new Uint32Array(this.part);
    for (let i = 1; i < this.part; i++) reversed[i] = (reversed[i >> 1]! >> 1) | (i & 1 ? this.part / 2 : 0);
    this.order = new Uint32Array(this.half);
    for (let i = 0; i < this.half; i++) this.order[i] = (i % odd) * this.part + reversed[Math.floor(i / odd)]!;
    this.workRe = new Float64Array(this.half);
    this.workIm = new Float64Array(this.half);
  }

  /**
   * X[k] = sum over n of x[n] exp(-2 pi i k n / size), for k from 0 to size/2.
   * @param samples at least `from + count` long; samples beyond `count` are taken as zero
   * @param re receives the real parts, `bins` long
   * @param im receives the imaginary parts, `bins` long
   * @param from index of the first sample, 0 or more
   * @param count how many samples to take, 0 to size
   */
  forward(samples: Float64Array | Float32Array, re: Float64Array, im: Float64Array, from = 0, count = this.size): void {
    const { half, part, order, workRe, workIm, cosine, sine } = this;
    const end = from + count;
    // Few samples in a long row of zeros: the first passes only repeat each of them.
    let repeats = 1;
    while (repeats < part && 2 * repeats * count <= this.size) repeats *= 2;
    for (let i = 0; i < half / repeats; i++) {
      const at = from + 2 * i;
      const to = order[i]!;
      workRe[to] = at < end ? samples[at]! : 0;
      workIm[to] = at + 1 < end ? samples[at + 1]! : 0;
    }
    if (repeats > 1)
      for (let to = 0; to < half; to += repeats) {
        workRe.fill(workRe[to]!, to, to + repeats);
        workIm.fill(workIm[to]!, to, to + repeats);
      }
    this.sweep(repeats);
    re[0] = workRe[0]! + workIm[0]!;
    im[0] = 0;
    re[half] = workRe[0]! - workIm[0]!;
    im[half] = 0;
    for (let k = 1; k <= half / 2; k++) {
      const m = half - k;
      const evenRe = 0.5 * (workRe[k]! + workRe[m]!);
      const evenIm = 0.5 * (workIm[k]! - workIm[m]!);
      const oddRe = 0.5 * (workIm[k]! + workIm[m]!);
      const oddIm = -0.5 * (workRe[k]! - workRe[m]!);
      const c = cosine[k]!;
      const s = sine[k]!;
      const turnedRe = oddRe * c + oddIm * s;
      const turnedIm = oddIm * c - oddRe * s;
      re[k] = evenRe + turnedRe;
      im[k] = evenIm + turnedIm;
      re[m] = evenRe - turnedRe;
      im[m] = turnedIm - evenIm;
    }
  }

  /**
   * The samples whose transform is given: the inverse of `forward`, scaled by 1/size.
   * @param re real parts, `bins` long
   * @param im imaginary parts, `bins` long; those at zero and at half the rate are taken as zero
   * @param samples receives `size` samples
   */
  inverse(re: Float64Array, im: Float64Array, samples: Float64Array): void {
    const { half, order, workRe, workIm, cosine, sine } = this;
    // The conjugate of the packed spectrum goes through the same sweep.
    const scale = 1 / half;
    workRe[0] = 0.5 * (re[0]! + re[half]!);
    workIm[0] = -0.5 * (re[0]! - re[half]!);
    for (let k = 1; k <= half / 2; k++) {
      const m = half - k;
      const evenRe = 0.5 * (re[k]! + re[m]!);
      const evenIm = 0.5 * (im[k]! - im[m]!);
      const differenceRe = 0.5 * (re[k]! - re[m]!);
      const differenceIm = 0.5 * (im[k]! + im[m]!);
      const c = cosine[k]!;
      const s = sine[k]!;
      const oddRe = differenceRe * c - differenceIm * s;
      const oddIm = differenceRe * s + differenceIm * c;
      workRe[order[k]!] = evenRe - oddIm;
      workIm[order[k]!] = -(evenIm + oddRe);
      workRe[order[m]!] = evenRe + oddIm;
      workIm[order[m]!] = evenIm - oddRe;
    }
    this.sweep();
    for (let i = 0; i < half; i++) {
      samples[2 * i] = workRe[i]! * scale;
      samples[2 * i + 1] = -workIm[i]! * scale;
    }
  }

  /** In-place transform of the half-size complex work row, already in bit-reversed order. @param done length of the pieces that are transformed already */
  private sweep(done = 1): void {
    const { half, part, workRe: re, workIm: im, cosine, sine } = this;
    let span = done;
    if (part >= 4 && done === 1) {
      for (let i = 0; i < half; i += 4) {
        const aRe = re[i]! + re[i + 1]!;
        const aIm = im[i]! + im[i + 1]!;
        const bRe = re[i]! - re[i + 1]!;
        const bIm = im[i]! - im[i + 1]!;
        const cRe = re[i + 2]! + re[i + 3]!;
        const cIm = im[i + 2]! + im[i + 3]!;
        const dRe = re[i + 2]! - re[i + 3]!;
        const dIm = im[i + 2]! - im[i + 3]!;
        re[i] = aRe + cRe;
        im[i] = aIm + cIm;
        re[i + 1] = bRe + dIm;
        im[i + 1] = bIm - dRe;
        re[i + 2] = aRe - cRe;
        im[i + 2] = aIm - cIm;
        re[i + 3] = bRe - dIm;
        im[i + 3] = bIm + dRe;
      }
      span = 4;
    }
    // Two passes in one, which goes through the row half as often.
    for (; 2 * span < part; span *= 4) {
      const fine = half / span / 2; // of the full-size tables: angle 2 pi j / (4 span)
      const far = span * fine;
      for (let start = 0; start < half; start += 4 * span) {
        for (let p = start, near = 0; p < start + span; p++, near += fine) {
          const c = cosine[2 * near]!;
          const s = sine[2 * near]!;
          const c1 = cosine[near]!;
          const s1 = sine[near]!;
          const c2 = cosine[near + far]!;
          const s2 = sine[near + far]!;
          const q = p + span;
          const r = q + span;
          const t = r + span;
          const bRe = re[q]! * c + im[q]! * s;
          const bIm = im[q]! * c - re[q]! * s;
          const dRe = re[t]! * c + im[t]! * s;
          const dIm = im[t]! * c - re[t]! * s;
          const lowRe = re[p]! + bRe;
          const lowIm = im[p]! + bIm;
          const lowOffRe = re[p]! - bRe;
          const lowOffIm = im[p]! - bIm;
          const highRe = re[r]! + dRe;
          const highIm = im[r]! + dIm;
          const highOffRe = re[r]! - dRe;
          const highOffIm = im[r]! - dIm;
          const eRe = highRe * c1 + highIm * s1;
          const eIm = highIm * c1 - highRe * s1;
          const fRe = highOffRe * c2 + highOffIm * s2;
          const fIm = highOffIm * c2 - highOffRe * s2;
          re[p] = lowRe + eRe;
          im[p] = lowIm + eIm;
          re[r] = lowRe - eRe;
          im[r] = lowIm - eIm;
          re[q] = lowOffRe + fRe;
          im[q] = lowOffIm + fIm;
          re[t] = lowOffRe - fRe;
          im[t] = lowOffIm - fIm;
        }
      }
    }
    if (span < part) {
      // One pass is left where their number is odd.
      const fine = half / span;
      for (let start = 0; start < half; start += part) {
        for (let j = 0; j < span; j++) {
          const c = cosine[j * fine]!;
          const s = sine[j * fine]!;
          const a = start + j;
          const b = a + span;
          const turnedRe = re[b]! * c + im[b]! * s;
          const turnedIm = im[b]! * c - re[b]! * s;
          re[b] = re[a]! - turnedRe;
          im[b] = im[a]! - turnedIm;
          re[a] = re[a]! + turnedRe;
          im[a] = im[a]! + turnedIm;
        }
      }
    }
    if (part < half) this.joinThirds();
  }

  /** The last pass of a size with a factor three. */
  private joinThirds(): void {
    const { part, workRe: re, workIm: im, cosine, sine } = this;
    const sin60 = Math.sqrt(0.75);
    for (let a = 0; a < part; a++) {
      const b = a + part;
      const d = b + part;
      // Angles 2 pi a / half and twice that; the second may go beyond half a turn, where the table ends.
      const c1 = cosine[2 * a]!;
      const s1 = sine[2 * a]!;
      const c2 = c1 * c1 - s1 * s1;
      const s2 = 2 * c1 * s1;
      const bRe = re[b]! * c1 + im[b]! * s1;
      const bIm = im[b]! * c1 - re[b]! * s1;
      const dRe = re[d]! * c2 + im[d]! * s2;
      const dIm = im[d]! * c2 - re[d]! * s2;
      const sumRe = bRe + dRe;
      const sumIm = bIm + dIm;
      const middleRe = re[a]! - 0.5 * sumRe;
      const middleIm = im[a]! - 0.5 * sumIm;
      const acrossRe = sin60 * (bIm - dIm);
      const acrossIm = sin60 * (dRe - bRe);
      re[a] = re[a]! + sumRe;
      im[a] = im[a]! + sumIm;
      re[b] = middleRe + acrossRe;
      im[b] = middleIm + acrossIm;
      re[d] = middleRe - acrossRe;
      im[d] = middleIm - acrossIm;
    }
  }
}

/** The smallest size of a transform that is not less than `length`: a power of two, 4 or more, or three times one. */
export function transformSize(length: number): number {
  let size = 4;
  while (size < length) size *= 2;
  return size >= 16 && 0.75 * size >= length ? 0.75 * size : size;
}
