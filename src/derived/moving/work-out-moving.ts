import { putRanged, type Ranged } from '../capacity/index.ts';
import { put, workOut, type Ledger } from '../ledger.ts';
import type { Known } from '../survey/index.ts';
import type { Outcome } from '../value.ts';
import { GRAVITY, GRAVITY_BASIS, type Standing } from './gravity.ts';
import { movingInputOf } from './input-of-survey.ts';
import { machineMassOfClass } from './machine-mass.ts';
import { movingOf } from './moving-of.ts';

const MASS = 'whole-machine.mass|class.machine-mass';
const INPUTS = [MASS, 'anvil.mass', 'ram.mass|class.ram-mass', 'frame.height', 'frame.seat-height', 'main-shaft.height', 'frame.base-length', 'frame.base-width'];

/** How heavy the machine is, how high its weight sits, and at what lean it goes over. @param seed of the picture */
export function workOutMoving(ledger: Ledger, known: Known, seed: number): void {
  const usual = machineMassOfClass(known.identity.ramClass.quantity.value);
  put(ledger, {
    key: 'class.machine-mass', title: 'usual weight of a machine of the class', standing: 'assumed', rests: 'assumed', from: [], sources: ['common-practice'], evidence: [], words: 'usual for the ram class; this hammer was not weighed for it',
    outcome: { state: 'known', quantity: { dimension: 'mass', value: usual.value, uncertainty: usual.uncertainty } },
  });
  workOut(ledger, { key: 'moving.machine-mass', title: 'weight of the machine', dimension: 'mass', formula: 'weighed, or usual for the class', sources: ['common-practice'], inputs: [MASS], work: (mass) => mass! });
  const answer = movingOf(movingInputOf(Object.fromEntries(ledger.values), known), seed);
  const refused: Exclude<Outcome, { state: 'known' }> | undefined = answer.state === 'known' ? undefined : { state: 'outside-validity', because: answer.problems.map((problem) => problem.sentence).join('; ') };
  const of = (pick: (standing: Standing) => Ranged): Ranged | Exclude<Outcome, { state: 'known' }> => {
    if (answer.state !== 'known') return refused!;
    return 'state' in answer.whole ? answer.whole : pick(answer.whole);
  };
  const common = { sources: ['from-memory', 'rigid-body-mechanics'], inputs: INPUTS, words: GRAVITY_BASIS, dimension: 'angle' as const, formula: 'atan(distance to the edge of the base / height of the centre of gravity)' };
  putRanged(ledger, { ...common, key: 'moving.gravity-height', title: 'height of the centre of gravity', dimension: 'length', formula: 'sum of mass x height of anvil, column, ram and shaft / mass' }, of((one) => one.gravityHeight));
  putRanged(ledger, { ...common, key: 'moving.tip-angle-side', title: 'lean at which it goes over sideways' }, of((one) => one.sideways));
  putRanged(ledger, { ...common, key: 'moving.tip-angle-forwards', title: 'lean at which it goes over forwards' }, of((one) => one.forwards));
  putRanged(ledger, { ...common, key: 'moving.tip-angle-backwards', title: 'lean at which it goes over backwards' }, of((one) => one.backwards));
  workOut(ledger, {
    key: 'moving.floor-pressure', title: 'pressure on the floor under its base, standing', dimension: 'pressure', formula: 'weight / (base length x base width)', sources: ['rigid-body-mechanics'],
    inputs: ['moving.machine-mass', 'frame.base-length', 'frame.base-width'], work: (mass, length, width) => (mass! * GRAVITY) / (length! * width!),
  });
}
