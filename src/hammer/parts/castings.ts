import type { Part } from '../vocabulary.ts';
import { EVERY, GUIDED } from './families.ts';

/** The castings that carry everything else: looked at first, because a crack ends the visit. */
export const CASTINGS: readonly Part[] = [
  {
    id: 'frame', rows: [35], name: { us: 'frame', uk: 'frame, standard' }, group: 'castings', families: EVERY,
    places: [
      { id: 'frame.crack-length', name: 'length of the longest crack', dimension: 'length', at: [], tools: ['rule', 'tape'], how: 'Wipe the crack with dye or chalk and measure along it from end to end with a rule, on the side where it is longest.', accuracy: '1/8 in', plausible: [0.001, 2] },
      { id: 'frame.height', name: 'overall height', dimension: 'length', at: [], tools: ['tape'], how: 'Measure from the floor to the highest point of the casting or shaft caps.', accuracy: '1/2 in', plausible: [0.4, 6], asMade: true },
      { id: 'frame.throat', name: 'throat depth', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Measure level from the centre of the dies back to the casting.', accuracy: '1/4 in', plausible: [0.05, 2], asMade: true },
      { id: 'frame.base-length', name: 'base length, front to back', dimension: 'length', at: [], tools: ['tape'], how: 'Measure the foot of the casting from its front edge to its back edge.', accuracy: '1/2 in', plausible: [0.2, 5] },
      { id: 'frame.base-width', name: 'base width', dimension: 'length', at: [], tools: ['tape'], how: 'Measure the foot of the casting across, at its widest.', accuracy: '1/2 in', plausible: [0.15, 4] },
      { id: 'frame.seat-height', name: 'die seat above the floor', dimension: 'length', at: [], tools: ['tape'], how: 'Measure from the floor to the floor of the lower die seat.', accuracy: '1/4 in', plausible: [0.1, 2.5] },
    ],
    looks: [
      { id: 'frame.crack', question: 'Is there a crack in the load path: throat, spine, seat walls or bearing lugs?', how: 'Wipe the iron clean, look along the throat, the spine, the walls of the die seat and the bearing lugs with a strong light from one side; put dye penetrant on anything doubtful. Old plates, braze and fresh filler count.', at: [],
        answers: [
          { id: 'none', words: 'looked at clean, none found' },
          { id: 'suspected', spot: true, words: 'a line or a dull ring that is not explained' },
          { id: 'present', spot: true, words: 'a crack is there' },
          { id: 'repaired', words: 'an old repair is there and holds: no opening beside it' },
        ] },
      { id: 'frame.repair', question: 'What old repair does the frame carry?', how: 'Look for plates, bolts in a row, braze colour, weld beads and a seam under fresh paint.', at: [],
        answers: [
          { id: 'none', words: 'none' },
          { id: 'plated', words: 'plates bolted or riveted over a break' },
          { id: 'stitched', words: 'metal stitching: a row of plugs along a line' },
          { id: 'brazed', words: 'brazed' },
          { id: 'welded', words: 'welded' },
          { id: 'filler', words: 'filler or fresh paint hides a seam' },
        ] },
      { id: 'frame.ring', question: 'How does the casting ring?', how: 'Tap throat, spine and lugs with a light hammer, bolts tight and guards off, and compare both sides.', at: [],
        answers: [
          { id: 'clear', words: 'rings alike all over' },
          { id: 'dull', spot: true, words: 'dull or buzzing in one place' },
        ] },
    ],
  },
  {
    id: 'nameplate', rows: [51], name: { us: 'nameplate, casting marks and paint', uk: 'maker’s plate, casting marks and paint' }, group: 'castings', families: EVERY,
    places: [],
    looks: [
      { id: 'nameplate.marks', question: 'Can the casting marks or serial be read?', how: 'Wire-brush the flat on the rear of the column and rub chalk over it.', at: [],
        answers: [
          { id: 'read', words: 'read and photographed' },
          { id: 'part', words: 'partly readable' },
          { id: 'none', words: 'no marks found' },
        ] },
      { id: 'nameplate.paint', question: 'What does the paint cover?', how: 'Look whether oil holes, seams, shim gaps and marks are open or buried.', at: [],
        answers: [
          { id: 'clear', words: 'oil holes, seams and marks are clear' },
          { id: 'buries', words: 'oil holes, seams or marks are buried' },
          { id: 'fresh', words: 'fresh all over: nothing of the iron can be seen' },
        ] },
    ],
  },
  {
    id: 'ways', rows: [15], name: { us: 'ways', uk: 'slides' }, group: 'castings', families: GUIDED,
    places: [
      { id: 'ways.square', name: 'ways out of square to the die seat, over one foot', dimension: 'length', at: ['fore-aft', 'side'], tools: ['feeler', 'dial-indicator'], how: 'Stand a machinist’s square on the cleaned die seat floor against the way; push feelers into the gap one foot (300 mm) up.', accuracy: '0.002 in', plausible: [0, 0.02] },
      { id: 'ways.straight', name: 'ways hollow over their height', dimension: 'length', at: [], tools: ['feeler'], how: 'Hold a straightedge on the way and push feelers under it where the ram rubs most.', accuracy: '0.002 in', plausible: [0, 0.02] },
    ],
    looks: [
      { id: 'ways.state', question: 'What do the ways look like?', how: 'Wipe the old oil off and look for scoring, rust and bright bands.', at: [],
        answers: [
          { id: 'smooth', words: 'smooth and oily' },
          { id: 'scored', words: 'scored: a nail catches' },
          { id: 'rusted', words: 'rusted or pitted' },
        ] },
    ],
  },
  {
    id: 'anvil', rows: [37], name: { us: 'anvil block', uk: 'anvil block' }, group: 'castings', families: EVERY,
    places: [
      { id: 'anvil.mass', name: 'anvil mass', dimension: 'mass', at: [], tools: ['scale', 'tape'], how: 'Weigh it, or measure the solid iron under the lower die and take 0.26 lb per cubic inch (7,200 kg per cubic metre); leave hollows out.', accuracy: '10 %', plausible: [20, 50_000], asMade: true },
    ],
    looks: [
      { id: 'anvil.kind', question: 'What is the anvil?', how: 'Look for a joint between anvil and column; knock below the seat and listen for a hollow.', at: [],
        answers: [
          { id: 'in-frame', words: 'part of the frame casting' },
          { id: 'separate', words: 'a block of its own' },
          { id: 'hollow', words: 'hollow casting below the seat' },
        ] },
      { id: 'anvil.tight', whileRunning: true, question: 'Does the anvil sit tight?', how: 'Wipe the joint, draw a pencil line over it and look again after a few blows; try a feeler in the joint.', at: [],
        answers: [
          { id: 'tight', words: 'tight, the line holds' },
          { id: 'shifts', words: 'shifts or works in its bed' },
        ] },
    ],
  },
];
