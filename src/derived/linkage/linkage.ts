import { workOut, type Ledger } from '../ledger.ts';

const CORNERS = ['upper-left', 'upper-right', 'lower-left', 'lower-right'] as const;

/** Lost motion of the toggles: what matters is the sum of the four joints. */
export function workOutLinkage(ledger: Ledger): void {
  const common = { families: ['coil-and-toggle'] as const, whyNot: 'this hammer has no toggles', sources: ['common-practice'] };
  workOut(ledger, {
    ...common, key: 'linkage.pin-play-sum', title: 'play of the toggle pins together', dimension: 'length', formula: 'sum over the four joints',
    inputs: CORNERS.map((at) => `toggle-pins.play@${at}`), work: (...plays) => plays.reduce((sum, play) => sum + play, 0),
  });
  workOut(ledger, {
    ...common, key: 'linkage.arm-mismatch', title: 'difference between the toggle arms', dimension: 'length', formula: '|left - right|',
    inputs: ['toggle-arms.length@left', 'toggle-arms.length@right'], work: (left, right) => Math.abs(left! - right!),
  });
}
