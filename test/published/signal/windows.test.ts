import { describe, expect, it } from 'vitest';
import { coherentGain, noiseBandwidthBins, responseAt, scallopLossDecibels, window } from '../../../src/methods/signal/index.ts';
import { WINDOW_ROWS } from './window-figures.ts';

describe('windows, against Harris 1978, Table I', () => {
  for (const row of WINDOW_ROWS)
    it(row.name, () => {
      const w = window(row.name, 2048);
      let side = 0;
      for (let bins = row.firstNull + 0.02; bins < 40; bins += 0.05) side = Math.max(side, responseAt(w, bins));
      const sideLobe = 20 * Math.log10(side / responseAt(w, 0));
      const off = { gain: coherentGain(w) - row.gain, bandwidth: noiseBandwidthBins(w) - row.bandwidth, scallop: scallopLossDecibels(w) - row.scallop, sideLobe: sideLobe - row.sideLobe };
      console.log(`${row.name}: off by`, JSON.stringify(off));
      // Half of the last printed digit.
      expect(Math.abs(off.gain)).toBeLessThan(0.0051);
      expect(Math.abs(off.bandwidth)).toBeLessThan(0.0051);
      expect(Math.abs(off.scallop)).toBeLessThan(row.scallopWithin ?? 0.0051);
      expect(Math.abs(off.sideLobe)).toBeLessThan(row.sideLobeWithin ?? 0.56);
    });
});
