import { workOut, type Ledger } from '../ledger.ts';

/**
 * Blow energy and what the anvil makes of it. Until the motion of this very hammer is worked out, the impact speed comes
 * from the crank-pin speed times the whip of a healthy spring hammer, and everything that rests on it is an estimate.
 */
export function workOutBlow(ledger: Ledger): void {
  workOut(ledger, {
    key: 'capacity.impact-speed', title: 'impact speed of the ram', dimension: 'velocity', formula: 'whip x 2 pi x rate x throw',
    sources: ['own-model'], inputs: ['practice.whip', 'running.rate|drive.rate|class.working-rate', 'crank.throw|class.crank-throw'],
    work: (whip, rate, crankThrow) => whip! * 2 * Math.PI * rate! * crankThrow!,
  });
  workOut(ledger, {
    key: 'capacity.blow-energy', title: 'energy of a full blow', dimension: 'energy', formula: 'ram mass x impact speed² / 2',
    sources: ['own-model'], inputs: ['ram.mass|class.ram-mass', 'capacity.impact-speed'], work: (mass, speed) => (mass! * speed! ** 2) / 2,
  });
  workOut(ledger, {
    key: 'capacity.anvil-ratio', title: 'anvil to ram', dimension: 'ratio', formula: 'anvil mass / ram mass', sources: ['common-practice'],
    inputs: ['anvil.mass', 'ram.mass|class.ram-mass'], work: (anvil, ram) => anvil! / ram!,
  });
  workOut(ledger, {
    key: 'capacity.blow-efficiency', title: 'share of the blow that goes into hot work', dimension: 'ratio', formula: '(1 - e²) R / (R + 1)',
    sources: ['rigid-body-mechanics'], inputs: ['practice.restitution-hot', 'capacity.anvil-ratio|class.anvil-ratio'],
    work: (rebound, ratio) => ((1 - rebound! ** 2) * ratio!) / (ratio! + 1),
  });
  for (const [key, title] of [['capacity.largest-bar-by-class', 'largest bar for steady work, usual for the class'], ['capacity.largest-bar', 'largest bar for steady work']] as const) {
    workOut(ledger, {
      key, title, dimension: 'length', formula: 'usual for the class x (rate / usual rate), never above usual',
      sources: ['common-practice'], inputs: ['class.largest-bar', 'running.rate|drive.rate|class.working-rate', 'class.working-rate'],
      work: (bar, rate, usual) => bar! * Math.min(1, rate! / usual!),
    });
  }
}
