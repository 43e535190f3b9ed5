import { EVERY, GUIDED, HELVE } from '../families.ts';
import type { Criterion } from '../criterion.ts';

/** Criteria for dies, keys and seat. */
export const DIES_AND_SEAT_CRITERIA: readonly Criterion[] = [
  {
    id: 'dies.upper-face', title: 'Face of the upper die', question: 'Is the face of the upper die whole?', part: 'upper-die', rows: [1], families: EVERY,
    rule: { kind: 'seen', look: 'upper-die.face', answers: {
      clean: { grade: 'sound', because: 'Flat, edges rounded, no cracks.', source: 'common-practice' },
      mushroomed: { grade: 'watch', because: 'The edges roll over: the die is soft and wants dressing.', source: 'page-dies', cures: ['dies.dress'] },
      chipped: { grade: 'limited', because: 'A chipped corner is a hard die that may chip again.', source: 'page-dies', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['dies.dress'] },
      cracked: { grade: 'stand-down', because: 'A cracked upper die comes apart in a blow.', source: 'common-practice', cures: ['dies.new-upper'] },
    } },
    gate: false, minutes: 3, cures: ['dies.dress', 'dies.new-upper'], cautions: ['block-ram', 'hands-out'],
    examples: [{ given: 'clean', grade: 'sound', stands: 'plain' }, { given: 'mushroomed', grade: 'watch', stands: 'plain' }, { given: 'chipped', grade: 'limited', stands: 'plain' }, { given: 'cracked', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'dies.lower-face', title: 'Face of the lower die', question: 'Is the face of the lower die whole?', part: 'lower-die', rows: [1], families: EVERY,
    rule: { kind: 'seen', look: 'lower-die.face', answers: {
      clean: { grade: 'sound', because: 'Flat, edges rounded, no cracks.', source: 'common-practice' },
      mushroomed: { grade: 'watch', because: 'The edges roll over: the die is soft and wants dressing.', source: 'page-dies', cures: ['dies.dress'] },
      chipped: { grade: 'limited', because: 'A chipped corner is a hard die that may chip again.', source: 'page-dies', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['dies.dress'] },
      cracked: { grade: 'stand-down', because: 'A cracked lower die comes apart in a blow.', source: 'common-practice', cures: ['dies.new-lower'] },
    } },
    gate: false, minutes: 3, cures: ['dies.dress', 'dies.new-lower'], cautions: ['block-ram', 'hands-out'],
    examples: [{ given: 'clean', grade: 'sound', stands: 'plain' }, { given: 'mushroomed', grade: 'watch', stands: 'plain' }, { given: 'chipped', grade: 'limited', stands: 'plain' }, { given: 'cracked', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'dies.upper-hollow', title: 'Hollow in the upper die', question: 'Is the face of the upper die flat?', part: 'upper-die', rows: [1], families: EVERY,
    rule: { kind: 'measured', value: 'upper-die.hollow', worse: 'more', steps: [
      { grade: 'watch', from: '0.010 in', source: 'common-practice', because: 'Good dies are flat within 0.005 in; this marks the work.', cures: ['dies.dress'] },
      { grade: 'limited', from: '1/16 in', source: 'common-practice', because: 'Bars twist and bend over a hollow this deep.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['dies.grind-pair'] },
    ] },
    gate: false, minutes: 5, cures: ['dies.dress', 'dies.grind-pair'], cautions: ['block-ram'],
    examples: [{ given: '0.009 in', grade: 'sound', stands: 'just under' }, { given: '0.010 in', grade: 'watch', stands: 'at' }, { given: '0.011 in', grade: 'watch', stands: 'just over' }, { given: '0.062 in', grade: 'watch', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'dies.upper-edge', title: 'Edges of the upper die', question: 'Are the edges of the upper die rounded?', part: 'upper-die', rows: [1], families: EVERY,
    rule: { kind: 'measured', value: 'upper-die.edge-radius', worse: 'less', steps: [
      { grade: 'watch', from: '1/32 in', source: 'common-practice', because: 'Sharp edges cut the work and chip; 1/16 to 1/8 in is usual.' },
    ] },
    gate: false, minutes: 3, cures: ['dies.dress'], cautions: ['block-ram'],
    examples: [{ given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'watch', stands: 'at' }, { given: '0.032 in', grade: 'sound', stands: 'just over' }],
  },
  {
    id: 'dies.upper-hardness', title: 'Hardness of the upper die', question: 'Is the upper die tough rather than hard?', part: 'upper-die', rows: [10], families: EVERY,
    rule: { kind: 'seen', look: 'upper-die.hardness', answers: {
      soft: { grade: 'watch', because: 'A soft die mushrooms and is dressed often; it does not fly.', source: 'page-dies', cures: [] },
      tough: { grade: 'sound', because: 'Tough: the file bites a little.', source: 'page-dies' },
      hard: { grade: 'limited', because: 'A die that a file skates over can chip, and chips have killed.', source: 'page-dies', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
    } },
    gate: false, minutes: 3, cures: ['dies.temper'], cautions: ['no-cold-blow', 'eyes'],
    examples: [{ given: 'soft', grade: 'watch', stands: 'plain' }, { given: 'tough', grade: 'sound', stands: 'plain' }, { given: 'hard', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'dies.lower-hollow', title: 'Hollow in the lower die', question: 'Is the face of the lower die flat?', part: 'lower-die', rows: [1], families: EVERY,
    rule: { kind: 'measured', value: 'lower-die.hollow', worse: 'more', steps: [
      { grade: 'watch', from: '0.010 in', source: 'common-practice', because: 'Good dies are flat within 0.005 in; this marks the work.', cures: ['dies.dress'] },
      { grade: 'limited', from: '1/16 in', source: 'common-practice', because: 'Bars twist and bend over a hollow this deep.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['dies.grind-pair'] },
    ] },
    gate: false, minutes: 5, cures: ['dies.dress', 'dies.grind-pair'], cautions: ['block-ram'],
    examples: [{ given: '0.009 in', grade: 'sound', stands: 'just under' }, { given: '0.010 in', grade: 'watch', stands: 'at' }, { given: '0.011 in', grade: 'watch', stands: 'just over' }, { given: '0.062 in', grade: 'watch', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'dies.lower-edge', title: 'Edges of the lower die', question: 'Are the edges of the lower die rounded?', part: 'lower-die', rows: [1], families: EVERY,
    rule: { kind: 'measured', value: 'lower-die.edge-radius', worse: 'less', steps: [
      { grade: 'watch', from: '1/32 in', source: 'common-practice', because: 'Sharp edges cut the work and chip; 1/16 to 1/8 in is usual.' },
    ] },
    gate: false, minutes: 3, cures: ['dies.dress'], cautions: ['block-ram'],
    examples: [{ given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'watch', stands: 'at' }, { given: '0.032 in', grade: 'sound', stands: 'just over' }],
  },
  {
    id: 'dies.lower-hardness', title: 'Hardness of the lower die', question: 'Is the lower die tough rather than hard?', part: 'lower-die', rows: [10], families: EVERY,
    rule: { kind: 'seen', look: 'lower-die.hardness', answers: {
      soft: { grade: 'watch', because: 'A soft die mushrooms and is dressed often; it does not fly.', source: 'page-dies', cures: [] },
      tough: { grade: 'sound', because: 'Tough: the file bites a little.', source: 'page-dies' },
      hard: { grade: 'limited', because: 'A die that a file skates over can chip, and chips have killed.', source: 'page-dies', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
    } },
    gate: false, minutes: 3, cures: ['dies.temper'], cautions: ['no-cold-blow', 'eyes'],
    examples: [{ given: 'soft', grade: 'watch', stands: 'plain' }, { given: 'tough', grade: 'sound', stands: 'plain' }, { given: 'hard', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'dies.parallel', title: 'Dies parallel', question: 'Are the dies parallel?', part: 'upper-die', rows: [1, 15], families: EVERY,
    rule: { kind: 'measured', value: 'upper-die.parallel', worse: 'more', steps: [
      { grade: 'watch', from: '0.010 in', source: 'common-practice', because: 'A flat bar comes out with a taper.', cures: ['dies.grind-pair'] },
      { grade: 'limited', from: '1/32 in', source: 'page-guide', because: 'Bars come out bent like a banana, and the blow levers on the keys.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
    ] },
    gate: false, minutes: 15, cures: ['dies.grind-pair', 'ways.true'], cautions: ['block-ram'],
    examples: [{ given: '0.009 in', grade: 'sound', stands: 'just under' }, { given: '0.010 in', grade: 'watch', stands: 'at' }, { given: '0.011 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'stack.loss', title: 'Height lost by the dies', question: 'How much height have both dies and the seat lost together?', part: 'lower-die', rows: [2, 3], families: GUIDED,
    rule: { kind: 'measured', value: 'stack.loss', worse: 'more', steps: [
      { grade: 'watch', from: '1/2 in', source: 'common-practice', because: 'Half an inch lost is the time to think of packing or new dies.', cures: ['seat.fit-filler-plate'] },
      { grade: 'limited', from: '1 in', source: 'owners-practice', because: 'With the stack an inch short the linkage comes down near the guide before the work is closed.', limits: [{ kind: 'least-work-thickness', value: { fixed: '3/8 in' }, sentence: 'Nothing thinner than {value} between the dies.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 15, cures: ['seat.fit-filler-plate', 'dies.new-lower'], cautions: ['least-thickness', 'no-cold-blow'],
    examples: [{ given: '0.499 in', grade: 'sound', stands: 'just under' }, { given: '1/2 in', grade: 'watch', stands: 'at' }, { given: '0.501 in', grade: 'watch', stands: 'just over' }, { given: '0.9 in', grade: 'watch', stands: 'just under' }, { given: '1 in', grade: 'limited', stands: 'at' }, { given: '1.1 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'stack.loss-upper', title: 'Height lost by the upper die', question: 'How much height has the upper die lost?', part: 'upper-die', rows: [2], families: GUIDED,
    rule: { kind: 'measured', value: 'stack.loss-upper', worse: 'more', steps: [
      { grade: 'watch', from: '3/8 in', source: 'common-practice', because: 'A regrind takes 0.010 to 0.060 in each time; this one has had many.', cures: [] },
      { grade: 'limited', from: '1 in', source: 'owners-practice', because: 'The upper die alone takes the linkage down to the guide.', limits: [{ kind: 'least-work-thickness', value: { fixed: '3/8 in' }, sentence: 'Nothing thinner than {value} between the dies.' }] },
    ] },
    gate: false, minutes: 5, cures: ['dies.new-upper'], cautions: ['least-thickness'],
    examples: [{ given: '0.374 in', grade: 'sound', stands: 'just under' }, { given: '3/8 in', grade: 'watch', stands: 'at' }, { given: '0.376 in', grade: 'watch', stands: 'just over' }, { given: '0.9 in', grade: 'watch', stands: 'just under' }, { given: '1 in', grade: 'limited', stands: 'at' }, { given: '1.1 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'stack.loss-lower', title: 'Height lost by the lower die', question: 'How much height have lower die and seat lost?', part: 'lower-die', rows: [3], families: GUIDED,
    rule: { kind: 'measured', value: 'stack.loss-lower', worse: 'more', steps: [
      { grade: 'watch', from: '3/8 in', source: 'common-practice', because: 'Wear, regrinding and a sunk seat add up.', cures: [] },
      { grade: 'limited', from: '1 in', source: 'owners-practice', because: 'The lower die alone takes the linkage down to the guide.', limits: [{ kind: 'least-work-thickness', value: { fixed: '3/8 in' }, sentence: 'Nothing thinner than {value} between the dies.' }] },
    ] },
    gate: false, minutes: 5, cures: ['seat.fit-filler-plate', 'dies.new-lower'], cautions: ['least-thickness'],
    examples: [{ given: '0.374 in', grade: 'sound', stands: 'just under' }, { given: '3/8 in', grade: 'watch', stands: 'at' }, { given: '0.376 in', grade: 'watch', stands: 'just over' }, { given: '0.9 in', grade: 'watch', stands: 'just under' }, { given: '1 in', grade: 'limited', stands: 'at' }, { given: '1.1 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'stack.loss-helve', title: 'Height lost under a helve', question: 'How much height have both dies and the seat lost together?', part: 'lower-die', rows: [2, 3], families: HELVE,
    rule: { kind: 'measured', value: 'stack.loss', worse: 'more', steps: [
      { grade: 'watch', from: '1/2 in', source: 'common-practice', because: 'Half an inch lost is the time to think of packing, new dies or the height screws.', cures: ['helve.free-screws'] },
      { grade: 'limited', from: '1 in', source: 'common-practice', because: 'The helve comes down past level and strikes with the heel of the die.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }], cures: ['seat.fit-filler-plate', 'dies.new-lower'] },
    ] },
    gate: false, minutes: 15, cures: ['helve.free-screws', 'seat.fit-filler-plate', 'dies.new-lower', 'dies.new-upper'], cautions: ['no-cold-blow'],
    examples: [{ given: '0.499 in', grade: 'sound', stands: 'just under' }, { given: '1/2 in', grade: 'watch', stands: 'at' }, { given: '0.501 in', grade: 'watch', stands: 'just over' }, { given: '0.9 in', grade: 'watch', stands: 'just under' }, { given: '1 in', grade: 'limited', stands: 'at' }, { given: '1.1 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'stack.rest-gap', title: 'Gap at the bottom', question: 'Do the dies stay apart at bottom dead centre with nothing between them?', part: 'upper-die', rows: [3], families: EVERY,
    rule: { kind: 'measured', value: 'upper-die.rest-gap', worse: 'less', steps: [
      { grade: 'watch', from: '1/2 in', source: 'common-practice', because: 'The usual gap is about the thickness of the work or a little more, 3/4 to 1 in on small hammers.' },
      { grade: 'limited', from: '1/4 in', source: 'common-practice', because: 'So small a gap lets the spring carry the dies together on a soft heat.', limits: [{ kind: 'least-work-thickness', value: { fixed: '3/8 in' }, sentence: 'Nothing thinner than {value} between the dies.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
      { grade: 'stand-down', from: '1/32 in', source: 'common-practice', because: 'The dies touch at bottom dead centre: every turn is die on die.' },
    ] },
    gate: true, minutes: 4, cures: ['rod.set-gap'], cautions: ['no-cold-blow', 'block-ram'],
    examples: [{ given: '0.499 in', grade: 'watch', stands: 'just under' }, { given: '1/2 in', grade: 'watch', stands: 'at' }, { given: '0.501 in', grade: 'sound', stands: 'just over' }, { given: '0.249 in', grade: 'limited', stands: 'just under' }, { given: '1/4 in', grade: 'limited', stands: 'at' }, { given: '0.251 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'stand-down', stands: 'just under' }, { given: '1/32 in', grade: 'stand-down', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'stack.rest-gap-wide', title: 'Gap too wide at the bottom', question: 'Is the gap at bottom dead centre no wider than usual?', part: 'upper-die', rows: [3], families: EVERY,
    rule: { kind: 'measured', value: 'upper-die.rest-gap', worse: 'more', steps: [
      { grade: 'watch', from: '1 3/4 in', source: 'common-practice', because: 'The usual gap is 3/4 to 1 in on small hammers and 1 to 1 1/2 in at 100 lb: with a wider one the blow is weak on thin work, or the reading is wrong.' },
    ] },
    gate: false, minutes: 4, cures: ['rod.set-gap'], cautions: ['block-ram'],
    examples: [{ given: '1.749 in', grade: 'sound', stands: 'just under' }, { given: '1 3/4 in', grade: 'watch', stands: 'at' }, { given: '1.751 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'stack.linkage-clearance', title: 'Linkage over the guide', question: 'Does the linkage clear the guide with the dies closed?', part: 'ram-guide', rows: [3, 12], families: GUIDED,
    rule: { kind: 'measured', value: 'stack.linkage-clearance', worse: 'less', steps: [
      { grade: 'watch', from: '1/2 in', source: 'common-practice', because: 'Half an inch or less is left between linkage and guide: watch die heights.', cures: [] },
      { grade: 'limited', from: '3/8 in', source: 'owners-practice', because: 'Thin work lets the linkage strike the guide: the thickness of the work has to keep them apart.', limits: [{ kind: 'least-work-thickness', value: { from: 'stack.least-work-thickness' }, sentence: 'Nothing thinner than {value} between the dies: thinner work lets the linkage come down on the guide.' }], cures: ['seat.fit-filler-plate', 'dies.new-lower'] },
    ] },
    gate: false, minutes: 6, cures: ['seat.fit-filler-plate', 'dies.new-lower', 'dies.new-upper', 'guide.raise-linkage'], cautions: ['least-thickness', 'no-cold-blow'],
    examples: [{ given: '0.499 in', grade: 'watch', stands: 'just under' }, { given: '1/2 in', grade: 'watch', stands: 'at' }, { given: '0.501 in', grade: 'sound', stands: 'just over' }, { given: '0.374 in', grade: 'limited', stands: 'just under' }, { given: '3/8 in', grade: 'limited', stands: 'at' }, { given: '0.376 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'seat.sunk', title: 'Die sunk into the seat', question: 'How deep has the die sunk, beyond what a plate makes good?', part: 'seat', rows: [4, 7], families: EVERY,
    rule: { kind: 'measured', value: 'stack.filler-plate', worse: 'more', steps: [
      { grade: 'watch', from: '1/32 in', source: 'page-seat', because: 'A visible step: the die is hammering its way into the iron.' },
      { grade: 'limited', from: '1/8 in', source: 'page-seat', because: 'A sunk die rocks in its hole, and keys will not hold; sinks of 1/4 in are on record.', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 20, cures: ['seat.fit-filler-plate'], cautions: ['block-ram', 'drift'],
    examples: [{ given: '0.031 in', grade: 'sound', stands: 'just under' }, { given: '1/32 in', grade: 'watch', stands: 'at' }, { given: '0.032 in', grade: 'watch', stands: 'just over' }, { given: '0.124 in', grade: 'watch', stands: 'just under' }, { given: '1/8 in', grade: 'limited', stands: 'at' }, { given: '0.126 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'seat.dish', title: 'Floor of the seat', question: 'Is the seat floor flat under the die?', part: 'seat', rows: [7], families: EVERY,
    rule: { kind: 'measured', value: 'seat.dish', worse: 'more', steps: [
      { grade: 'watch', from: '0.006 in', source: 'common-practice', because: 'Flat within 0.003 to 0.005 in is good; the die begins to rock.', cures: ['seat.file'] },
      { grade: 'limited', from: '0.010 in', source: 'common-practice', because: 'The die rocks on a dished floor, and keys work loose.', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }], cures: ['seat.grind-with-plate-jig'] },
    ] },
    gate: false, minutes: 20, cures: ['seat.file', 'seat.grind-with-plate-jig', 'seat.mill'], cautions: ['block-ram', 'drift'],
    examples: [{ given: '0.005 in', grade: 'sound', stands: 'just under' }, { given: '0.006 in', grade: 'watch', stands: 'at' }, { given: '0.007 in', grade: 'watch', stands: 'just over' }, { given: '0.009 in', grade: 'watch', stands: 'just under' }, { given: '0.010 in', grade: 'limited', stands: 'at' }, { given: '0.011 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'seat.ear', title: 'Walls of the seat', question: 'Are the walls of the seat whole?', part: 'seat', rows: [7], families: EVERY,
    rule: { kind: 'seen', look: 'seat.ear', answers: {
      whole: { grade: 'sound', because: 'Whole.', source: 'common-practice' },
      'chunk-die-solid': { grade: 'limited', because: 'A piece is gone and the die still sits solid: it has served for years on some hammers, and never gets better.', source: 'page-seat', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
      'chunk-die-loose': { grade: 'stand-down', because: 'The wall that should hold the die is gone.', source: 'page-seat' },
    } },
    gate: false, minutes: 3, cures: ['seat.mend-ear'], cautions: ['cracked-casting', 'drift'],
    examples: [{ given: 'whole', grade: 'sound', stands: 'plain' }, { given: 'chunk-die-solid', grade: 'limited', stands: 'plain' }, { given: 'chunk-die-loose', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'seat.pressure', title: 'Pressure on the seat', question: 'Is the lower die wide enough for the iron under it?', part: 'lower-die', rows: [4, 7], families: EVERY,
    rule: { kind: 'measured', value: 'seat-pressure.cold-share', worse: 'more', steps: [
      { grade: 'watch', from: '20 %', source: 'derived', because: 'A blow with nothing between the dies uses more of the iron’s strength than repeated blows should.', cures: [] },
      { grade: 'limited', from: '40 %', source: 'derived', because: 'The die is so narrow that it sinks into its seat.', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'least-work-thickness', value: { fixed: '3/8 in' }, sentence: 'Nothing thinner than {value} between the dies.' }], cures: ['dies.new-lower'] },
    ] },
    gate: false, minutes: 10, cures: ['dies.new-lower', 'seat.fit-filler-plate'], cautions: ['no-cold-blow'],
    examples: [{ given: '19 %', grade: 'sound', stands: 'just under' }, { given: '20 %', grade: 'watch', stands: 'at' }, { given: '21 %', grade: 'watch', stands: 'just over' }, { given: '39 %', grade: 'watch', stands: 'just under' }, { given: '40 %', grade: 'limited', stands: 'at' }, { given: '41 %', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'dies.bearing', title: 'Lower die fills its seat', question: 'Does the base of the lower die fill the seat?', part: 'lower-die', rows: [4], families: EVERY,
    rule: { kind: 'seen', look: 'lower-die.bearing', answers: {
      fills: { grade: 'sound', because: 'The base nearly fills the floor.', source: 'common-practice' },
      narrow: { grade: 'watch', because: 'A narrow base loads the iron hard and sinks.', source: 'common-practice', cures: [] },
      packed: { grade: 'limited', because: 'Loose packings curl and let the die rock.', source: 'common-practice', limits: [{ kind: 'check-keys-every', value: { fixed: '15 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }], cures: ['seat.fit-filler-plate'] },
    } },
    gate: false, minutes: 3, cures: ['seat.fit-filler-plate', 'dies.new-lower'], cautions: ['drift'],
    examples: [{ given: 'fills', grade: 'sound', stands: 'plain' }, { given: 'narrow', grade: 'watch', stands: 'plain' }, { given: 'packed', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'dovetail.flank', title: 'Key on the flank', question: 'Does the key lie flat on the full flank?', part: 'dovetail', rows: [5], families: EVERY,
    rule: { kind: 'seen', look: 'dovetail.flank', answers: {
      full: { grade: 'sound', because: 'The key lies flat on the full flank.', source: 'page-keys' },
      part: { grade: 'limited', because: 'Part contact breaks the lip off.', source: 'page-keys', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['dovetail.file-flanks'] },
      upright: { grade: 'limited', because: 'With upright walls nothing holds the die down but friction.', source: 'page-keys', limits: [{ kind: 'check-keys-every', value: { fixed: '15 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }], cures: ['dovetail.machine-flanks'] },
    } },
    gate: false, minutes: 15, cures: ['dovetail.file-flanks', 'dovetail.machine-flanks'], cautions: ['drift', 'dry-dovetail'],
    examples: [{ given: 'full', grade: 'sound', stands: 'plain' }, { given: 'part', grade: 'limited', stands: 'plain' }, { given: 'upright', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'dovetail.crack', title: 'Cracked lip', question: 'Are the lips of the dovetails whole?', part: 'dovetail', rows: [5], families: EVERY,
    rule: { kind: 'seen', look: 'dovetail.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line at the root of a lip counts as a crack until dye has shown otherwise.', source: 'common-practice', cures: ['frame.dye-test'] },
      present: { grade: 'stand-down', because: 'A cracked lip lets the die go.', source: 'common-practice', cures: ['dovetail.mend-lip'] },
    } },
    gate: false, minutes: 6, cures: ['frame.dye-test', 'dovetail.mend-lip'], cautions: ['cracked-casting'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'dovetail.chip', title: 'Chipped lip', question: 'How much of a lip is missing?', part: 'dovetail', rows: [5], families: EVERY,
    rule: { kind: 'measured', value: 'dovetail.chip-share', worse: 'more', steps: [
      { grade: 'watch', from: '10 %', source: 'common-practice', because: 'A chip that grows is a key that bears in one place.', cures: [] },
      { grade: 'limited', from: '25 %', source: 'common-practice', because: 'More than a quarter of the lip is gone.', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 5, cures: ['dovetail.mend-lip'], cautions: ['drift'],
    examples: [{ given: '9 %', grade: 'sound', stands: 'just under' }, { given: '10 %', grade: 'watch', stands: 'at' }, { given: '11 %', grade: 'watch', stands: 'just over' }, { given: '24 %', grade: 'watch', stands: 'just under' }, { given: '25 %', grade: 'limited', stands: 'at' }, { given: '26 %', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'keys.secure', title: 'Hold of dies and keys', question: 'Are both dies held?', part: 'keys', rows: [5, 6], families: EVERY,
    rule: { kind: 'seen', look: 'keys.secure', answers: {
      tight: { grade: 'sound', because: 'Both dies are tight.', source: 'common-practice' },
      tightened: { grade: 'watch', because: 'One was loose and drove tight: it will tell within the hour whether it holds.', source: 'common-practice', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }], cures: ['keys.drive'] },
      loose: { grade: 'stand-down', because: 'A die that cannot be made tight leaves the hammer.', source: 'common-practice', cures: ['keys.renew'] },
      missing: { grade: 'stand-down', because: 'A die without its key is not held.', source: 'common-practice', cures: ['keys.renew'] },
    } },
    gate: true, minutes: 4, cures: ['keys.drive', 'keys.renew'], cautions: ['drift', 'dry-dovetail', 'block-ram'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'tightened', grade: 'watch', stands: 'plain' }, { given: 'loose', grade: 'stand-down', stands: 'plain' }, { given: 'missing', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'keys.oil', title: 'Oil in the dovetail', question: 'Are dovetails and keys dry?', part: 'keys', rows: [5, 6], families: EVERY,
    rule: { kind: 'seen', look: 'keys.dovetail-oil', answers: {
      dry: { grade: 'sound', because: 'Dry and free of oil.', source: 'page-keys' },
      oily: { grade: 'stand-down', because: 'An oily key drives tight and walks out: a top die has been thrown across a shop.', source: 'page-keys' },
    } },
    gate: true, minutes: 2, cures: ['keys.dry'], cautions: ['dry-dovetail', 'drift'],
    examples: [{ given: 'dry', grade: 'sound', stands: 'plain' }, { given: 'oily', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'keys.state', title: 'State of the keys', question: 'Are the keys straight and sound?', part: 'keys', rows: [6], families: EVERY,
    rule: { kind: 'seen', look: 'keys.state', answers: {
      good: { grade: 'sound', because: 'Straight, with clean ends.', source: 'common-practice' },
      mushroomed: { grade: 'watch', because: 'Swollen ends jam in the seat: dress them.', source: 'common-practice' },
      bent: { grade: 'limited', because: 'A bent or thin key holds at two points only.', source: 'page-keys', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
      packed: { grade: 'limited', because: 'Loose shims beside a key walk out one by one.', source: 'common-practice', limits: [{ kind: 'check-keys-every', value: { fixed: '15 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
      brittle: { grade: 'stand-down', because: 'A key that splinters throws steel: keys must be of steel that does not unduly crack or splinter.', source: 'osha-1910-218' },
    } },
    gate: false, minutes: 3, cures: ['keys.renew'], cautions: ['drift', 'eyes'],
    examples: [{ given: 'good', grade: 'sound', stands: 'plain' }, { given: 'mushroomed', grade: 'watch', stands: 'plain' }, { given: 'bent', grade: 'limited', stands: 'plain' }, { given: 'packed', grade: 'limited', stands: 'plain' }, { given: 'brittle', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'keys.contact', title: 'Contact of the keys', question: 'Do the keys bear over their full length?', part: 'keys', rows: [6], families: EVERY,
    rule: { kind: 'measured', value: 'keys.contact', worse: 'less', steps: [
      { grade: 'watch', from: '75 %', source: 'common-practice', because: 'Good practice asks for 80 % or more by blue.', cures: ['keys.renew'] },
      { grade: 'limited', from: '60 %', source: 'common-practice', because: 'The key bears in part and works loose.', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
    ] },
    gate: false, minutes: 20, cures: ['keys.renew', 'dovetail.file-flanks'], cautions: ['drift', 'dry-dovetail'],
    examples: [{ given: '74 %', grade: 'watch', stands: 'just under' }, { given: '75 %', grade: 'watch', stands: 'at' }, { given: '76 %', grade: 'sound', stands: 'just over' }, { given: '59 %', grade: 'limited', stands: 'just under' }, { given: '60 %', grade: 'limited', stands: 'at' }, { given: '61 %', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'keys.drive-left', title: 'Length left to drive', question: 'Is there key left to drive?', part: 'keys', rows: [6], families: EVERY,
    rule: { kind: 'measured', value: 'keys.projection', worse: 'less', steps: [
      { grade: 'watch', from: '3/8 in', source: 'common-practice', because: 'Half an inch to an inch should stand out; this key is nearly home.' },
      { grade: 'limited', from: '1/16 in', source: 'common-practice', because: 'The key is home with nothing left: once loose it cannot be tightened.', limits: [{ kind: 'check-keys-every', value: { fixed: '15 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 2, cures: ['keys.renew'], cautions: ['drift'],
    examples: [{ given: '0.374 in', grade: 'watch', stands: 'just under' }, { given: '3/8 in', grade: 'watch', stands: 'at' }, { given: '0.376 in', grade: 'sound', stands: 'just over' }, { given: '0.062 in', grade: 'limited', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'keys.thickness', title: 'Thickness of the keys', question: 'Are the keys sturdy?', part: 'keys', rows: [6], families: EVERY,
    rule: { kind: 'measured', value: 'keys.thickness', worse: 'less', steps: [
      { grade: 'watch', from: '5/16 in', source: 'page-keys', because: 'Keys of 1/4 to 5/16 in bend and mushroom; 3/8 to 1/2 in is sturdier.' },
    ] },
    gate: false, minutes: 2, cures: ['keys.renew'], cautions: ['drift'],
    examples: [{ given: '0.312 in', grade: 'watch', stands: 'just under' }, { given: '5/16 in', grade: 'watch', stands: 'at' }, { given: '0.313 in', grade: 'sound', stands: 'just over' }],
  },
  {
    id: 'key-removal.state', title: 'Drawing the keys', question: 'Do the keys come out?', part: 'key-removal', rows: [6.5], families: EVERY,
    rule: { kind: 'seen', look: 'key-removal.state', answers: {
      'came-out': { grade: 'sound', because: 'Came out with a drift.', source: 'page-keys' },
      stuck: { grade: 'watch', because: 'A stuck key can take two days of soaking and pulling: allow for it before dies are changed.', source: 'page-keys' },
    } },
    gate: false, minutes: 15, cures: ['keys.draw'], cautions: ['drift', 'eyes', 'block-ram'],
    examples: [{ given: 'came-out', grade: 'sound', stands: 'plain' }, { given: 'stuck', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'sow-block.fitted', title: 'Sow block in place', question: 'Is the sow block where it belongs?', part: 'sow-block', rows: [8], families: EVERY,
    rule: { kind: 'seen', look: 'sow-block.fitted', answers: {
      fitted: { grade: 'sound', because: 'Fitted.', source: 'common-practice' },
      'none-by-design': { grade: 'sound', because: 'The frame was made without one.', source: 'common-practice' },
      'left-out': { grade: 'stand-down', because: 'Without it the ram over-travels, breaks the linkage and hurts people.', source: 'page-seat' },
    } },
    gate: false, minutes: 3, cures: ['sow-block.put-back'], cautions: ['no-cold-blow'],
    examples: [{ given: 'fitted', grade: 'sound', stands: 'plain' }, { given: 'none-by-design', grade: 'sound', stands: 'plain' }, { given: 'left-out', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'sow-block.state', title: 'Hold of the sow block', question: 'Does the sow block sit whole and tight?', part: 'sow-block', rows: [8], families: EVERY,
    onlyWhere: { look: 'sow-block.fitted', answers: ['fitted'] },
    rule: { kind: 'seen', look: 'sow-block.state', answers: {
      tight: { grade: 'sound', because: 'Whole and tight.', source: 'common-practice' },
      loose: { grade: 'limited', because: 'A loose sow block rocks the lower die with it.', source: 'common-practice', limits: [{ kind: 'check-keys-every', value: { fixed: '15 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['sow-block.re-true'] },
      cracked: { grade: 'stand-down', because: 'A cracked sow block is the seat of the die.', source: 'common-practice', cures: ['sow-block.put-back'] },
    } },
    gate: false, minutes: 3, cures: ['sow-block.re-true', 'sow-block.put-back'], cautions: ['drift', 'block-ram'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'loose', grade: 'limited', stands: 'plain' }, { given: 'cracked', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'sow-block.dish', title: 'Sow block flat', question: 'Is the sow block flat above and below?', part: 'sow-block', rows: [8], families: EVERY,
    onlyWhere: { look: 'sow-block.fitted', answers: ['fitted'] },
    rule: { kind: 'measured', value: 'sow-block.dish', worse: 'more', steps: [
      { grade: 'watch', from: '0.006 in', source: 'common-practice', because: 'It begins to rock.' },
      { grade: 'limited', from: '0.010 in', source: 'common-practice', because: 'Dished as a worn seat is, with the same trouble.', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
    ] },
    gate: false, minutes: 20, cures: ['sow-block.re-true'], cautions: ['block-ram', 'drift'],
    examples: [{ given: '0.005 in', grade: 'sound', stands: 'just under' }, { given: '0.006 in', grade: 'watch', stands: 'at' }, { given: '0.007 in', grade: 'watch', stands: 'just over' }, { given: '0.009 in', grade: 'watch', stands: 'just under' }, { given: '0.010 in', grade: 'limited', stands: 'at' }, { given: '0.011 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'filler.state', title: 'Bedding of the filler plate', question: 'Does the filler plate lie solid?', part: 'filler-plate', rows: [9], families: EVERY,
    rule: { kind: 'seen', look: 'filler-plate.state', answers: {
      none: { grade: 'sound', because: 'There is none.', source: 'common-practice' },
      bedded: { grade: 'sound', because: 'Bedded over the full base.', source: 'common-practice' },
      small: { grade: 'limited', because: 'A plate smaller than the base sinks in its turn.', source: 'owners-practice', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
      rocks: { grade: 'limited', because: 'A plate that rocks loosens the die within hours.', source: 'common-practice', limits: [{ kind: 'check-keys-every', value: { fixed: '15 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
      cracked: { grade: 'limited', because: 'Pieces of a cracked plate walk out.', source: 'common-practice', limits: [{ kind: 'check-keys-every', value: { fixed: '15 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    } },
    gate: false, minutes: 3, cures: ['seat.fit-filler-plate'], cautions: ['drift'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'bedded', grade: 'sound', stands: 'plain' }, { given: 'small', grade: 'limited', stands: 'plain' }, { given: 'rocks', grade: 'limited', stands: 'plain' }, { given: 'cracked', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'filler.parallel', title: 'Filler plate parallel', question: 'Is the filler plate parallel?', part: 'filler-plate', rows: [9], families: EVERY,
    rule: { kind: 'measured', value: 'filler-plate.taper', worse: 'more', steps: [
      { grade: 'watch', from: '0.003 in', source: 'common-practice', because: 'Parallel within 0.002 in is good.' },
      { grade: 'limited', from: '0.010 in', source: 'common-practice', because: 'The plate tips the die.', limits: [{ kind: 'check-keys-every', value: { fixed: '30 min' }, sentence: 'Stop, lock off and try dies and keys every {value}.' }] },
    ] },
    gate: false, minutes: 10, cures: ['seat.fit-filler-plate'], cautions: [],
    examples: [{ given: '0.002 in', grade: 'sound', stands: 'just under' }, { given: '0.003 in', grade: 'watch', stands: 'at' }, { given: '0.004 in', grade: 'watch', stands: 'just over' }, { given: '0.009 in', grade: 'watch', stands: 'just under' }, { given: '0.010 in', grade: 'limited', stands: 'at' }, { given: '0.011 in', grade: 'limited', stands: 'just over' }],
  },
];
