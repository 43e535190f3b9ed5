import { workOut, type Ledger } from '../ledger.ts';

/** Clearance of the main bearings against the shaft, what to take out of the shims, and what is then left. */
export function workOutJournals(ledger: Ledger): void {
  for (const end of ['front', 'rear']) {
    workOut(ledger, {
      key: `journals.clearance-ratio@${end}`, title: `${end} bearing, clearance per inch of shaft`, dimension: 'taper', formula: 'clearance / shaft diameter',
      sources: ['sleeve-bearing-table'], inputs: [`main-bearings.clearance@${end}`, `main-shaft.diameter@${end}|main-shaft.diameter`],
      work: (clearance, diameter) => clearance! / diameter!,
    });
    workOut(ledger, {
      key: `journals.wanted-clearance@${end}`, title: `${end} bearing, clearance to set`, dimension: 'length', formula: 'clearance per inch of shaft x diameter',
      sources: ['sleeve-bearing-table'], inputs: ['practice.journal-clearance', `main-shaft.diameter@${end}|main-shaft.diameter`], work: (ratio, diameter) => ratio! * diameter!,
    });
    workOut(ledger, {
      key: `journals.shims-to-remove@${end}`, title: `${end} bearing, shim to take out at each side`, dimension: 'length', formula: 'clearance - clearance to set, never below nothing',
      sources: ['sleeve-bearing-table', 'common-practice'], inputs: [`main-bearings.clearance@${end}`, `journals.wanted-clearance@${end}`],
      work: (clearance, wanted) => Math.max(0, clearance! - wanted!),
      words: 'Take the same from both sides, 0.001 to 0.002 in at a time, and turn the shaft by hand after each.',
    });
    workOut(ledger, {
      key: `journals.shims-left-after@${end}`, title: `${end} bearing, shim there beyond what has to come out, each side`, dimension: 'length', formula: 'shims now - shim to take out; below nothing where there are too few',
      sources: ['common-practice'], inputs: [`bearing-caps.shims@${end}`, `journals.shims-to-remove@${end}`], work: (shims, out) => shims! - out!,
    });
  }
}

/** Clutch play: the radial play of the pulley on its bush, under the name by which the trade judges it. */
export function workOutClutch(ledger: Ledger): void {
  workOut(ledger, {
    key: 'clutch.play', title: 'play of the clutch pulley', dimension: 'length', formula: 'total radial play at the bush', sources: ['owners-practice'],
    inputs: ['clutch-pulley.play'], work: (play) => play,
  });
}
