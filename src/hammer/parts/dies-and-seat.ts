import type { Part } from '../vocabulary.ts';
import { CORNERS, EVERY } from './families.ts';

const DIE_HEIGHT_WAYS = [
  { id: 'above-seat-base', words: 'net: from the seat’s true floor as made up to the face, whatever the die has sunk' },
  { id: 'above-seat-rim', words: 'from the machined rim of the seat up to the face' },
  { id: 'whole-die', words: 'die out on the bench, floor of the dovetail to face' },
] as const;

/** Dies, keys and the seats that hold them: the stack from which all heights follow. */
export const DIES_AND_SEAT: readonly Part[] = [
  {
    id: 'upper-die', rows: [1, 2, 4, 5, 10], name: { us: 'upper die, top die', uk: 'top tool, top pallet' }, group: 'dies-and-seat', families: EVERY,
    places: [
      { id: 'upper-die.height', name: 'upper die height', dimension: 'length', at: CORNERS, tools: ['caliper', 'height-gauge', 'rule'], how: 'Block the ram first. Measure from the floor of the dovetail to the face, once, or at each of the four corners; say which way it was measured.', accuracy: '0.005 in; a rule to 1/32 in is enough for the stack', plausible: [0.005, 0.4], asMade: true, ways: DIE_HEIGHT_WAYS },
      { id: 'upper-die.width', name: 'upper die width at the seat', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the body where it bears in its seat, from flank to flank.', accuracy: '1/32 in', plausible: [0.005, 0.5], asMade: true },
      { id: 'upper-die.length', name: 'upper die length at the seat', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure along the dovetail, the way the key is driven.', accuracy: '1/32 in', plausible: [0.005, 0.8], asMade: true },
      { id: 'upper-die.face-width', name: 'upper die face width', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Measure the working face across, without the rounded edges.', accuracy: '1/32 in', plausible: [0.003, 0.5] },
      { id: 'upper-die.face-length', name: 'upper die face length', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Measure the working face along, without the rounded edges.', accuracy: '1/32 in', plausible: [0.003, 0.8] },
      { id: 'upper-die.hollow', name: 'upper die face hollow', dimension: 'length', at: [], tools: ['feeler', 'depth-gauge'], how: 'Hold a straightedge across the face both ways and push feelers under it at the deepest place.', accuracy: '0.002 in', plausible: [0, 0.02] },
      { id: 'upper-die.edge-radius', name: 'upper die edge radius', dimension: 'length', at: [], tools: ['radius-gauge', 'rule'], how: 'Hold a radius gauge or a drill shank of known size to the edge.', accuracy: '1/64 in', plausible: [0, 0.05] },
      { id: 'upper-die.rest-gap', name: 'gap between the dies at bottom dead centre', dimension: 'length', at: [], tools: ['rule', 'caliper', 'feeler'], how: 'Power locked off: turn the belt wheel by hand until the ram is lowest, block it, and measure between the faces. Zero means that they touch.', accuracy: '1/32 in', plausible: [0, 0.3], asMade: true },
      { id: 'upper-die.parallel', name: 'dies out of parallel, corner to corner', dimension: 'length', at: [], tools: ['caliper', 'feeler'], how: 'Close the dies on four equal pellets of lead or clay at the corners, by hand; measure the pellets and take the greatest difference.', accuracy: '0.005 in', plausible: [0, 0.03] },
    ],
    looks: [
      { id: 'upper-die.face', question: 'What is the face of the upper die like?', how: 'Block the ram, look from below with a mirror and a light; run a finger round the edges. Use a loupe on the corners.', at: [],
        answers: [
          { id: 'clean', words: 'flat, edges rounded, no cracks' },
          { id: 'mushroomed', words: 'edges rolled over: soft' },
          { id: 'chipped', words: 'a corner or edge is chipped' },
          { id: 'cracked', spot: true, words: 'a crack in face or body' },
        ] },
      { id: 'upper-die.hardness', question: 'How hard is the upper die?', how: 'Draw a sharp file over a corner away from the work, or use a portable tester.', at: [],
        answers: [
          { id: 'soft', words: 'file bites easily' },
          { id: 'tough', words: 'file bites a little' },
          { id: 'hard', words: 'file skates' },
        ] },
    ],
  },
  {
    id: 'lower-die', rows: [1, 3, 4, 5, 10], name: { us: 'lower die, bottom die', uk: 'bottom tool, bottom pallet' }, group: 'dies-and-seat', families: EVERY,
    places: [
      { id: 'lower-die.height', name: 'lower die height', dimension: 'length', at: CORNERS, tools: ['caliper', 'height-gauge', 'rule'], how: 'Measure from the seat’s true floor to the face, once, or at each of the four corners. A die that has sunk is still measured above the floor as made; say which way it was measured.', accuracy: '0.005 in; a rule to 1/32 in is enough for the stack', plausible: [0.005, 0.4], asMade: true, ways: DIE_HEIGHT_WAYS },
      { id: 'lower-die.width', name: 'lower die width at the seat', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the body where it bears on the seat floor, from flank to flank.', accuracy: '1/32 in', plausible: [0.005, 0.5], asMade: true },
      { id: 'lower-die.length', name: 'lower die length at the seat', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure along the dovetail, the way the key is driven.', accuracy: '1/32 in', plausible: [0.005, 0.8], asMade: true },
      { id: 'lower-die.face-width', name: 'lower die face width', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Measure the working face across, without the rounded edges.', accuracy: '1/32 in', plausible: [0.003, 0.5] },
      { id: 'lower-die.face-length', name: 'lower die face length', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Measure the working face along, without the rounded edges.', accuracy: '1/32 in', plausible: [0.003, 0.8] },
      { id: 'lower-die.hollow', name: 'lower die face hollow', dimension: 'length', at: [], tools: ['feeler', 'depth-gauge'], how: 'Hold a straightedge across the face both ways and push feelers under it at the deepest place.', accuracy: '0.002 in', plausible: [0, 0.02] },
      { id: 'lower-die.edge-radius', name: 'lower die edge radius', dimension: 'length', at: [], tools: ['radius-gauge', 'rule'], how: 'Hold a radius gauge or a drill shank of known size to the edge.', accuracy: '1/64 in', plausible: [0, 0.05] },
    ],
    looks: [
      { id: 'lower-die.face', question: 'What is the face of the lower die like?', how: 'Brush the scale off, look under a strong light, run a finger round the edges. Use a loupe on the corners.', at: [],
        answers: [
          { id: 'clean', words: 'flat, edges rounded, no cracks' },
          { id: 'mushroomed', words: 'edges rolled over: soft' },
          { id: 'chipped', words: 'a corner or edge is chipped' },
          { id: 'cracked', spot: true, words: 'a crack in face or body' },
        ] },
      { id: 'lower-die.hardness', question: 'How hard is the lower die?', how: 'Draw a sharp file over a corner away from the work, or use a portable tester.', at: [],
        answers: [
          { id: 'soft', words: 'file bites easily' },
          { id: 'tough', words: 'file bites a little' },
          { id: 'hard', words: 'file skates' },
        ] },
      { id: 'lower-die.bearing', question: 'Does the lower die fill its seat?', how: 'Look at the joint between die and seat floor from both ends, and compare the width of the body with the width of the floor.', at: [],
        answers: [
          { id: 'fills', words: 'body nearly fills the seat floor' },
          { id: 'narrow', words: 'body clearly narrower than the floor' },
          { id: 'packed', words: 'stands on loose packings' },
        ] },
    ],
  },
  {
    id: 'dovetail', rows: [5], name: { us: 'dovetails', uk: 'dovetails' }, group: 'dies-and-seat', families: EVERY,
    places: [
      { id: 'dovetail.chip-share', name: 'length of a chip in the lip, as a share of its length', dimension: 'ratio', at: ['upper', 'lower'], tools: ['rule'], how: 'Measure the missing piece along the lip and divide by the length of the lip.', accuracy: '5 %', plausible: [0, 1] },
      { id: 'dovetail.flank-angle', name: 'flank angle', dimension: 'angle', at: ['upper', 'lower'], tools: ['protractor'], how: 'Measure over two dowel pins or hold a protractor to the flank; makers differ, so always measure.', accuracy: '0.2 degree', plausible: [0, 0.8], asMade: true },
    ],
    looks: [
      { id: 'dovetail.flank', question: 'How do the flanks bear?', how: 'Blue the key, push it home by hand, draw it and look where the blue went.', at: ['upper', 'lower'],
        answers: [
          { id: 'full', words: 'key lies flat on the full flank' },
          { id: 'part', words: 'key bears on part of the flank' },
          { id: 'upright', words: 'angle lost: walls nearly upright' },
        ] },
      { id: 'dovetail.crack', question: 'Is a lip of a dovetail cracked?', how: 'Clean the root of each lip to bare iron and look with dye.', at: ['upper', 'lower'],
        answers: [
          { id: 'none', words: 'clean, none found' },
          { id: 'suspected', words: 'a line at the root that is not explained' },
          { id: 'present', spot: true, words: 'a lip is cracked' },
        ] },
    ],
  },
  {
    id: 'keys', rows: [6], name: { us: 'keys', uk: 'keys, cotters' }, group: 'dies-and-seat', families: EVERY,
    places: [
      { id: 'keys.contact', name: 'share of the key in contact', dimension: 'ratio', at: ['upper', 'lower'], tools: ['eye'], how: 'Blue the key thinly, drive it, draw it, and judge what share of its length shows contact.', accuracy: '5 %', plausible: [0, 1] },
      { id: 'keys.projection', name: 'length left to drive', dimension: 'length', at: ['upper', 'lower'], tools: ['rule'], how: 'Measure how far the large end stands out of the seat when the key is tight.', accuracy: '1/16 in', plausible: [0, 0.3] },
      { id: 'keys.thickness', name: 'key section, the thinner way', dimension: 'length', at: ['upper', 'lower'], tools: ['caliper'], how: 'Measure the thinner side of the key at the middle of its length.', accuracy: '1/64 in', plausible: [0.001, 0.06], asMade: true },
      { id: 'keys.taper', name: 'key taper in one foot', dimension: 'length', at: ['upper', 'lower'], tools: ['caliper'], how: 'Measure the width at two places and work out the difference in one foot (300 mm).', accuracy: '0.010 in', plausible: [0, 0.03], asMade: true },
      { id: 'keys.height', name: 'key section, the taller way', dimension: 'length', at: ['upper', 'lower'], tools: ['caliper', 'rule'], how: 'Measure the taller side of the key, along the flank, at the middle of its length.', accuracy: '1/64 in', plausible: [0.003, 0.15], asMade: true, forMaking: true },
    ],
    looks: [
      { id: 'keys.secure', question: 'Are both dies and both keys tight?', how: 'Ram blocked: tap each die and key sideways with a hammer, feel for movement, try a 0.002 in feeler in the joints. Strike a loose key once and try again.', at: [],
        answers: [
          { id: 'tight', words: 'both dies tight' },
          { id: 'tightened', words: 'one was loose and drove tight, with length left' },
          { id: 'loose', words: 'one stays loose, or the key is home with nothing left to drive' },
          { id: 'missing', words: 'a key is missing or the die is held by something else' },
        ] },
      { id: 'keys.taper-flank', question: 'Which flank carries the taper of the key?', how: 'Die out: measure the width of the seat, or of the ram’s dovetail, at both ends. Parallel: the taper is on the flank of the die.', at: ['upper', 'lower'], forMaking: true,
        answers: [
          { id: 'die', words: 'the seat is parallel: the taper is on the flank of the die' },
          { id: 'seat', words: 'the seat runs to the taper: the die is parallel' },
          { id: 'none', words: 'seat, die and key are all parallel' },
        ] },
      { id: 'keys.side', question: 'On which side of the die does the key lie?', how: 'Stand where the key is driven in and look along it.', at: ['upper', 'lower'], forMaking: true,
        answers: [
          { id: 'left', words: 'left of the die' },
          { id: 'right', words: 'right of the die' },
        ] },
      { id: 'keys.dovetail-oil', question: 'Are the dovetails and keys dry?', how: 'Wipe the joints with a white rag; look for oil creeping down from the ways.', at: [],
        answers: [
          { id: 'dry', words: 'dry and free of oil' },
          { id: 'oily', words: 'oil or grease in a dovetail or on a key' },
        ] },
      { id: 'keys.state', question: 'What are the keys like?', how: 'Look at both ends of each key and along it.', at: ['upper', 'lower'],
        answers: [
          { id: 'good', words: 'straight, clean ends, stands out at both ends' },
          { id: 'mushroomed', words: 'ends swollen from driving' },
          { id: 'bent', words: 'bent or too thin' },
          { id: 'packed', words: 'packed with several loose shims' },
          { id: 'brittle', words: 'chipped or glass-hard' },
        ] },
    ],
  },
  {
    id: 'key-removal', rows: [6.5], name: { us: 'key removal', uk: 'drawing the keys' }, group: 'dies-and-seat', families: EVERY,
    places: [
      { id: 'key-removal.room', name: 'clear length behind the small end', dimension: 'length', at: ['upper', 'lower'], tools: ['rule', 'tape'], how: 'Measure how much room there is behind the small end for a drift and a swing.', accuracy: '1 in', plausible: [0, 5] },
    ],
    looks: [
      { id: 'key-removal.state', question: 'Do the keys come out?', how: 'Long thin drift with a squared end, held in a jig or on a rod; one firm blow from a 2 to 3 lb hammer, not taps; soak with oil and warm first.', at: ['upper', 'lower'],
        answers: [
          { id: 'came-out', words: 'came out with a drift' },
          { id: 'stuck', words: 'stuck: soak, warm, pull' },
        ] },
    ],
  },
  {
    id: 'seat', rows: [7], name: { us: 'die seat, die pocket', uk: 'die seat' }, group: 'dies-and-seat', families: EVERY,
    places: [
      { id: 'seat.sunk', name: 'depth that the die has sunk into the seat', dimension: 'length', at: [], tools: ['depth-gauge', 'caliper', 'rule'], how: 'Die out: lay a straightedge on the floor that the die never touched and measure down to the floor under the die.', accuracy: '1/64 in', plausible: [0, 0.06] },
      { id: 'seat.dish', name: 'hollow of the seat floor under the die', dimension: 'length', at: [], tools: ['depth-gauge', 'feeler'], how: 'Straightedge across the floor under the die; feelers at nine points; take the deepest.', accuracy: '0.002 in', plausible: [0, 0.03] },
      { id: 'seat.width', name: 'seat floor width', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure the floor between the feet of the flanks.', accuracy: '1/32 in', plausible: [0.01, 0.6], asMade: true },
      { id: 'seat.width-over-plate', name: 'seat width at the top of a filler plate', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Stand blocks as thick as the seat has sunk on its floor and measure between the flanks on top of them; where it was not sunk, on the floor.', accuracy: '1/64 in', plausible: [0.01, 0.6], forMaking: true },
      { id: 'seat.length', name: 'seat floor length', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Measure the floor along the way the key is driven.', accuracy: '1/32 in', plausible: [0.01, 1], asMade: true },
      { id: 'seat.depth', name: 'seat depth below the machined rim', dimension: 'length', at: [], tools: ['depth-gauge', 'rule'], how: 'Measure from the machined rim down to the true floor.', accuracy: '1/64 in', plausible: [0.002, 0.2], asMade: true },
      { id: 'seat.cut', name: 'depth cut off the true floor', dimension: 'length', at: [], tools: ['depth-gauge', 'caliper'], how: 'Only where the floor is milled or ground: depth gauge from the rim to the true floor before and after; enter the difference.', accuracy: '0.002 in', plausible: [0, 0.06], forMaking: true },
    ],
    looks: [
      { id: 'seat.iron', question: 'What is the seat made of?', how: 'Sow blocks are mostly steel: file a corner and look at the chips. Grey iron crumbles to grey dust. The class is a guess unless there is a paper; class 25 or 30 is likely for an old casting.', at: [],
        answers: [
          { id: 'grey-iron-20', words: 'grey iron, class 20' },
          { id: 'grey-iron-25', words: 'grey iron, class 25' },
          { id: 'grey-iron-30', words: 'grey iron, class 30' },
          { id: 'grey-iron-35', words: 'grey iron, class 35' },
          { id: 'grey-iron-40', words: 'grey iron, class 40' },
          { id: 'steel', words: 'steel' },
          { id: 'not-known', words: 'not known' },
        ] },
      { id: 'seat.kind', question: 'How is the seat made?', how: 'Look for a joint below the lower die.', at: [],
        answers: [
          { id: 'in-frame', words: 'cut in the frame or anvil itself' },
          { id: 'sow-block', words: 'in a separate sow block' },
        ] },
      { id: 'seat.ear', question: 'Are the walls of the seat whole?', how: 'Look at both lips over their whole length.', at: [],
        answers: [
          { id: 'whole', words: 'whole' },
          { id: 'chunk-die-solid', words: 'a piece is missing, the die still sits solid' },
          { id: 'chunk-die-loose', words: 'a piece is missing and the die is not held' },
        ] },
    ],
  },
  {
    id: 'sow-block', rows: [8], name: { us: 'sow block, anvil cap', uk: 'shoe, sole block' }, group: 'dies-and-seat', families: EVERY,
    places: [
      { id: 'sow-block.height', name: 'sow block height', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure from its seat in the frame to the floor of its own dovetail.', accuracy: '1/32 in', plausible: [0.01, 0.6], asMade: true },
      { id: 'sow-block.dish', name: 'hollow of its top or underside', dimension: 'length', at: [], tools: ['feeler', 'depth-gauge'], how: 'Straightedge across, feelers under it; take the deepest of top and underside.', accuracy: '0.002 in', plausible: [0, 0.03] },
    ],
    looks: [
      { id: 'sow-block.fitted', question: 'Is the sow block there?', how: 'Compare with the joint and the empty dovetail of the frame.', at: [],
        answers: [
          { id: 'fitted', words: 'fitted' },
          { id: 'none-by-design', words: 'the frame was made without one' },
          { id: 'left-out', words: 'made with one, and it is left out' },
        ] },
      { id: 'sow-block.state', question: 'How does the sow block sit?', how: 'Tap it sideways, try a feeler in its joint, look at its lips with dye.', at: [],
        answers: [
          { id: 'tight', words: 'whole and tight' },
          { id: 'loose', words: 'loose in the frame' },
          { id: 'cracked', spot: true, words: 'cracked' },
        ] },
    ],
  },
  {
    id: 'filler-plate', rows: [9], name: { us: 'filler plate', uk: 'packing, liner' }, group: 'dies-and-seat', families: EVERY,
    places: [
      { id: 'filler-plate.thickness', name: 'filler plate thickness', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Measure clean, at the four corners, and take the mean. Zero or nothing entered means no plate.', accuracy: '0.002 in', plausible: [0, 0.06] },
      { id: 'filler-plate.taper', name: 'filler plate out of parallel', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Greatest difference between the four corners.', accuracy: '0.001 in', plausible: [0, 0.01] },
    ],
    looks: [
      { id: 'filler-plate.state', question: 'How does the filler plate lie?', how: 'Look at the joint from both ends; try a feeler under die and plate.', at: [],
        answers: [
          { id: 'none', words: 'there is none' },
          { id: 'bedded', words: 'bedded over the full base, held' },
          { id: 'small', words: 'smaller than the die base' },
          { id: 'rocks', words: 'rocks, curls or sits on rust' },
          { id: 'cracked', spot: true, words: 'cracked' },
        ] },
    ],
  },
];
