import type { Part } from '../vocabulary.ts';
import { EVERY } from './families.ts';

/** What the hammer stands on, and what stands between it and people. */
export const GROUND_AND_GUARDS: readonly Part[] = [
  {
    id: 'base', rows: [36, 42], name: { us: 'base, feet and level', uk: 'base, feet and level' }, group: 'ground-and-guards', families: EVERY,
    places: [
      { id: 'base.rock', name: 'gap under the base at a corner', dimension: 'length', at: ['front-left', 'front-right', 'rear-left', 'rear-right'], tools: ['feeler'], how: 'Bolts slack: push feelers under each corner; take the greatest.', accuracy: '0.002 in', plausible: [0, 0.03] },
      { id: 'base.level', name: 'out of level in one foot', dimension: 'length', at: ['fore-aft', 'side'], tools: ['level', 'feeler'], how: 'Level on a machined face; lift its low end with feelers until the bubble is in the middle; enter the feelers for a level one foot (300 mm) long.', accuracy: '0.005 in in one foot', plausible: [0, 0.05] },
    ],
    looks: [
      { id: 'base.ears', question: 'Are the bolt ears of the base whole?', how: 'Clean round each ear and look with dye.', at: [],
        answers: [
          { id: 'whole', words: 'whole' },
          { id: 'cracked', spot: true, words: 'an ear is cracked' },
          { id: 'broken', words: 'an ear is gone' },
        ] },
      { id: 'base.bearing', question: 'Does the base bear all round?', how: 'Look under the flange with a light from the other side.', at: [],
        answers: [
          { id: 'all-round', words: 'solid all round' },
          { id: 'shims', words: 'on loose shims' },
          { id: 'corners', words: 'on a few points' },
        ] },
    ],
  },
  {
    id: 'hold-down-bolts', rows: [38], name: { us: 'hold-down bolts', uk: 'foundation bolts' }, group: 'ground-and-guards', families: EVERY,
    places: [
      { id: 'hold-down-bolts.diameter', name: 'hold-down bolt diameter', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Caliper over the thread.', accuracy: '1/32 in', plausible: [0.006, 0.08], asMade: true },
      { id: 'hold-down-bolts.spacing', name: 'distance between the bolt holes of the base', dimension: 'length', at: ['along', 'across'], tools: ['tape', 'rule'], how: 'Measure from hole centre to hole centre, along the base and across it.', accuracy: '1/16 in', plausible: [0.05, 3], forMaking: true },
    ],
    looks: [
      { id: 'hold-down-bolts.state', whileRunning: true, question: 'Do the hold-down bolts stay tight?', how: 'Tighten, run for an hour, lock off and try again.', at: [],
        answers: [
          { id: 'tight', words: 'tight after an hour' },
          { id: 'loosened-once', words: 'had loosened once' },
          { id: 'loosened-twice', words: 'loose again after a second hour' },
          { id: 'none', words: 'bolts missing, or none at all' },
        ] },
    ],
  },
  {
    id: 'foundation', rows: [41], name: { us: 'foundation, pad', uk: 'foundation, bed' }, group: 'ground-and-guards', families: EVERY,
    places: [
      { id: 'foundation.thickness', name: 'foundation thickness', dimension: 'length', at: [], tools: ['tape'], how: 'Measure at an edge or in a hole beside it.', accuracy: '1 in', plausible: [0, 4] },
      { id: 'foundation.length', name: 'foundation length', dimension: 'length', at: [], tools: ['tape'], how: 'Measure the block front to back, edge gap to edge gap.', accuracy: '2 in', plausible: [0.1, 15] },
      { id: 'foundation.width', name: 'foundation width', dimension: 'length', at: [], tools: ['tape'], how: 'Measure the block across, edge gap to edge gap.', accuracy: '2 in', plausible: [0.1, 15] },
      { id: 'foundation.edge-gap', name: 'gap between block and floor slab', dimension: 'length', at: [], tools: ['rule'], how: 'Measure the width of the soft joint round the block.', accuracy: '1/8 in', plausible: [0, 0.3] },
    ],
    looks: [
      { id: 'foundation.kind', question: 'What does the hammer stand on?', how: 'Look at the edge of the base and ask who laid it.', at: [],
        answers: [
          { id: 'own-block', words: 'a block of its own, parted from the slab' },
          { id: 'slab', words: 'the floor slab' },
          { id: 'timber', words: 'timbers' },
          { id: 'belting', words: 'rubber belting on a slab' },
          { id: 'soil', words: 'bare soil' },
          { id: 'trailer', words: 'a trailer or skid' },
          { id: 'not-known', words: 'not known' },
        ] },
      { id: 'foundation.crack', question: 'Is the foundation cracked?', how: 'Sweep and look round the bolts and across the block.', at: [],
        answers: [
          { id: 'none', words: 'none' },
          { id: 'hairline', words: 'hairlines that stay' },
          { id: 'open', spot: true, words: 'open cracks or pieces that move' },
        ] },
      { id: 'foundation.neighbours', whileRunning: true, question: 'Does it shake the house or a neighbour?', how: 'A glass of water at several distances while it runs; ask.', at: [],
        answers: [
          { id: 'no', words: 'no' },
          { id: 'felt', words: 'felt in the house' },
          { id: 'complaint', words: 'somebody has complained' },
        ] },
    ],
  },
  {
    id: 'guards', rows: [40], name: { us: 'guards', uk: 'guards' }, group: 'ground-and-guards', families: EVERY,
    places: [],
    looks: [
      { id: 'guards.front', question: 'Is there a guard in front of the linkage?', how: 'Look from where people stand: steel mesh or polycarbonate sheet at head height, fixed.', at: [],
        answers: [
          { id: 'fitted', words: 'fitted and fixed' },
          { id: 'missing-alone', words: 'missing, nobody but the operator comes near' },
          { id: 'missing-public', words: 'missing, and other people come near' },
        ] },
      { id: 'guards.belt', question: 'Are belt, pulleys and crank plate guarded?', how: 'Look whatever a sleeve could reach up to 7 ft from the floor.', at: [],
        answers: [
          { id: 'guarded', words: 'guarded' },
          { id: 'part', words: 'partly' },
          { id: 'open', words: 'open' },
        ] },
      { id: 'guards.scale', question: 'Is there a scale guard at the back?', how: 'Look behind the dies.', at: [],
        answers: [
          { id: 'fitted', words: 'fitted' },
          { id: 'missing', words: 'missing' },
        ] },
    ],
  },
  {
    id: 'whole-machine', rows: [], name: { us: 'the whole machine', uk: 'the whole machine' }, group: 'ground-and-guards', families: EVERY,
    places: [
      { id: 'whole-machine.mass', name: 'mass of the machine', dimension: 'mass', at: [], tools: ['scale'], how: 'From a crane scale or a weighbridge; otherwise the class gives a first guess.', accuracy: '5 %', plausible: [50, 60_000] },
    ],
    looks: [
      { id: 'whole-machine.idle', question: 'How long has it stood?', how: 'Ask who ran it last and when, and how they know.', at: [],
        answers: [
          { id: 'in-use', words: 'in use' },
          { id: 'some-years', words: 'some years' },
          { id: 'decades', words: 'ten years or more' },
        ] },
      { id: 'whole-machine.shelter', question: 'Where has it stood?', how: 'Look and ask.', at: [],
        answers: [
          { id: 'inside', words: 'under a roof' },
          { id: 'outside', words: 'outside' },
        ] },
      { id: 'whole-machine.hand-turn', question: 'How does it turn by hand, one full turn?', how: 'Power locked off, treadle down: turn the belt wheel slowly once round; feel for tight places and listen for clicks.', at: [],
        answers: [
          { id: 'smooth', words: 'smooth all round' },
          { id: 'tight-spot', words: 'tight somewhere' },
          { id: 'click', words: 'clicks or knocks' },
          { id: 'stuck', words: 'does not turn' },
        ] },
    ],
  },
];
