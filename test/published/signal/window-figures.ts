import type { WindowName } from '../../../src/methods/signal/index.ts';

/**
 * F. J. Harris, On the use of windows for harmonic analysis with the discrete Fourier transform, Proc. IEEE 66 (1978)
 * 51-83, Table I, as printed (typed in from memory of the table): highest side lobe (dB), coherent gain, equivalent
 * noise bandwidth (bins), scallop loss (dB).
 *
 * Two printed figures do not follow from the printed weights, and have a tolerance of their own: the Hamming window's
 * scallop loss (1.78; 0.54 and 0.46 give 1.75) and the side lobe of the three-term window (-67; its weights give -71,
 * which A. H. Nuttall, IEEE Trans. ASSP 29 (1981) 84 found as well).
 */
export const WINDOW_ROWS: readonly { name: WindowName; sideLobe: number; gain: number; bandwidth: number; scallop: number; scallopWithin?: number; sideLobeWithin?: number; firstNull: number }[] = [
  { name: 'rectangle', sideLobe: -13, gain: 1, bandwidth: 1, scallop: 3.92, firstNull: 1 },
  { name: 'hann', sideLobe: -32, gain: 0.5, bandwidth: 1.5, scallop: 1.42, firstNull: 2 },
  { name: 'hamming', sideLobe: -43, gain: 0.54, bandwidth: 1.36, scallop: 1.78, scallopWithin: 0.035, firstNull: 2 },
  { name: 'blackman', sideLobe: -58, gain: 0.42, bandwidth: 1.73, scallop: 1.1, firstNull: 3 },
  { name: 'blackman-harris-3', sideLobe: -67, sideLobeWithin: 4.2, gain: 0.42, bandwidth: 1.71, scallop: 1.13, firstNull: 3 },
  { name: 'blackman-harris-4', sideLobe: -92, gain: 0.36, bandwidth: 2, scallop: 0.83, firstNull: 4 },
];
