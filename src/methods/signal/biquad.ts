/** A second-order recursive filter, already divided by a0: y = b0 x + b1 x' + b2 x'' - a1 y' - a2 y''. */
export interface Biquad {
  readonly b0: number;
  readonly b1: number;
  readonly b2: number;
  readonly a1: number;
  readonly a2: number;
}

/** Quality of a second-order Butterworth section. */
export const BUTTERWORTH_QUALITY = Math.SQRT1_2;

/**
 * Filters by R. Bristow-Johnson's Cookbook formulae for audio EQ biquad filter coefficients (W3C note, 2021).
 * @param kind `band-pass` has unit gain at its centre
 * @param frequency corner or centre, Hz, above 0 and below half the rate
 * @param rate samples a second, Hz
 * @param quality above 0; 0.7071 gives a Butterworth corner
 */
export function biquad(kind: 'low-pass' | 'high-pass' | 'band-pass' | 'notch', frequency: number, rate: number, quality = BUTTERWORTH_QUALITY): Biquad {
  if (!(frequency > 0 && frequency < rate / 2 && quality > 0))
    throw new Error(`A filter's frequency lies between 0 and half the rate, its quality above 0: ${frequency} Hz at ${rate} Hz, quality ${quality}`);
  const turn = (2 * Math.PI * frequency) / rate;
  const cosine = Math.cos(turn);
  const alpha = Math.sin(turn) / (2 * quality);
  const a0 = 1 + alpha;
  const a1 = (-2 * cosine) / a0;
  const a2 = (1 - alpha) / a0;
  switch (kind) {
    case 'low-pass':
      return { b0: (1 - cosine) / 2 / a0, b1: (1 - cosine) / a0, b2: (1 - cosine) / 2 / a0, a1, a2 };
    case 'high-pass':
      return { b0: (1 + cosine) / 2 / a0, b1: -(1 + cosine) / a0, b2: (1 + cosine) / 2 / a0, a1, a2 };
    case 'band-pass':
      return { b0: alpha / a0, b1: 0, b2: -alpha / a0, a1, a2 };
    case 'notch':
      return { b0: 1 / a0, b1: (-2 * cosine) / a0, b2: 1 / a0, a1, a2 };
  }
}

/** Gain of a filter at a frequency, 0 or more. @param frequency Hz @param rate Hz */
export function gainAt(filter: Biquad, frequency: number, rate: number): number {
  const turn = (2 * Math.PI * frequency) / rate;
  const [c1, s1, c2, s2] = [Math.cos(turn), Math.sin(turn), Math.cos(2 * turn), Math.sin(2 * turn)];
  const top = Math.hypot(filter.b0 + filter.b1 * c1 + filter.b2 * c2, filter.b1 * s1 + filter.b2 * s2);
  return top / Math.hypot(1 + filter.a1 * c1 + filter.a2 * c2, filter.a1 * s1 + filter.a2 * s2);
}

/** A row of samples through a filter, from rest. @param into receives the result; may be the input itself */
export function filterThrough(filter: Biquad, samples: Float64Array | Float32Array, into: Float64Array | Float32Array): void {
  const { b0, b1, b2, a1, a2 } = filter;
  let s1 = 0;
  let s2 = 0;
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i]!;
    const y = b0 * x + s1;
    s1 = b1 * x - a1 * y + s2;
    s2 = b2 * x - a2 * y;
    into[i] = y;
  }
}
