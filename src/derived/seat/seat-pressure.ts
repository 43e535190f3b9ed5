import { greyIronClass } from '../../methods/elements/index.ts';
import { quantity } from '../../methods/quantity/index.ts';
import { put, workOut, type Ledger } from '../ledger.ts';
import type { Known } from '../survey/index.ts';

const HANDBOOK = ['asm-forging-hammers', 'from-memory'];

/** Compressive strength of the seat, Pa, by what the seat was found to be made of. Unknown iron counts as the weakest class. */
export function putSeatStrength(ledger: Ledger, known: Known): void {
  const answer = known.looks['seat.iron']?.answer ?? 'not-known';
  const strength = answer === 'steel' ? { value: 700e6, words: 'steel seat or sow block: taken as 700 MPa, from memory', certain: false } : ironStrength(answer);
  put(ledger, {
    key: 'seat.compressive-strength', title: 'compressive strength of the seat', standing: 'assumed', rests: 'assumed', from: [],
    outcome: { state: 'known', quantity: quantity(strength.value, 'pressure', strength.value * (strength.certain ? 0.05 : 0.1)) },
    sources: ['grey-iron-table'], evidence: known.looks['seat.iron'] === undefined ? [] : [known.looks['seat.iron'].entry], words: strength.words,
  });
}

function ironStrength(answer: string): { readonly value: number; readonly words: string; readonly certain: boolean } {
  const found = /^grey-iron-(20|25|30|35|40)$/.exec(answer)?.[1];
  const iron = greyIronClass(found === undefined ? 20 : Number(found));
  if (iron === undefined) throw new Error(`grey iron class ${found ?? 20} is not in the table`);
  return found === undefined
    ? { value: iron.compressiveStrength, words: 'iron not known: taken as grey iron class 20, the weakest of the table', certain: false }
    : { value: iron.compressiveStrength, words: `grey iron class ${found}`, certain: true };
}

/**
 * Peak force of a hard blow over the lower die's footprint, against the iron of the seat: why a narrow die sinks.
 * Hot work: the load rises from a third to its peak over the stopping distance, P = 3 E / (2 h) (ASM Handbook vol. 14,
 * hammers and presses, eq. 11 to 13). Die on die: a linear spring, P = 2 E / d.
 */
export function workOutSeatPressure(ledger: Ledger): void {
  workOut(ledger, {
    key: 'seat-pressure.peak-force-cold', title: 'peak force, die on die cold', dimension: 'force', formula: '2 x blow energy / stopping distance',
    sources: HANDBOOK, inputs: ['capacity.blow-energy', 'practice.stop-hard'], work: (energy, stop) => (2 * energy!) / stop!,
    words: 'What a blow with nothing between the dies does. It must never happen; the figure shows why.',
  });
  workOut(ledger, {
    key: 'seat-pressure.peak-force-hot', title: 'peak force, hot work', dimension: 'force', formula: '3 x blow energy x efficiency / (2 x stopping distance)',
    sources: HANDBOOK, inputs: ['capacity.blow-energy', 'capacity.blow-efficiency', 'practice.stop-hot'], work: (energy, efficiency, stop) => (3 * energy! * efficiency!) / (2 * stop!),
  });
  for (const [id, words] of [['cold', 'die on die cold'], ['hot', 'hot work']] as const) {
    workOut(ledger, {
      key: `seat-pressure.${id}-pressure`, title: `peak pressure on the seat, ${words}`, dimension: 'pressure', formula: 'peak force / (die width x die length)',
      sources: HANDBOOK, inputs: [`seat-pressure.peak-force-${id}`, 'lower-die.width', 'lower-die.length'], work: (force, width, length) => force! / (width! * length!),
    });
    workOut(ledger, {
      positive: true, key: `seat-pressure.${id}-share`, title: `share of the seat's strength used, ${words}`, dimension: 'ratio', formula: 'peak pressure / compressive strength',
      sources: [...HANDBOOK, 'grey-iron-table'], inputs: [`seat-pressure.${id}-pressure`, 'seat.compressive-strength'], work: (pressure, strength) => pressure! / strength!,
    });
  }
  workOut(ledger, {
    positive: true, key: 'seat-pressure.least-width', title: 'least width of a lower die for this seat', dimension: 'length', formula: 'peak force cold / (share to keep x strength x die length)',
    sources: [...HANDBOOK, 'grey-iron-table'], inputs: ['seat-pressure.peak-force-cold', 'practice.seat-share', 'seat.compressive-strength', 'lower-die.length'],
    work: (force, share, strength, length) => force! / (share! * strength! * length!),
  });
}
