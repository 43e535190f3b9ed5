import { workOut, put, type Ledger } from '../ledger.ts';
import type { Value } from '../value.ts';

const PRACTICE = ['common-practice'];

/**
 * The die stack: net heights above the seat's true base, loss against as made, the filler plate that makes the seat good,
 * the clearance left between linkage and guide with the dies closed, and the least work thickness that keeps it.
 */
export function workOutStack(ledger: Ledger): void {
  workOutLowerNet(ledger);
  workOut(ledger, {
    key: 'stack.upper-net', title: 'upper die, net height', dimension: 'length', formula: 'height from dovetail floor to face',
    sources: PRACTICE, inputs: ['upper-die.height'], work: (height) => height,
  });
  workOut(ledger, {
    key: 'stack.loss-upper', title: 'height lost by the upper die', dimension: 'length', formula: 'as made - now',
    sources: PRACTICE, inputs: ['upper-die.height#as-made', 'stack.upper-net'], work: (made, now) => made! - now!,
  });
  workOut(ledger, {
    key: 'stack.loss-lower', title: 'height lost by the lower die, seat included', dimension: 'length', formula: 'as made - net now',
    sources: PRACTICE, inputs: ['lower-die.height#as-made', 'stack.lower-net'], work: (made, now) => made! - now!,
  });
  workOut(ledger, {
    key: 'stack.loss', title: 'height lost by the whole stack', dimension: 'length', formula: 'loss of upper die + loss of lower die',
    sources: PRACTICE, inputs: ['stack.loss-upper', 'stack.loss-lower'], work: (upper, lower) => upper! + lower!,
  });
  workOut(ledger, {
    key: 'stack.filler-plate', title: 'filler plate that makes the seat good', dimension: 'length',
    formula: 'thickness = depth lost by the seat - plate already in', sources: PRACTICE,
    inputs: ledger.values.has('filler-plate.thickness') ? ['seat.sunk', 'filler-plate.thickness'] : ['seat.sunk'],
    work: (sunk, plate = 0) => Math.max(0, sunk! - plate),
    words: 'Fit the plate before a new lower die is measured for height.',
  });
  workOutClearance(ledger);
  workOut(ledger, {
    key: 'stack.rest-gap', title: 'gap between the dies at bottom dead centre', dimension: 'length', formula: 'read with the crank turned by hand',
    sources: PRACTICE, inputs: ['upper-die.rest-gap'], work: (gap) => gap,
  });
  workOut(ledger, {
    key: 'stack.least-work-thickness', title: 'least work thickness', dimension: 'length', families: ['coil-and-toggle', 'bow-spring'],
    whyNot: 'a helve has no linkage over a guide', formula: 'clearance to keep - clearance with the dies closed, never below nothing',
    sources: PRACTICE, inputs: ['practice.linkage-margin', 'stack.linkage-clearance'],
    work: (margin, clearance) => Math.max(0, margin! - clearance!),
    words: 'Work of this thickness opens the linkage from the guide again. Die on die cold is never allowed, whatever the figure.',
  });
  workOut(ledger, {
    key: 'stack.thread-left-share', title: 'rod thread left to lengthen, in thread diameters', dimension: 'ratio', formula: 'thread left / thread diameter',
    sources: PRACTICE, inputs: ['connecting-rod.thread-left', 'connecting-rod.thread-diameter'], work: (left, diameter) => left! / diameter!,
  });
  for (const end of ['upper', 'lower']) {
    workOut(ledger, {
      key: `stack.thread-engagement-share@${end}`, title: `rod thread engaged at the ${end} end, in thread diameters`, dimension: 'ratio',
      formula: 'thread engaged / thread diameter', sources: PRACTICE,
      inputs: [`connecting-rod.thread-engagement@${end}`, 'connecting-rod.thread-diameter'], work: (engaged, diameter) => engaged! / diameter!,
    });
  }
}

/** A sunk die measured on the bench or from the rim is not its net height: the way of measuring decides the sum. */
function workOutLowerNet(ledger: Ledger): void {
  const reading = ledger.values.get('lower-die.height');
  const way = reading?.way ?? 'above-seat-base';
  const common = { key: 'stack.lower-net', title: 'lower die, net height above the seat\'s true base', dimension: 'length' as const, sources: PRACTICE };
  if (way === 'whole-die') {
    workOut(ledger, { ...common, formula: 'height of the die on the bench - depth sunk + filler plate', inputs: ledger.values.has('filler-plate.thickness') ? ['lower-die.height', 'seat.sunk', 'filler-plate.thickness'] : ['lower-die.height', 'seat.sunk'], work: (height, sunk, plate = 0) => height! - sunk! + plate });
  } else if (way === 'above-seat-rim') {
    workOut(ledger, { ...common, formula: 'height above the rim + depth of the seat from rim to true base', inputs: ['lower-die.height', 'seat.depth'], work: (height, depth) => height! + depth! });
  } else {
    workOut(ledger, { ...common, formula: 'measured above the seat\'s true base', inputs: ['lower-die.height'], work: (height) => height });
  }
}

/** Measured clearance counts; where nobody measured it, the loss of the stack has eaten the clearance as made. */
function workOutClearance(ledger: Ledger): void {
  const common = {
    key: 'stack.linkage-clearance', title: 'clearance between linkage and guide, dies closed', dimension: 'length' as const, sources: PRACTICE,
    families: ['coil-and-toggle', 'bow-spring'] as const, whyNot: 'a helve has no linkage over a guide',
  };
  if (ledger.values.has('ram-guide.linkage-clearance')) {
    workOut(ledger, { ...common, formula: 'measured with the dies closed', inputs: ['ram-guide.linkage-clearance'], work: (clearance) => clearance });
    return;
  }
  const made = ledger.values.get('ram-guide.linkage-clearance#as-made');
  if (made !== undefined) {
    const value = workOut(ledger, { ...common, formula: 'clearance as made - height lost by the stack', inputs: ['ram-guide.linkage-clearance#as-made', 'stack.loss'], work: (clearance, loss) => clearance! - loss! });
    put(ledger, { ...value, warning: 'worked out, not measured: close the dies by hand and measure it' });
    return;
  }
  put(ledger, notKnown(common.key, common.title, 'ram-guide.linkage-clearance', ledger.family === 'helve'));
}

const notKnown = (key: string, title: string, missing: string, helve: boolean): Value => ({
  key, title, standing: 'worked-out', rests: 'measured', from: [missing], sources: PRACTICE, evidence: [],
  outcome: helve ? { state: 'does-not-apply', because: 'a helve has no linkage over a guide' } : { state: 'not-known', missing: [missing] },
});
