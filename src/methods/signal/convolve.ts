import { RealFourier, transformSize } from './real-fourier.ts';

/**
 * A long row through a finite response, by overlap and add (Stockham, AFIPS 28 (1966) 229).
 * @returns as long as the row; what rings on beyond its end is cut off
 */
export function convolve(row: Float64Array, response: Float64Array): Float64Array {
  const size = transformSize(Math.max(1024, 2 * response.length));
  const block = size - response.length + 1;
  const fourier = new RealFourier(size);
  const [hRe, hIm, xRe, xIm] = [0, 0, 0, 0].map(() => new Float64Array(fourier.bins)) as [Float64Array, Float64Array, Float64Array, Float64Array];
  fourier.forward(response, hRe, hIm, 0, response.length);
  const piece = new Float64Array(size);
  const out = new Float64Array(row.length);
  for (let start = 0; start < row.length; start += block) {
    fourier.forward(row, xRe, xIm, start, Math.min(block, row.length - start));
    for (let k = 0; k < fourier.bins; k++) {
      const re = xRe[k]! * hRe[k]! - xIm[k]! * hIm[k]!;
      xIm[k] = xRe[k]! * hIm[k]! + xIm[k]! * hRe[k]!;
      xRe[k] = re;
    }
    fourier.inverse(xRe, xIm, piece);
    const end = Math.min(size, row.length - start);
    for (let i = 0; i < end; i++) out[start + i] = out[start + i]! + piece[i]!;
  }
  return out;
}
