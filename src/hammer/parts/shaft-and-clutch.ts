import type { Part } from '../vocabulary.ts';
import { ENDS, EVERY } from './families.ts';

/** Shaft, bearings, clutch, treadle, brake and the oil that keeps them. */
export const SHAFT_AND_CLUTCH: readonly Part[] = [
  {
    id: 'main-bearings', rows: [24], name: { us: 'main bearings, babbitt', uk: 'main bearings, white metal' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'main-bearings.clearance', name: 'main bearing clearance', dimension: 'length', at: ENDS, tools: ['dial-indicator', 'plastic-thread-gauge', 'feeler'], how: 'Dial on the shaft beside the bearing, lift with a bar and read the whole movement. A plastic thread needs a drop of oil, or it beds into the soft metal.', accuracy: '0.001 in', plausible: [0, 0.01], asMade: true },
      { id: 'main-bearings.length', name: 'bearing length', dimension: 'length', at: ENDS, tools: ['rule', 'caliper'], how: 'Measure the babbitt along the shaft.', accuracy: '1/16 in', plausible: [0.02, 0.8] },
    ],
    looks: [
      { id: 'main-bearings.metal', question: 'What is the bearing metal like?', how: 'Cap off: look at the surface; tap the shell and listen.', at: ENDS,
        answers: [
          { id: 'smooth', words: 'smooth, even contact' },
          { id: 'scored', words: 'scored or with grit in it' },
          { id: 'cracked', spot: true, words: 'cracked, loose or flaking' },
          { id: 'bronze', words: 'bronze or inserts instead of babbitt' },
        ] },
    ],
  },
  {
    id: 'pouring', rows: [24.5], name: { us: 'pouring recipe', uk: 'pouring recipe' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'pouring.contact', name: 'share of the bearing in contact after scraping', dimension: 'ratio', at: ENDS, tools: ['eye'], how: 'Blue the shaft thinly, turn it in the bearing, lift it and judge the share that took the blue.', accuracy: '5 %', plausible: [0, 1] },
      { id: 'pouring.dam-gap', name: 'gap to be closed with dam putty', dimension: 'length', at: ENDS, tools: ['feeler', 'rule'], how: 'Measure the widest gap between shaft and collar or dam before it is sealed; 1/8 in or less, and backed up.', accuracy: '1/32 in', plausible: [0, 0.03] },
    ],
    looks: [
      { id: 'pouring.shell', question: 'How will the metal be held in the shell?', how: 'Clean out the anchor holes; three or four at each end, about 1/4 in wide and deep, or a tinned shell.', at: ENDS,
        answers: [
          { id: 'anchors', words: 'clean anchor holes or grooves' },
          { id: 'tinned', words: 'no anchors: shell tinned' },
          { id: 'neither', words: 'neither' },
        ] },
    ],
  },
  {
    id: 'bearing-caps', rows: [25], name: { us: 'bearing caps and cap shims', uk: 'caps and laminated shims' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'bearing-caps.shims', name: 'shims left, each side', dimension: 'length', at: ENDS, tools: ['micrometer', 'feeler'], how: 'Measure the shim pack of one side, clean; both sides must be equal.', accuracy: '0.001 in', plausible: [0, 0.02] },
      { id: 'bearing-caps.shim-difference', name: 'difference between the two sides', dimension: 'length', at: ENDS, tools: ['micrometer', 'feeler'], how: 'Left pack less right pack, without sign.', accuracy: '0.001 in', plausible: [0, 0.01] },
    ],
    looks: [
      { id: 'bearing-caps.bolts', question: 'Are both bearing caps whole and all their bolts there and tight?', how: 'Spanner on every bolt; look round each lug for cracks; rock the cap.', at: [],
        answers: [
          { id: 'tight', words: 'all there, tight, lugs whole' },
          { id: 'loose', words: 'a bolt or cap is loose' },
          { id: 'missing', words: 'a bolt is missing' },
          { id: 'cracked', spot: true, words: 'a lug or cap is cracked' },
        ] },
    ],
  },
  {
    id: 'main-shaft', rows: [26, 30], name: { us: 'main shaft', uk: 'main shaft' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'main-shaft.diameter', name: 'journal diameter', dimension: 'length', at: ENDS, tools: ['micrometer', 'caliper'], how: 'Measure at three places and two angles in each journal and take the mean.', accuracy: '0.0005 in', plausible: [0.012, 0.3], asMade: true },
      { id: 'main-shaft.out-of-round', name: 'journal out of round', dimension: 'length', at: ENDS, tools: ['micrometer'], how: 'Greatest less least diameter at the same place.', accuracy: '0.0005 in', plausible: [0, 0.005] },
      { id: 'main-shaft.taper', name: 'journal taper', dimension: 'length', at: ENDS, tools: ['micrometer'], how: 'Difference in diameter between the two ends of the journal.', accuracy: '0.0005 in', plausible: [0, 0.005] },
      { id: 'main-shaft.score', name: 'depth of the deepest score', dimension: 'length', at: ENDS, tools: ['depth-gauge', 'micrometer'], how: 'Measure or judge against a feeler with a finger nail.', accuracy: '0.001 in', plausible: [0, 0.005] },
      { id: 'main-shaft.run-out', name: 'run-out', dimension: 'length', at: [], tools: ['dial-indicator'], how: 'Dial on the middle of the shaft between centres or in its bearings; turn it once and read the whole swing.', accuracy: '0.001 in', plausible: [0, 0.02] },
      { id: 'main-shaft.end-float', name: 'end float', dimension: 'length', at: [], tools: ['dial-indicator', 'feeler'], how: 'Dial on the shaft end; push and pull hard and read the whole movement.', accuracy: '0.001 in', plausible: [0, 0.01], asMade: true },
      { id: 'main-shaft.thrust-thickness', name: 'thickness of the thrust washer that is there', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Caliper the washer between bearing and collar, pulley or plate; 0 where there is none.', accuracy: '0.001 in', plausible: [0, 0.05], forMaking: true },
      { id: 'main-shaft.thrust-outside', name: 'outside of the shoulder that the thrust washer runs on', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the collar, hub or bearing end that bears on the washer, the smaller one.', accuracy: '1/32 in', plausible: [0.02, 0.4], forMaking: true },
      { id: 'main-shaft.height', name: 'shaft centre above the floor', dimension: 'length', at: [], tools: ['tape'], how: 'Measure from the floor to the centre of the shaft.', accuracy: '1/4 in', plausible: [0.2, 5] },
    ],
    looks: [
      { id: 'main-shaft.keys', question: 'How are the tapered keys in crank plate and pulley?', how: 'Look which way they were driven and mark it before anything is pressed.', at: [],
        answers: [
          { id: 'tight', words: 'tight, direction marked' },
          { id: 'loose', words: 'loose' },
          { id: 'not-seen', words: 'hidden' },
        ] },
    ],
  },
  {
    id: 'pulley', rows: [27], name: { us: 'pulley, flywheel', uk: 'pulley, flywheel' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'pulley.diameter', name: 'pulley diameter', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Measure across the rim at its middle, or wrap a tape round and divide by 3.1416.', accuracy: '1/16 in', plausible: [0.08, 2.5], asMade: true },
      { id: 'pulley.face', name: 'pulley face width', dimension: 'length', at: [], tools: ['rule', 'tape'], how: 'Measure across the rim where the belt runs.', accuracy: '1/16 in', plausible: [0.01, 0.6], asMade: true },
      { id: 'pulley.crown', name: 'crown: rise of the rim in its width', dimension: 'length', at: [], tools: ['feeler', 'rule'], how: 'Straightedge across the rim; gap at both edges, mean.', accuracy: '1/64 in', plausible: [0, 0.02] },
    ],
    looks: [
      { id: 'pulley.crack', question: 'Is the pulley cracked in hub, spokes or rim?', how: 'Hang or turn it free, tap each spoke, look with dye at hub and rim.', at: [],
        answers: [
          { id: 'none', words: 'none found, rings clear' },
          { id: 'suspected', spot: true, words: 'a line or a dull spoke' },
          { id: 'present', spot: true, words: 'a crack is there' },
          { id: 'repaired', words: 'an old repair' },
        ] },
      { id: 'pulley.bore', question: 'Is the pulley tight on its shaft or bush?', how: 'Rock the rim by hand, in and out and round.', at: [],
        answers: [
          { id: 'tight', words: 'tight' },
          { id: 'loose', words: 'loose on its key' },
        ] },
    ],
  },
  {
    id: 'clutch-facing', rows: [28], name: { us: 'clutch facing', uk: 'clutch lining' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'clutch-facing.thickness', name: 'facing thickness', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure the thinnest place, down to the metal of the cone.', accuracy: '1/64 in', plausible: [0, 0.06], asMade: true },
      { id: 'clutch-facing.proud', name: 'cone proud of the pulley, engaged', dimension: 'length', at: [], tools: ['rule', 'depth-gauge'], how: 'Treadle down, power locked off: measure how far the cone’s edge stands out of the pulley. Zero means that it bottoms.', accuracy: '1/32 in', plausible: [0, 0.1], asMade: true },
      { id: 'clutch-facing.rivet-depth', name: 'rivet heads below the facing', dimension: 'length', at: [], tools: ['depth-gauge', 'caliper'], how: 'Measure from the facing down to the shallowest rivet head; zero means that it touches.', accuracy: '1/64 in', plausible: [0, 0.02] },
    ],
    looks: [
      { id: 'clutch-facing.kind', question: 'What is the clutch faced with?', how: 'Look before brushing. Grey woven or moulded stuff may hold asbestos: wipe wet, no brush, no air.', at: [],
        answers: [
          { id: 'leather', words: 'leather' },
          { id: 'wood', words: 'wood blocks' },
          { id: 'woven', words: 'woven belting or lining' },
          { id: 'moulded', words: 'moulded lining' },
          { id: 'iron', words: 'bare iron on iron' },
          { id: 'none', words: 'no clutch: belt is tightened or a wheel is pressed' },
          { id: 'not-known', words: 'not known' },
        ] },
      { id: 'clutch-facing.state', question: 'What is the facing’s surface like?', how: 'Chalk the pulley, engage by hand, turn, and look where the chalk went.', at: [],
        answers: [
          { id: 'oiled-slips', words: 'lightly oiled, even, slips when eased' },
          { id: 'dry', words: 'dry' },
          { id: 'glazed', words: 'glazed' },
          { id: 'flooded', words: 'flooded with oil' },
          { id: 'uneven', words: 'bears in patches' },
          { id: 'rivets', words: 'rivets touch the pulley' },
        ] },
      { id: 'clutch-facing.asbestos', question: 'May the facing hold asbestos?', how: 'If it is old, woven or moulded and no paper says otherwise: assume it. A laboratory can tell from a damp sample.', at: [],
        answers: [
          { id: 'no', words: 'no: leather, wood, or a paper says so' },
          { id: 'perhaps', words: 'perhaps: old and not known' },
          { id: 'yes', words: 'yes: tested' },
        ] },
    ],
  },
  {
    id: 'clutch-pulley', rows: [29], name: { us: 'clutch pulley bushing', uk: 'clutch pulley bush' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'clutch-pulley.play', name: 'total radial play at the bush', dimension: 'length', at: [], tools: ['dial-indicator', 'feeler'], how: 'Belt off: dial near the hub, lift and press the pulley with a bar; read the whole movement at the bush. Ten to fifteen thousandths is good practice.', accuracy: '0.001 in', plausible: [0, 0.02], asMade: true },
      { id: 'clutch-pulley.shaft-diameter', name: 'shaft diameter under the clutch pulley', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Pulley slid aside: micrometer on the shaft where it runs, both ways; it wears there and not as the bearings do. Enter the greatest.', accuracy: '0.001 in', plausible: [0.012, 0.3], asMade: true, forMaking: true },
      { id: 'clutch-pulley.hub-length', name: 'length of the clutch pulley’s hub', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure the hub along the shaft.', accuracy: '1/32 in', plausible: [0.01, 0.6], asMade: true, forMaking: true },
      { id: 'clutch-pulley.hub-outside', name: 'outside of the clutch pulley’s hub', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the hub where there is least metal round the bore.', accuracy: '1/32 in', plausible: [0.02, 0.6], forMaking: true },
      { id: 'clutch-pulley.hub-bore', name: 'bore of the clutch pulley’s hub, bush out', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Old bush out: measure the bore at two angles and both ends; enter the greatest.', accuracy: '1/64 in', plausible: [0.01, 0.3], forMaking: true },
    ],
    looks: [
      { id: 'clutch-pulley.belt-pull', question: 'Which way does the belt pull the clutch pulley?', how: 'Look from the end: a belt that pulls straight up carries the pulley off a worn bush.', at: [],
        answers: [
          { id: 'down', words: 'down or level' },
          { id: 'up', words: 'up' },
        ] },
      { id: 'clutch-pulley.sound', whileRunning: true, question: 'Does the pulley rattle or squeal when idling?', how: 'Treadle up, run, stand aside and listen at the pulley.', at: [],
        answers: [
          { id: 'quiet', words: 'quiet' },
          { id: 'rattles', words: 'rattles' },
          { id: 'squeals', words: 'squeals' },
        ] },
    ],
  },
  {
    id: 'shipper', rows: [31], name: { us: 'shipper, yoke and saddle', uk: 'fork and yoke' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'shipper.saddle-groove', name: 'groove worn in the saddle', dimension: 'length', at: [], tools: ['depth-gauge', 'rule'], how: 'Measure the depth of the worn groove below the untouched metal.', accuracy: '1/64 in', plausible: [0, 0.02] },
      { id: 'shipper.pin-play', name: 'play at the yoke pins', dimension: 'length', at: [], tools: ['feeler', 'dial-indicator'], how: 'Rock the yoke by hand and measure the whole movement at its pins.', accuracy: '0.005 in', plausible: [0, 0.02] },
    ],
    looks: [
      { id: 'shipper.free', question: 'Does the yoke move free all round?', how: 'Treadle rod off: move the yoke through its travel by hand.', at: [],
        answers: [
          { id: 'free', words: 'free' },
          { id: 'binds', words: 'binds somewhere' },
          { id: 'bent', words: 'bent' },
        ] },
    ],
  },
  {
    id: 'treadle', rows: [32], name: { us: 'treadle', uk: 'treadle, pedal' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'treadle.free-play', name: 'free play at the pedal', dimension: 'length', at: [], tools: ['rule'], how: 'Press with two fingers until the clutch begins to take; measure the travel of the pedal.', accuracy: '1/8 in', plausible: [0, 0.2] },
      { id: 'treadle.pivot-wear', name: 'treadle pivot worn oval', dimension: 'length', at: [], tools: ['caliper', 'feeler'], how: 'Rock the treadle sideways and measure the whole movement at the pivot.', accuracy: '1/64 in', plausible: [0, 0.03] },
      { id: 'treadle.pivot-diameter', name: 'diameter of the treadle’s pivot bolt', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Bolt out: measure it where it does not rub.', accuracy: '0.002 in', plausible: [0.006, 0.06], forMaking: true },
      { id: 'treadle.eye-width', name: 'width of the treadle’s eye, along the bolt', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure the eye along its bolt.', accuracy: '1/64 in', plausible: [0.005, 0.2], forMaking: true },
      { id: 'treadle.eye-outside', name: 'outside of the treadle’s eye, the thin way', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the eye where there is least metal round the bore.', accuracy: '1/32 in', plausible: [0.01, 0.2], forMaking: true },
      { id: 'treadle.eye-bore', name: 'bore of the treadle’s eye, bush out', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Old bush out: measure the bore at two angles and both ends; enter the greatest.', accuracy: '1/64 in', plausible: [0.006, 0.1], forMaking: true },
      { id: 'treadle.pin-length', name: 'length of the treadle’s pivot bolt over all', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Bolt out: measure from end to end.', accuracy: '1/64 in', plausible: [0.02, 0.6], forMaking: true },
    ],
    looks: [
      { id: 'treadle.guard', question: 'Is the treadle guarded against an accidental foot?', how: 'Look for a bar or cover over it, and a block for when nobody is there.', at: [],
        answers: [
          { id: 'guarded', words: 'guarded' },
          { id: 'block-only', words: 'no guard, a block is put under it' },
          { id: 'open', words: 'open' },
        ] },
      { id: 'treadle.control', whileRunning: true, question: 'How does the treadle control the blow?', how: 'Press slowly on wood and feel how the speed follows.', at: [],
        answers: [
          { id: 'smooth', words: 'follows the foot' },
          { id: 'jumpy', words: 'jumps' },
          { id: 'floppy', words: 'floppy' },
        ] },
    ],
  },
  {
    id: 'return-spring', rows: [33], name: { us: 'treadle return spring', uk: 'treadle return spring' }, group: 'shaft-and-clutch', families: EVERY,
    places: [],
    looks: [
      { id: 'return-spring.lift', question: 'Does the treadle come fully up by itself?', how: 'Power locked off: press and let go, ten times. Where it ever stays down, lift it by hand: if that frees it, the return is weak.', at: [],
        answers: [
          { id: 'fully', words: 'fully, every time' },
          { id: 'lazy', words: 'slowly or not quite' },
          { id: 'by-hand', words: 'only when lifted by hand' },
        ] },
    ],
  },
  {
    id: 'brake', rows: [34], name: { us: 'brake', uk: 'brake' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'brake.lining', name: 'brake lining thickness', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure the thinnest place, down to the metal.', accuracy: '1/64 in', plausible: [0, 0.05], asMade: true },
    ],
    looks: [
      { id: 'brake.fitted', question: 'Is there a brake, and does anybody rely on it?', how: 'Look for a band or shoe, and ask whether tools are ever set under the upper die while the shaft turns.', at: [],
        answers: [
          { id: 'none', words: 'no brake' },
          { id: 'fitted', words: 'fitted, nobody relies on it' },
          { id: 'relied-on', words: 'fitted, and tools go under the die on its strength' },
        ] },
      { id: 'brake.holds', whileRunning: true, question: 'Does the brake stop and hold the ram?', how: 'Ram propped by hardwood just short of it: let go of the treadle from full speed ten times and see where it stops, and whether it sinks.', at: [],
        answers: [
          { id: 'holds', words: 'stops at once and holds, ten times in ten' },
          { id: 'slips', words: 'slips, sinks or stops late' },
        ] },
    ],
  },
  {
    id: 'oil-ways', rows: [39], name: { us: 'oil holes and cups', uk: 'oil holes and cups' }, group: 'shaft-and-clutch', families: EVERY,
    places: [
      { id: 'oil-ways.blocked-share', name: 'share of oil holes that are blocked', dimension: 'ratio', at: [], tools: ['eye'], how: 'Count all oil holes and those that a wire does not pass; divide.', accuracy: 'one hole', plausible: [0, 1] },
    ],
    looks: [
      { id: 'oil-ways.open', question: 'Does this oil way run?', how: 'Push a wire through and put in a drop: it must go down while you look.', at: ['main-front', 'main-rear', 'crank-pin', 'crosshead', 'linkage-pins', 'ways', 'clutch-pulley', 'treadle'],
        answers: [
          { id: 'runs', words: 'open and runs' },
          { id: 'greased', words: 'packed with grease' },
          { id: 'blocked', words: 'blocked' },
          { id: 'none', words: 'no oil hole here' },
        ] },
    ],
  },
];
