import type { Part } from '../vocabulary.ts';
import { BOW, COIL, EVERY, GUIDED, HELVE } from './families.ts';

const CRACK_ANSWERS = [
  { id: 'none', words: 'looked at clean, none found' },
  { id: 'suspected', spot: true, words: 'a line that is not explained' },
  { id: 'present', spot: true, words: 'a crack is there' },
] as const;

/** The moving parts between crank and die. */
export const RAM_AND_LINKAGE: readonly Part[] = [
  {
    id: 'ram', rows: [11], name: { us: 'ram, hammer head', uk: 'tup' }, group: 'ram-and-linkage', families: EVERY,
    places: [
      { id: 'ram.mass', name: 'ram mass with upper die and links', dimension: 'mass', at: [], tools: ['scale'], how: 'Weigh ram, upper die and links together; the nominal class is a first guess only.', accuracy: '5 %', plausible: [3, 1500], asMade: true },
      { id: 'ram.wear-step', name: 'wear step on the ram faces', dimension: 'length', at: [], tools: ['feeler', 'caliper'], how: 'Caliper the ram at top, middle and bottom, or hold a straightedge along it; take the greatest difference.', accuracy: '0.003 in', plausible: [0, 0.01] },
      { id: 'ram.width', name: 'ram width across the ways', dimension: 'length', at: ['top', 'middle', 'bottom'], tools: ['caliper', 'rule'], how: 'Measure across the sliding faces.', accuracy: '0.003 in', plausible: [0.01, 0.8], asMade: true },
      { id: 'ram.height', name: 'ram length, top to dovetail', dimension: 'length', at: [], tools: ['rule', 'tape'], how: 'Measure the sliding part from its top to the floor of the dovetail.', accuracy: '1/8 in', plausible: [0.03, 2] },
      { id: 'ram.dovetail-depth', name: 'depth of the ram’s dovetail', dimension: 'length', at: [], tools: ['depth-gauge', 'rule'], how: 'Upper die out, ram blocked: depth gauge from the lower face of the ram to the floor of its dovetail.', accuracy: '1/64 in', plausible: [0.002, 0.2], asMade: true, forMaking: true },
      { id: 'ram.dovetail-width', name: 'width of the ram’s dovetail at its floor', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Upper die out, ram blocked: measure the floor between the feet of the flanks.', accuracy: '1/32 in', plausible: [0.01, 0.6], asMade: true, forMaking: true },
      { id: 'ram.dovetail-length', name: 'length of the ram’s dovetail', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Upper die out, ram blocked: measure along the way the key is driven.', accuracy: '1/32 in', plausible: [0.01, 1], asMade: true, forMaking: true },
    ],
    looks: [
      { id: 'ram.crack', question: 'Is the ram cracked at its dovetail or pin boss?', how: 'Block the ram, clean lips and bosses, look with dye. A casting void in the face away from the dovetail is usually harmless.', at: [], answers: CRACK_ANSWERS },
    ],
  },
  {
    id: 'ram-guide', rows: [12], name: { us: 'ram guide', uk: 'guide, slides' }, group: 'ram-and-linkage', families: GUIDED,
    places: [
      { id: 'ram-guide.play-fore-aft', name: 'ram play fore and aft', dimension: 'length', at: ['top', 'bottom'], tools: ['dial-indicator', 'feeler'], how: 'Power locked off, ram blocked near that end of its travel: lever the ram towards and away from the column and read the whole movement on a dial, or fit feelers.', accuracy: '0.002 in', plausible: [0, 0.02], asMade: true },
      { id: 'ram-guide.play-side', name: 'ram play from side to side', dimension: 'length', at: ['top', 'bottom'], tools: ['dial-indicator', 'feeler'], how: 'Power locked off, ram blocked near that end of its travel: lever the ram from side to side and read the whole movement on a dial, or fit feelers.', accuracy: '0.002 in', plausible: [0, 0.02], asMade: true },
      { id: 'ram-guide.linkage-clearance', name: 'clearance between linkage and guide, dies closed', dimension: 'length', at: [], tools: ['rule', 'feeler', 'caliper'], how: 'Spring preload as used, dies closed by hand on each other: measure the least gap between any link, pin or strap and the guide. Zero means that it just touches.', accuracy: '1/64 in', plausible: [0, 0.2], asMade: true },
      { id: 'ram-guide.retraction', name: 'room left above the linkage at the top', dimension: 'length', at: [], tools: ['rule'], how: 'Ram at its highest by hand: measure the least gap between linkage or ram and whatever is above it.', accuracy: '1/32 in', plausible: [0, 0.3] },
      { id: 'ram-guide.carrier-room', name: 'room between the ram and what carries it, ram hanging', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Power locked off, crank at bottom dead centre, ram hanging free: measure straight up from the top of the ram to the crosshead, bow or clip that it would meet if it were thrown up.', accuracy: '1/16 in', plausible: [0, 0.5] },
      { id: 'ram-guide.hang-room', name: 'how far the linkage can still hang before it meets the guide', dimension: 'length', at: [], tools: ['rule', 'dial-indicator'], how: 'Power locked off, crank blocked at the top, ram hanging free: draw the ram down with a clamp until a link, pin or arm end just touches the guide, and read how far the ram went. Ease it up again; the spring pulls.', accuracy: '1/16 in', plausible: [0, 0.3] },
      { id: 'ram-guide.height', name: 'guide height', dimension: 'length', at: [], tools: ['rule', 'tape'], how: 'Measure the guide from its lower to its upper edge.', accuracy: '1/8 in', plausible: [0.03, 1.5] },
    ],
    looks: [
      { id: 'ram-guide.ears', question: 'Are the ears of the ram guide whole?', how: 'Clean round each bolt boss and ear, tap, look with dye. Old braze counts as repaired.', at: [],
        answers: [
          { id: 'whole', words: 'whole' },
          { id: 'suspected', words: 'a line at an ear that is not explained' },
          { id: 'broken', spot: true, words: 'an ear is cracked or broken' },
          { id: 'repaired', words: 'an old repair holds: no opening beside it' },
        ] },
      { id: 'ram-guide.kind', question: 'Which kind of guide?', how: 'Look from the front.', at: [],
        answers: [
          { id: 'wrap-around', words: 'in one piece round the ram' },
          { id: 'capped', words: 'capped, adjustable by shims' },
          { id: 'gibs', words: 'adjustable by gibs and screws' },
        ] },
      { id: 'ram-guide.fall', question: 'How does the ram move in its guide?', how: 'Linkage off or slack, ways oiled: lower the ram on a hoist and feel.', at: [],
        answers: [
          { id: 'free', words: 'falls of its own weight without rock' },
          { id: 'rocks', words: 'falls and rocks' },
          { id: 'sticks', words: 'sticks somewhere' },
        ] },
    ],
  },
  {
    id: 'guide-shims', rows: [13], name: { us: 'guide shims', uk: 'guide liners' }, group: 'ram-and-linkage', families: GUIDED,
    places: [
      { id: 'guide-shims.thickness', name: 'shim pack thickness', dimension: 'length', at: ['left', 'right'], tools: ['micrometer', 'caliper'], how: 'Record it as found before anything is taken out; measure the whole pack, clean.', accuracy: '0.001 in', plausible: [0, 0.03] },
      { id: 'guide-shims.width', name: 'shim width', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Lay the old shim down and measure across; without one, the width of the joint that it fills.', accuracy: '1/32 in', plausible: [0.005, 0.3], forMaking: true },
      { id: 'guide-shims.holes', name: 'bolt holes in a shim', dimension: 'count', at: [], tools: ['eye'], how: 'Count the holes that bolts go through; 0 where the shim lies beside the bolts.', accuracy: 'exact', plausible: [0, 12], forMaking: true },
      { id: 'guide-shims.hole-diameter', name: 'diameter of a bolt hole in a shim', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Caliper a hole of the old shim, or take the bolt and 1/32 in.', accuracy: '1/64 in', plausible: [0.003, 0.06], forMaking: true },
      { id: 'guide-shims.hole-pitch', name: 'distance from bolt hole to bolt hole', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure between neighbouring bolt centres, along the shim.', accuracy: '1/64 in', plausible: [0.01, 0.8], forMaking: true },
    ],
    looks: [
      { id: 'guide-shims.state', question: 'How are the guide shims held?', how: 'Look at the top and bottom edges of the packs, both sides.', at: [],
        answers: [
          { id: 'held', words: 'whole and held so that they cannot climb' },
          { id: 'free', words: 'whole, nothing holds them' },
          { id: 'climbing', words: 'climbing out of the guide' },
          { id: 'broken', words: 'broken or lost' },
        ] },
    ],
  },
  {
    id: 'guide-bolts', rows: [14], name: { us: 'guide bolts', uk: 'guide bolts' }, group: 'ram-and-linkage', families: GUIDED,
    places: [],
    looks: [
      { id: 'guide-bolts.state', question: 'How are the guide bolts?', how: 'Put a spanner on each: feel for even tightness, look for locking, thread and grade marks.', at: [],
        answers: [
          { id: 'tight', words: 'all tight, locked, alike' },
          { id: 'loose', words: 'one or more loose' },
          { id: 'stripped', words: 'a thread is stripped or a bolt stretched' },
          { id: 'mixed', words: 'different bolts of unknown grade' },
        ] },
    ],
  },
  {
    id: 'toggle-links', rows: [16], name: { us: 'toggle links', uk: 'short links' }, group: 'ram-and-linkage', families: COIL,
    places: [
      { id: 'toggle-links.play', name: 'play at the ram pin', dimension: 'length', at: ['left', 'right'], tools: ['dial-indicator', 'feeler'], how: 'Ram blocked: lift the link with a small bar and read the whole movement at the ram pin.', accuracy: '0.002 in', plausible: [0, 0.02] },
      { id: 'toggle-links.length', name: 'link length, pin to pin', dimension: 'length', at: ['left', 'right'], tools: ['caliper', 'rule'], how: 'Measure from pin centre to pin centre.', accuracy: '0.005 in', plausible: [0.02, 0.6], asMade: true },
    ],
    looks: [
      { id: 'toggle-links.crack', question: 'Is a link cracked?', how: 'Clean round both eyes of each link and look with dye.', at: ['left', 'right'], answers: CRACK_ANSWERS },
    ],
  },
  {
    id: 'toggle-arms', rows: [17], name: { us: 'toggle arms', uk: 'side arms' }, group: 'ram-and-linkage', families: COIL,
    places: [
      { id: 'toggle-arms.length', name: 'arm length, pin to pin', dimension: 'length', at: ['left', 'right'], tools: ['caliper', 'rule'], how: 'Measure from the centre of the pivot pin to the centre of the lower pin.', accuracy: '0.005 in', plausible: [0.03, 1], asMade: true },
      { id: 'toggle-arms.upper-length', name: 'arm length, pivot to spring', dimension: 'length', at: ['left', 'right'], tools: ['rule', 'caliper'], how: 'Measure from the centre of the pivot pin up to where the spring or its seat bears on the arm.', accuracy: '1/32 in', plausible: [0.03, 1] },
      { id: 'toggle-arms.carrier-gap', name: 'gap between arm and spring carrier', dimension: 'length', at: ['left', 'right'], tools: ['rule', 'feeler'], how: 'Spring set, ram hanging: measure the least gap between the arm and the carrier.', accuracy: '1/32 in', plausible: [0, 0.2] },
    ],
    looks: [
      { id: 'toggle-arms.crack', question: 'Is any arm, link or pin of the linkage cracked?', how: 'Power locked off and ram blocked: clean every pin boss, eye and pin end and look with dye. One doubtful line is enough for “suspected”.', at: [], answers: CRACK_ANSWERS },
      { id: 'toggle-arms.straight', question: 'Are both arms straight and alike?', how: 'Sight along each arm and compare the two.', at: [],
        answers: [
          { id: 'alike', words: 'straight and alike' },
          { id: 'bent', words: 'one is bent' },
          { id: 'odd', words: 'not a pair' },
        ] },
      { id: 'toggle-arms.set', question: 'How do the arms stand with the ram hanging at rest?', how: 'Look from the front, treadle up, ram at bottom dead centre.', at: [],
        answers: [
          { id: 'level', words: 'close to level' },
          { id: 'droop', words: 'drooping: the ram hangs low' },
          { id: 'lifted', words: 'lifted: the ram hangs high' },
        ] },
    ],
  },
  {
    id: 'toggle-pins', rows: [18], name: { us: 'toggle pins and bushings', uk: 'pins and bushes' }, group: 'ram-and-linkage', families: COIL,
    places: [
      { id: 'toggle-pins.play', name: 'play of the joint', dimension: 'length', at: ['upper-left', 'upper-right', 'lower-left', 'lower-right'], tools: ['dial-indicator', 'feeler', 'micrometer'], how: 'Ram blocked and spring slack: move the arm against its pin and read the whole movement, joint by joint.', accuracy: '0.001 in', plausible: [0, 0.02], asMade: true },
      { id: 'toggle-pins.diameter', name: 'pin diameter', dimension: 'length', at: ['upper-left', 'upper-right', 'lower-left', 'lower-right'], tools: ['micrometer', 'caliper'], how: 'Pin out: measure it where it wears and where it does not.', accuracy: '0.001 in', plausible: [0.004, 0.12], asMade: true },
      { id: 'toggle-pins.length', name: 'pin length over all', dimension: 'length', at: ['upper-left', 'upper-right', 'lower-left', 'lower-right'], tools: ['caliper', 'rule'], how: 'Pin out: measure from end to end. Without it: over everything that it goes through, and a washer and a split pin at each end.', accuracy: '1/32 in', plausible: [0.01, 0.6], asMade: true, forMaking: true },
      { id: 'toggle-pins.eye-width', name: 'width of the eye that is bushed, along the pin', dimension: 'length', at: ['upper-left', 'upper-right', 'lower-left', 'lower-right'], tools: ['caliper', 'rule'], how: 'Measure the thickness of the eye that the bush is pressed into, joint by joint.', accuracy: '1/64 in', plausible: [0.005, 0.3], forMaking: true },
      { id: 'toggle-pins.eye-outside', name: 'outside of the eye, the thin way', dimension: 'length', at: ['upper-left', 'upper-right', 'lower-left', 'lower-right'], tools: ['caliper', 'rule'], how: 'Measure across the eye where there is least metal round the bore.', accuracy: '1/32 in', plausible: [0.01, 0.4], forMaking: true },
      { id: 'toggle-pins.eye-bore', name: 'bore of the eye, bush out', dimension: 'length', at: ['upper-left', 'upper-right', 'lower-left', 'lower-right'], tools: ['caliper', 'rule'], how: 'Old bush out: measure the bore at two angles and both ends; enter the greatest.', accuracy: '1/64 in', plausible: [0.006, 0.2], forMaking: true },
    ],
    looks: [
      { id: 'toggle-pins.state', question: 'What are the pins like?', how: 'Draw one pin, wipe it and look at it.', at: [],
        answers: [
          { id: 'oiled', words: 'smooth and oily' },
          { id: 'dry', words: 'dry or rusty' },
          { id: 'galled', words: 'scored or galled' },
        ] },
      { id: 'toggle-pins.held', question: 'Are all pins kept from walking out?', how: 'Look at the split pins, collars or set screws of each.', at: [],
        answers: [
          { id: 'held', words: 'all held' },
          { id: 'not-held', words: 'one or more can walk out' },
        ] },
    ],
  },
  {
    id: 'coil-spring', rows: [19], name: { us: 'coil spring', uk: 'coil spring' }, group: 'ram-and-linkage', families: COIL,
    places: [
      { id: 'coil-spring.free-length', name: 'free length', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Preload let off and spring out: measure over the ends, standing free.', accuracy: '1/32 in', plausible: [0.03, 1], asMade: true },
      { id: 'coil-spring.installed-length', name: 'length as set in the machine', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Ram hanging at rest: measure between the spring’s seats.', accuracy: '1/32 in', plausible: [0.02, 1], asMade: true },
      { id: 'coil-spring.wire', name: 'wire thickness', dimension: 'length', at: [], tools: ['caliper', 'micrometer'], how: 'Caliper a middle coil, both ways, clean of rust.', accuracy: '0.005 in', plausible: [0.002, 0.06], asMade: true },
      { id: 'coil-spring.inside-diameter', name: 'inside diameter', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Caliper inside the end coil, both ways, and take the mean.', accuracy: '1/64 in', plausible: [0.005, 0.4], asMade: true },
      { id: 'coil-spring.coils', name: 'coils, end to end', dimension: 'count', at: [], tools: ['eye'], how: 'Count all turns from tip to tip, to the quarter.', accuracy: '1/4 coil', plausible: [2, 30], asMade: true },
      { id: 'coil-spring.shortest-length', whileRunning: true, name: 'shortest length seen running', dimension: 'length', at: [], tools: ['rule', 'camera'], how: 'Film from the side with a rule beside the spring, or use a sliding witness collar; stand aside.', accuracy: '1/16 in', plausible: [0.01, 1] },
      { id: 'coil-spring.pit-depth', name: 'depth of the deepest rust pit', dimension: 'length', at: [], tools: ['depth-gauge', 'micrometer'], how: 'Clean with a wire brush and measure the deepest pit with a needle or pit gauge.', accuracy: '0.005 in', plausible: [0, 0.01] },
    ],
    looks: [
      { id: 'coil-spring.crack', question: 'Is the spring cracked or broken?', how: 'Wipe it, look round every coil with a light and a mirror, most of all inside the end coils.', at: [], answers: CRACK_ANSWERS },
      { id: 'coil-spring.ends', question: 'How are the ends of the spring?', how: 'Look at the last coil of each end.', at: [],
        answers: [
          { id: 'closed-and-ground', words: 'closed and ground flat' },
          { id: 'closed', words: 'closed, not ground' },
          { id: 'open', words: 'open' },
          { id: 'open-and-ground', words: 'open, ground flat' },
        ] },
      { id: 'coil-spring.clash', whileRunning: true, question: 'Do the coils touch when it runs?', how: 'Put dabs of paint between the coils, run for a minute, stop, lock off and look.', at: [],
        answers: [
          { id: 'clear', words: 'paint untouched' },
          { id: 'touch', words: 'coils have touched' },
        ] },
    ],
  },
  {
    id: 'spring-bolt', rows: [20], name: { us: 'spring bolt, adjuster and carrier', uk: 'spring bolt, adjuster and carrier' }, group: 'ram-and-linkage', families: COIL,
    places: [
      { id: 'spring-bolt.thread-left', name: 'thread left to tighten', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Measure the thread between the nut and the end of its run.', accuracy: '1/32 in', plausible: [0, 0.3] },
      { id: 'spring-bolt.thread-pitch', name: 'thread pitch', dimension: 'length', at: [], tools: ['thread-gauge', 'rule'], how: 'Count the threads in one inch, or use a thread gauge, and enter the distance from crest to crest.', accuracy: 'exact', plausible: [0.0004, 0.01] },
    ],
    looks: [
      { id: 'spring-bolt.lock', question: 'Is the spring nut locked?', how: 'Look for a lock nut or pin; try the lock nut by hand.', at: [],
        answers: [
          { id: 'locked', words: 'locked' },
          { id: 'not-locked', words: 'no lock, or it is loose' },
        ] },
      { id: 'spring-bolt.state', question: 'What is the bolt like?', how: 'Sight along it and look at the thread with a light.', at: [],
        answers: [
          { id: 'good', words: 'straight, thread whole' },
          { id: 'stretched', words: 'stretched, bent or thread pulled' },
        ] },
    ],
  },
  {
    id: 'crosshead', rows: [21], name: { us: 'crosshead, spring box', uk: 'crosshead' }, group: 'ram-and-linkage', families: COIL,
    places: [
      { id: 'crosshead.play', name: 'play at the crosshead pin', dimension: 'length', at: [], tools: ['dial-indicator', 'feeler'], how: 'Ram blocked: lift the crosshead with a bar and read the whole movement at its pin.', accuracy: '0.002 in', plausible: [0, 0.02] },
      { id: 'crosshead.pin-diameter', name: 'crosshead pin diameter', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Pin out: measure it where it does not rub.', accuracy: '0.001 in', plausible: [0.006, 0.15], asMade: true, forMaking: true },
      { id: 'crosshead.pin-out-of-round', name: 'crosshead pin out of round', dimension: 'length', at: [], tools: ['micrometer'], how: 'Measure the rubbed part at several angles; greatest less least.', accuracy: '0.0005 in', plausible: [0, 0.01], forMaking: true },
      { id: 'crosshead.pin-length', name: 'length of the crosshead pin over all', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Pin out: measure from end to end. Without it: over everything that it goes through, and a washer and a split pin at each end.', accuracy: '1/64 in', plausible: [0.02, 0.6], forMaking: true },
      { id: 'crosshead.eye-width', name: 'width of the crosshead’s eye, along the pin', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure the thickness of the eye that the bush is pressed into.', accuracy: '1/64 in', plausible: [0.01, 0.4], forMaking: true },
      { id: 'crosshead.eye-outside', name: 'outside of the crosshead’s eye, the thin way', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the eye where there is least metal round the bore.', accuracy: '1/32 in', plausible: [0.01, 0.5], forMaking: true },
      { id: 'crosshead.eye-bore', name: 'bore of the crosshead’s eye, bush out', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Old bush out: measure the bore at two angles and both ends; enter the greatest.', accuracy: '1/64 in', plausible: [0.008, 0.25], forMaking: true },
    ],
    looks: [
      { id: 'crosshead.ears', question: 'Which way round are the ears?', how: 'Mark and photograph before dismantling; on some machines they can be turned over to change the gap.', at: [],
        answers: [
          { id: 'up', words: 'ears up' },
          { id: 'down', words: 'ears down' },
          { id: 'one-way', words: 'can only be fitted one way' },
        ] },
      { id: 'crosshead.crack', question: 'Is the crosshead cracked?', how: 'Clean round its bores and look with dye.', at: [], answers: CRACK_ANSWERS },
    ],
  },
  {
    id: 'connecting-rod', rows: [22], name: { us: 'pitman, connecting rod', uk: 'connecting rod' }, group: 'ram-and-linkage', families: EVERY,
    places: [
      { id: 'connecting-rod.length', name: 'rod length, pin to pin', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Measure from the centre of the crank pin to the centre of the lower pin.', accuracy: '1/32 in', plausible: [0.08, 3], asMade: true },
      { id: 'connecting-rod.thread-engagement', name: 'thread in engagement', dimension: 'length', at: ['upper', 'lower'], tools: ['rule', 'depth-gauge'], how: 'Measure how much thread is inside the nut or sleeve; probe from the far end where it is hidden.', accuracy: '1/32 in', plausible: [0, 0.3], asMade: true },
      { id: 'connecting-rod.thread-diameter', name: 'thread diameter', dimension: 'length', at: [], tools: ['caliper'], how: 'Caliper over the crests.', accuracy: '0.010 in', plausible: [0.006, 0.1], asMade: true },
      { id: 'connecting-rod.thread-left', name: 'thread left to lengthen the rod', dimension: 'length', at: [], tools: ['rule'], how: 'Measure the thread that can still be screwed out while one diameter stays in engagement.', accuracy: '1/32 in', plausible: [0, 0.3] },
      { id: 'connecting-rod.thread-pitch', name: 'thread pitch', dimension: 'length', at: [], tools: ['thread-gauge', 'rule'], how: 'Count the threads in one inch, or use a thread gauge, and enter the distance from crest to crest.', accuracy: 'exact', plausible: [0.0004, 0.01] },
      { id: 'connecting-rod.play', name: 'play at the rod’s big end', dimension: 'length', at: [], tools: ['dial-indicator', 'feeler'], how: 'Lift the rod with a bar and read the whole movement on the crank pin.', accuracy: '0.001 in', plausible: [0, 0.02] },
      { id: 'connecting-rod.eye-width', name: 'width of the rod’s big end, along the pin', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure the thickness of the big end where the bush is pressed in.', accuracy: '1/64 in', plausible: [0.01, 0.4], asMade: true, forMaking: true },
      { id: 'connecting-rod.eye-outside', name: 'outside of the rod’s big end, the thin way', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the big end where there is least metal round the bore.', accuracy: '1/32 in', plausible: [0.01, 0.5], forMaking: true },
      { id: 'connecting-rod.eye-bore', name: 'bore of the rod’s big end, bush out', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Old bush out: measure the bore at two angles and both ends; enter the greatest.', accuracy: '1/64 in', plausible: [0.008, 0.25], forMaking: true },
    ],
    looks: [
      { id: 'connecting-rod.lock', question: 'Are the rod’s lock nuts there and tight?', how: 'Put a spanner on each.', at: [],
        answers: [
          { id: 'tight', words: 'there and tight' },
          { id: 'loose', words: 'loose' },
          { id: 'missing', words: 'missing' },
          { id: 'not-adjustable', words: 'rod of fixed length: has none' },
        ] },
      { id: 'connecting-rod.straight', question: 'Is the rod straight and whole?', how: 'Sight along it, wipe and look at the threads’ roots.', at: [],
        answers: [
          { id: 'straight', words: 'straight and whole' },
          { id: 'bent', words: 'bent' },
          { id: 'cracked', spot: true, words: 'cracked or thread pulled' },
        ] },
    ],
  },
  {
    id: 'crank', rows: [23], name: { us: 'crank plate and crank pin', uk: 'crank disc and pin' }, group: 'ram-and-linkage', families: EVERY,
    places: [
      { id: 'crank.throw', name: 'throw: centre of shaft to centre of pin', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Measure from shaft centre to pin centre, or take half the difference between the highest and lowest place of the pin.', accuracy: '1/32 in', plausible: [0.01, 0.4], asMade: true },
      { id: 'crank.pin-diameter', name: 'crank pin diameter', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Measure where the rod does not rub.', accuracy: '0.001 in', plausible: [0.008, 0.2], asMade: true },
      { id: 'crank.pin-play', name: 'crank pin play in the plate', dimension: 'length', at: [], tools: ['dial-indicator', 'feeler'], how: 'Lever the pin against the plate and read any movement; a tight pin gives none.', accuracy: '0.001 in', plausible: [0, 0.01] },
      { id: 'crank.pin-out-of-round', name: 'crank pin out of round', dimension: 'length', at: [], tools: ['micrometer'], how: 'Measure the rubbed part at several angles; greatest less least.', accuracy: '0.0005 in', plausible: [0, 0.01] },
      { id: 'crank.plate-diameter', name: 'crank plate diameter', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Measure across the plate.', accuracy: '1/4 in', plausible: [0.05, 1.5] },
      { id: 'crank.plate-thickness', name: 'thickness of the crank plate at the pin', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure through the plate beside the pin, from the face that the collar bears on to the face under the nut.', accuracy: '1/64 in', plausible: [0.005, 0.3], forMaking: true },
      { id: 'crank.pin-length', name: 'length of the crank pin that the rod runs on', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure from the collar, or from the plate, to the washer that keeps the rod on.', accuracy: '1/64 in', plausible: [0.01, 0.4], asMade: true, forMaking: true },
      { id: 'crank.pin-shank', name: 'crank pin diameter in the plate', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Pin out: measure the part that sits in the plate, where it is not fretted.', accuracy: '0.001 in', plausible: [0.006, 0.2], asMade: true, forMaking: true },
      { id: 'crank.pin-collar', name: 'diameter of the crank pin’s collar', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the collar between plate and rod. A pin without a collar: enter the washer there.', accuracy: '1/32 in', plausible: [0.01, 0.4], asMade: true, forMaking: true },
      { id: 'crank.pin-collar-thickness', name: 'thickness of the crank pin’s collar', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure from the plate to the rod’s side of the collar.', accuracy: '1/64 in', plausible: [0.001, 0.1], asMade: true, forMaking: true },
      { id: 'crank.pin-thread', name: 'thread diameter at the back of the crank pin', dimension: 'length', at: [], tools: ['caliper'], how: 'Caliper over the crests where the nut was not.', accuracy: '0.010 in', plausible: [0.006, 0.1], asMade: true, forMaking: true },
      { id: 'crank.pin-thread-pitch', name: 'thread pitch of the crank pin', dimension: 'length', at: [], tools: ['thread-gauge', 'rule'], how: 'Count the threads in one inch, or use a thread gauge, and enter the distance from crest to crest.', accuracy: 'exact', plausible: [0.0004, 0.01], asMade: true, forMaking: true },
      { id: 'crank.pin-room', name: 'room behind the crank plate at its pin', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Turn the plate once round by hand: measure from the face under the nut to whatever comes nearest to it, frame, bearing or cap.', accuracy: '1/16 in', plausible: [0.003, 1], forMaking: true },
    ],
    looks: [
      { id: 'crank.crack', question: 'Is the crank plate cracked, or its pin?', how: 'Clean round the hub, the slot and the pin boss; tap and look with dye.', at: [], answers: CRACK_ANSWERS },
      { id: 'crank.thread-hand', question: 'Which hand is the thread of the crank pin?', how: 'Hold the pin upright: a right-hand thread climbs to the right.', at: [], forMaking: true,
        answers: [
          { id: 'right', words: 'right hand' },
          { id: 'left', words: 'left hand' },
        ] },
      { id: 'crank.pin-tight', question: 'Is the crank pin tight and locked in the plate?', how: 'Put a spanner on its nut; try to rock the pin by hand and bar.', at: [],
        answers: [
          { id: 'tight', words: 'tight and locked' },
          { id: 'loose', words: 'moves or the nut is loose' },
        ] },
    ],
  },
  {
    id: 'bow-spring', rows: [49], name: { us: 'bow spring, leaf spring', uk: 'bow spring, laminated spring' }, group: 'ram-and-linkage', families: BOW,
    places: [
      { id: 'bow-spring.leaf-thickness', name: 'leaf thickness', dimension: 'length', at: [], tools: ['caliper', 'micrometer'], how: 'Caliper one leaf at the middle, clean of rust.', accuracy: '0.005 in', plausible: [0.001, 0.05], asMade: true },
      { id: 'bow-spring.leaf-width', name: 'leaf width', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Caliper across one leaf.', accuracy: '1/32 in', plausible: [0.01, 0.3], asMade: true },
      { id: 'bow-spring.leaves', name: 'number of leaves', dimension: 'count', at: [], tools: ['eye'], how: 'Count the leaves at the clip, broken ones included.', accuracy: 'exact', plausible: [1, 40], asMade: true },
      { id: 'bow-spring.full-leaves', name: 'leaves that run the full length', dimension: 'count', at: [], tools: ['eye'], how: 'Count the leaves that reach both eyes.', accuracy: 'exact', plausible: [0, 40], asMade: true },
      { id: 'bow-spring.span', name: 'span between the eyes', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Measure from eye centre to eye centre, ram blocked and spring as set.', accuracy: '1/8 in', plausible: [0.1, 3], asMade: true },
      { id: 'bow-spring.strap-length', name: 'strap length, bow to ram', dimension: 'length', at: ['left', 'right'], tools: ['tape', 'rule'], how: 'Ram hanging: measure from the centre of the eye of the bow to the centre of the pin at the ram.', accuracy: '1/16 in', plausible: [0.03, 1] },
      { id: 'bow-spring.strap-width', name: 'width of a strap from bow to ram', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the strap where it is not frayed.', accuracy: '1/32 in', plausible: [0.01, 0.3], forMaking: true },
      { id: 'bow-spring.strap-thickness', name: 'thickness of a strap from bow to ram', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Caliper the strap where it is not frayed, one layer.', accuracy: '1/64 in', plausible: [0.002, 0.05], forMaking: true },
      { id: 'bow-spring.strap-hole', name: 'hole for the pin in a strap', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Caliper the hole where it is not torn, or the pin or bolt that goes through it.', accuracy: '1/64 in', plausible: [0.005, 0.1], forMaking: true },
      { id: 'bow-spring.ram-pin', name: 'pin or bolt that holds a strap to the ram, diameter', dimension: 'length', at: ['left', 'right'], tools: ['micrometer', 'caliper'], how: 'Strap off: measure it where it is not worn; it is not the pin of the eye.', accuracy: '1/64 in', plausible: [0.005, 0.1], forMaking: true },
      { id: 'bow-spring.camber', name: 'camber: height of the bow, free', dimension: 'length', at: [], tools: ['rule', 'tape'], how: 'Straps off: measure from a line through the eyes to the middle of the main leaf.', accuracy: '1/8 in', plausible: [0, 1], asMade: true },
      { id: 'bow-spring.deflection', whileRunning: true, name: 'how far the bow flexes in full stroke', dimension: 'length', at: [], tools: ['rule', 'camera'], how: 'Film from the side with a rule behind it; take the greatest change of the bow’s height.', accuracy: '1/8 in', plausible: [0, 0.6] },
      { id: 'bow-spring.pivot-play', name: 'play at the eyes and the clip pivot', dimension: 'length', at: ['left', 'right', 'middle'], tools: ['dial-indicator', 'feeler'], how: 'Ram blocked: lever each joint and read the whole movement.', accuracy: '0.002 in', plausible: [0, 0.03] },
      { id: 'bow-spring.pin-diameter', name: 'pin diameter at the eyes and the clip pivot', dimension: 'length', at: ['left', 'right', 'middle'], tools: ['micrometer', 'caliper'], how: 'Pin out: measure it where it does not rub.', accuracy: '0.001 in', plausible: [0.005, 0.12], asMade: true, forMaking: true },
      { id: 'bow-spring.pin-length', name: 'length over all of the pins at the eyes and the clip pivot', dimension: 'length', at: ['left', 'right', 'middle'], tools: ['caliper', 'rule'], how: 'Pin out: measure from end to end. Without it: over everything that it goes through, and a washer and a split pin at each end.', accuracy: '1/64 in', plausible: [0.02, 0.6], forMaking: true },
      { id: 'bow-spring.eye-bore', name: 'bore of the eyes and of the clip pivot, bush out', dimension: 'length', at: ['left', 'right', 'middle'], tools: ['caliper', 'rule'], how: 'Bush or pin out: measure the bore at two angles and both ends; enter the greatest.', accuracy: '1/64 in', plausible: [0.006, 0.15], asMade: true, forMaking: true },
      { id: 'bow-spring.eye-width', name: 'width of the eyes and of the clip pivot, along the pin', dimension: 'length', at: ['left', 'right', 'middle'], tools: ['caliper', 'rule'], how: 'Measure the eye along its pin.', accuracy: '1/64 in', plausible: [0.005, 0.4], forMaking: true },
      { id: 'bow-spring.eye-outside', name: 'outside of the clip pivot’s boss, the thin way', dimension: 'length', at: ['middle'], tools: ['caliper', 'rule'], how: 'Measure across the boss where there is least metal round the bore.', accuracy: '1/32 in', plausible: [0.01, 0.4], forMaking: true },
      { id: 'bow-spring.new-leaf-length', name: 'length of the leaf that is made new, along its curve', dimension: 'length', at: [], tools: ['tape'], how: 'Lay both halves end to end, or a tape along the whole neighbour: from tip to tip; for the main leaf from eye centre to eye centre.', accuracy: '1/8 in', plausible: [0.05, 4], forMaking: true },
      { id: 'bow-spring.centre-hole', name: 'hole of the centre bolt in a leaf', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Caliper the hole in the middle of a leaf, or the bolt and 1/64 in; 0 where there is none.', accuracy: '1/64 in', plausible: [0, 0.04], forMaking: true },
    ],
    looks: [
      { id: 'bow-spring.crack', question: 'Is a leaf cracked or broken?', how: 'Wire-brush the edges of the pack at clip and eyes, look with a light, tap each leaf.', at: [], answers: CRACK_ANSWERS },
      { id: 'bow-spring.new-leaf', question: 'Which leaf is made new?', how: 'Count from the leaf with the eyes; look whether the broken one has eyes.', at: [], forMaking: true,
        answers: [
          { id: 'plain', words: 'a leaf without eyes' },
          { id: 'main', words: 'the main leaf, with an eye at each end' },
        ] },
      { id: 'bow-spring.strap-place', question: 'How does a strap sit on the pin of its eye?', how: 'Look along the pin, from its end: count the straps at one eye.', at: [], forMaking: true,
        answers: [
          { id: 'both-sides', words: 'two straps at each eye, one on each side of it' },
          { id: 'one-side', words: 'one strap at each eye, beside it' },
          { id: 'forked', words: 'one strap at each eye, in the middle of a forked eye' },
        ] },
      { id: 'bow-spring.clip', question: 'Is the clip tight?', how: 'Spanner on the clip bolts; look for bright rubbing between leaves.', at: [],
        answers: [
          { id: 'tight', words: 'tight' },
          { id: 'slack', words: 'slack: leaves shift' },
        ] },
      { id: 'bow-spring.straps', question: 'What are the straps or belts to the ram like?', how: 'Look at the bends and the rivet holes; flex leather or belting by hand.', at: [],
        answers: [
          { id: 'sound', words: 'sound' },
          { id: 'worn', words: 'worn or fraying' },
          { id: 'torn', words: 'torn or pulling out' },
        ] },
    ],
  },
  {
    id: 'helve', rows: [50], name: { us: 'helve and pivots', uk: 'helve and trunnions' }, group: 'ram-and-linkage', families: HELVE,
    places: [
      { id: 'helve.front-length', name: 'length from pivot to head', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Measure from the pivot centre to the centre of the upper die.', accuracy: '1/8 in', plausible: [0.2, 5], asMade: true },
      { id: 'helve.rear-length', name: 'length from pivot to drive', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Measure from the pivot centre to the centre of the rod pin at the tail.', accuracy: '1/8 in', plausible: [0.05, 5], asMade: true },
      { id: 'helve.cushion-length', name: 'length from pivot to cushions', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Measure along the beam from the centre of its pivot to the middle of the cushions.', accuracy: '1/4 in', plausible: [0.1, 3] },
      { id: 'helve.pivot-play', name: 'play at the pivot', dimension: 'length', at: ['left', 'right'], tools: ['dial-indicator', 'feeler'], how: 'Head blocked: lever the helve up and down at the pivot and read the whole movement.', accuracy: '0.002 in', plausible: [0, 0.03] },
      { id: 'helve.cushion-height', name: 'cushion height, free', dimension: 'length', at: ['upper', 'lower'], tools: ['rule', 'caliper'], how: 'Measure the rubber cushion out of the machine, standing free.', accuracy: '1/32 in', plausible: [0.005, 0.4], asMade: true },
      { id: 'helve.cushion-width', name: 'cushion width, across the beam', dimension: 'length', at: ['upper', 'lower'], tools: ['rule', 'caliper'], how: 'Measure the cushion, or its box, across the beam.', accuracy: '1/16 in', plausible: [0.02, 0.5], forMaking: true },
      { id: 'helve.cushion-span', name: 'cushion length, along the beam', dimension: 'length', at: ['upper', 'lower'], tools: ['rule', 'caliper'], how: 'Measure the cushion, or its box, along the beam.', accuracy: '1/16 in', plausible: [0.02, 0.6], forMaking: true },
      { id: 'helve.cushion-set', name: 'height that a cushion has lost, as a share', dimension: 'ratio', at: ['upper', 'lower'], tools: ['rule', 'caliper'], how: 'Compare its free height with a new one: lost height divided by new height.', accuracy: '5 %', plausible: [0, 0.9] },
      { id: 'helve.depth', name: 'depth of the beam at the pivot', dimension: 'length', at: [], tools: ['rule', 'tape'], how: 'Measure the beam from top to bottom at the pivot.', accuracy: '1/8 in', plausible: [0.03, 1] },
      { id: 'helve.pivot-diameter', name: 'diameter of the pivot pin, or trunnion', dimension: 'length', at: ['left', 'right'], tools: ['micrometer', 'caliper'], how: 'Helve lifted out, or pin drawn: measure where it does not rub.', accuracy: '0.001 in', plausible: [0.01, 0.2], asMade: true, forMaking: true },
      { id: 'helve.pin-length', name: 'length over all of the pivot pin, or trunnion', dimension: 'length', at: ['left', 'right'], tools: ['caliper', 'rule'], how: 'Pin out: measure from end to end. Without it: over beam or casting and bearing, and a washer and a split pin at each end.', accuracy: '1/64 in', plausible: [0.03, 1], forMaking: true },
      { id: 'helve.pivot-width', name: 'width of the pivot’s bearing, along the pin', dimension: 'length', at: ['left', 'right'], tools: ['caliper', 'rule'], how: 'Measure the bearing that the bush is pressed into.', accuracy: '1/64 in', plausible: [0.01, 0.5], forMaking: true },
      { id: 'helve.pivot-outside', name: 'outside of the pivot’s bearing, the thin way', dimension: 'length', at: ['left', 'right'], tools: ['caliper', 'rule'], how: 'Measure across the bearing where there is least metal round the bore.', accuracy: '1/32 in', plausible: [0.015, 0.6], forMaking: true },
      { id: 'helve.pivot-bore', name: 'bore of the pivot’s bearing, bush out', dimension: 'length', at: ['left', 'right'], tools: ['caliper', 'rule'], how: 'Old bush out: measure the bore at two angles and both ends; enter the greatest.', accuracy: '1/64 in', plausible: [0.01, 0.3], forMaking: true },
    ],
    looks: [
      { id: 'helve.crack', question: 'Is the helve cracked?', how: 'Look along the grain of a wooden helve at head, pivot and tail; look at an iron one with dye at the same places.', at: [], answers: CRACK_ANSWERS },
      { id: 'helve.head-bolts', question: 'How are the bolts of the head and the clamps?', how: 'Spanner on each; tap and listen; ask how long they have been in.', at: [],
        answers: [
          { id: 'tight-known', words: 'tight, and their age is known' },
          { id: 'tight-unknown', words: 'tight, age not known' },
          { id: 'loose', words: 'loose, stretched or missing' },
        ] },
      { id: 'helve.height-screws', question: 'Do the height screws move?', how: 'Try them a quarter turn each way after oiling.', at: [],
        answers: [
          { id: 'free', words: 'free' },
          { id: 'stuck', words: 'stuck' },
          { id: 'none', words: 'has none' },
        ] },
      { id: 'helve.cushions', question: 'What are the cushions like?', how: 'Press a thumbnail into the rubber, look for cracks and oil.', at: [],
        answers: [
          { id: 'springy', words: 'springy' },
          { id: 'hard', words: 'hard or flattened' },
          { id: 'missing', words: 'missing or in pieces' },
        ] },
    ],
  },
];
