import type { Part } from '../vocabulary.ts';
import { EVERY } from './families.ts';

/** From the motor or line shaft to the hammer’s pulley, with its electrics. */
export const DRIVE: readonly Part[] = [
  {
    id: 'drive-line', rows: [27, 43], name: { us: 'drive', uk: 'drive' }, group: 'drive', families: EVERY,
    places: [
      { id: 'drive-line.countershaft-driven', name: 'countershaft pulley driven by the motor', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Only where there is a countershaft: diameter of the pulley that the motor drives.', accuracy: '1/16 in', plausible: [0.03, 2.5] },
      { id: 'drive-line.countershaft-driver', name: 'countershaft pulley that drives the hammer', dimension: 'length', at: [], tools: ['tape', 'rule'], how: 'Only where there is a countershaft: diameter of the pulley that drives the hammer.', accuracy: '1/16 in', plausible: [0.03, 2.5] },
      { id: 'drive-line.countershaft-diameter', name: 'countershaft diameter', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Micrometer on the shaft where the pulleys sit.', accuracy: '0.001 in', plausible: [0.01, 0.2], forMaking: true },
      { id: 'drive-line.motor-belt-width', name: 'width of the belt from motor to countershaft', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure across the belt away from the joint.', accuracy: '1/16 in', plausible: [0.005, 0.6], forMaking: true },
    ],
    looks: [
      { id: 'drive-line.kind', question: 'What drives the hammer?', how: 'Follow the belt.', at: [],
        answers: [
          { id: 'motor-flat-belt', words: 'motor and flat belt to the clutch pulley' },
          { id: 'motor-v-belt', words: 'motor and V-belts' },
          { id: 'countershaft', words: 'motor through a countershaft' },
          { id: 'line-shaft', words: 'line shaft' },
          { id: 'idler-belt', words: 'belt tightened by an idler on the treadle' },
          { id: 'tyre-wheel', words: 'tyre wheel pressed on a drum' },
          { id: 'none', words: 'nothing connected' },
        ] },
      { id: 'drive-line.turn', whileRunning: true, question: 'Does the hammer turn the right way?', how: 'Bump the motor and watch; on many hammers an arrow is cast in. A flat belt pulls on its lower run with the slack on top.', at: [],
        answers: [
          { id: 'right', words: 'right' },
          { id: 'wrong', words: 'wrong way' },
          { id: 'either', words: 'may run either way' },
        ] },
    ],
  },
  {
    id: 'belt', rows: [43], name: { us: 'belt', uk: 'belt' }, group: 'drive', families: EVERY,
    places: [
      { id: 'belt.width', name: 'belt width', dimension: 'length', at: [], tools: ['rule', 'caliper'], how: 'Measure across the belt away from the joint.', accuracy: '1/16 in', plausible: [0.005, 0.6], asMade: true },
      { id: 'belt.thickness', name: 'belt thickness', dimension: 'length', at: [], tools: ['caliper'], how: 'Caliper it away from the joint.', accuracy: '1/64 in', plausible: [0.001, 0.03], asMade: true },
      { id: 'belt.centre-distance', name: 'distance between the two shafts', dimension: 'length', at: [], tools: ['tape'], how: 'Measure between shaft centres.', accuracy: '1/2 in', plausible: [0.1, 15] },
      { id: 'belt.run', name: 'length round the run of the belt, by tape', dimension: 'length', at: [], tools: ['tape'], how: 'Lay a tape where the belt runs, motor in the middle of its slide. Where an idler tightens the belt: over the idler too, with that down and the treadle up.', accuracy: '1/4 in', plausible: [0.3, 40], forMaking: true },
      { id: 'belt.slack', name: 'give at mid-span, pressed by hand', dimension: 'length', at: [], tools: ['rule'], how: 'Press the belt at the middle of the free run with a thumb and measure the give.', accuracy: '1/4 in', plausible: [0, 0.5] },
    ],
    looks: [
      { id: 'belt.state', question: 'What is the belt like?', how: 'Locked off: run it through the hands, look at edges, joint and both faces.', at: [],
        answers: [
          { id: 'good', words: 'supple, joint whole' },
          { id: 'glazed', words: 'glazed' },
          { id: 'oily', words: 'oily' },
          { id: 'cracked', spot: true, words: 'cracked or edge torn' },
          { id: 'joint-worn', words: 'joint or laces worn' },
        ] },
      { id: 'belt.material', question: 'What is the belt made of?', how: 'Look at the cut edge.', at: [],
        answers: [
          { id: 'single-leather', words: 'single leather' },
          { id: 'double-leather', words: 'double leather' },
          { id: 'rubber', words: 'rubber and canvas' },
          { id: 'synthetic', words: 'synthetic flat belt' },
          { id: 'v-belt', words: 'V-belts' },
        ] },
      { id: 'belt.grain', question: 'Which side of a leather belt runs on the pulley?', how: 'The grain side is the smooth hair side.', at: [],
        answers: [
          { id: 'grain', words: 'grain side' },
          { id: 'flesh', words: 'flesh side' },
          { id: 'not-leather', words: 'not leather' },
        ] },
      { id: 'belt.runs', whileRunning: true, question: 'How does the belt run?', how: 'Run light, stand aside, watch one minute.', at: [],
        answers: [
          { id: 'true', words: 'true' },
          { id: 'walks', words: 'walks to one side or comes off' },
          { id: 'slips', words: 'slips under the blow' },
        ] },
    ],
  },
  {
    id: 'belt-idler', rows: [44], name: { us: 'belt idler, tightener', uk: 'jockey pulley' }, group: 'drive', families: EVERY,
    places: [
      { id: 'belt-idler.clear', name: 'belt clear of the pulley, treadle up', dimension: 'length', at: [], tools: ['rule'], how: 'Treadle up: measure how far the belt stands clear of the driven pulley at its loosest.', accuracy: '1/4 in', plausible: [0, 0.5] },
    ],
    looks: [
      { id: 'belt-idler.fitted', question: 'Is the belt tightened by an idler?', how: 'Follow the treadle rod.', at: [],
        answers: [
          { id: 'no', words: 'no' },
          { id: 'yes', words: 'yes, the idler is the clutch' },
        ] },
      { id: 'belt-idler.drag', whileRunning: true, question: 'Does the belt drag with the treadle up?', how: 'Treadle up, motor running: watch the driven pulley from the side.', at: [],
        answers: [
          { id: 'clear', words: 'clear, pulley stands still' },
          { id: 'drags', words: 'drags' },
          { id: 'bottoms', words: 'treadle bottoms before the belt grips' },
        ] },
    ],
  },
  {
    id: 'motor', rows: [45], name: { us: 'motor', uk: 'motor' }, group: 'drive', families: EVERY,
    places: [
      { id: 'motor.power', name: 'motor power, from the plate', dimension: 'power', at: [], tools: ['plate'], how: 'Read it off the motor’s plate.', accuracy: 'as printed', plausible: [50, 75_000] },
      { id: 'motor.speed', name: 'motor speed, from the plate', dimension: 'rotation', at: [], tools: ['plate', 'tachometer'], how: 'Read the speed at full load off the plate, or hold a tachometer to the shaft.', accuracy: 'as printed', plausible: [2, 70] },
      { id: 'motor.pulley', name: 'motor pulley diameter', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure over the rim where the belt runs; for a V-belt at the middle of the belt’s depth.', accuracy: '1/32 in', plausible: [0.02, 1] },
      { id: 'motor.shaft-diameter', name: 'motor shaft diameter', dimension: 'length', at: [], tools: ['micrometer', 'caliper'], how: 'Pulley off, power locked off: micrometer on the shaft.', accuracy: '0.0005 in', plausible: [0.006, 0.15], forMaking: true },
      { id: 'motor.key-width', name: 'width of the motor shaft’s key', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure the key, or the keyway in the shaft.', accuracy: '0.005 in', plausible: [0.001, 0.04], forMaking: true },
      { id: 'motor.shaft-length', name: 'length of motor shaft that stands out', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure from the shoulder or the bearing cover to the end.', accuracy: '1/32 in', plausible: [0.01, 0.4], forMaking: true },
      { id: 'motor.voltage', name: 'motor voltage, from the plate', dimension: 'voltage', at: [], tools: ['plate', 'multimeter'], how: 'Read it off the plate, as the motor is connected.', accuracy: 'as printed', plausible: [90, 1000] },
      { id: 'motor.current', name: 'full-load current, from the plate', dimension: 'current', at: [], tools: ['plate', 'clamp-meter'], how: 'Read it off the plate for the voltage used.', accuracy: 'as printed', plausible: [0.2, 300] },
      { id: 'motor.running-current', whileRunning: true, name: 'current running', dimension: 'current', at: ['a', 'b', 'c'], tools: ['clamp-meter'], how: 'Licensed person: clamp meter round each phase in turn while the hammer works.', accuracy: '3 %', plausible: [0, 500] },
      { id: 'motor.leg-voltage', whileRunning: true, name: 'voltage between two legs, under load', dimension: 'voltage', at: ['ab', 'bc', 'ca'], tools: ['multimeter'], how: 'Licensed person: meter between each pair of legs at the motor while the hammer runs.', accuracy: '1 %', plausible: [0, 1200] },
      { id: 'motor.temperature', name: 'motor casing temperature after half an hour', dimension: 'temperature', at: [], tools: ['thermometer', 'hand'], how: 'Touch thermometer on the casing away from the fan.', accuracy: '2 degrees', plausible: [250, 450] },
    ],
    looks: [
      { id: 'motor.phase', question: 'Which supply does the motor need?', how: 'Read the plate: PH or phase.', at: [],
        answers: [
          { id: 'single', words: 'single phase' },
          { id: 'three', words: 'three phase, from the mains' },
          { id: 'three-from-converter', words: 'three phase, through a converter' },
          { id: 'direct-current', words: 'direct current' },
          { id: 'not-known', words: 'not known' },
        ] },
      { id: 'motor.start', whileRunning: true, question: 'How does the motor start?', how: 'Start it once with the treadle up and listen.', at: [],
        answers: [
          { id: 'brisk', words: 'brisk' },
          { id: 'slow', words: 'slow' },
          { id: 'trips', words: 'hums, trips or stalls' },
        ] },
    ],
  },
  {
    id: 'starter', rows: [46], name: { us: 'starter and isolator', uk: 'starter and isolator' }, group: 'drive', families: EVERY,
    places: [],
    looks: [
      { id: 'starter.isolation', question: 'Can the power be cut off and kept off?', how: 'Find the isolator, turn it off, put your own padlock on it and try to start.', at: [],
        answers: [
          { id: 'lockable', words: 'isolator that takes a padlock, in reach' },
          { id: 'plug', words: 'a plug that stays in sight of whoever pulled it' },
          { id: 'none', words: 'no way to cut it off and keep it off' },
        ] },
      { id: 'starter.live-parts', question: 'Are live parts covered?', how: 'Look only, do not open: boxes closed, cables whole and held, no bare copper.', at: [],
        answers: [
          { id: 'covered', words: 'all covered' },
          { id: 'exposed', words: 'open box, bare or damaged cable' },
          { id: 'no-electrics', words: 'no electric drive here' },
        ] },
      { id: 'starter.no-volt', whileRunning: true, question: 'Does it stay off when the power comes back?', how: 'Running light: pull the main, wait, put it back; the hammer must stay still.', at: [],
        answers: [
          { id: 'stays-off', words: 'stays off' },
          { id: 'restarts', words: 'starts by itself' },
        ] },
      { id: 'starter.overload', question: 'Is the overload set to the motor’s plate?', how: 'Licensed person: compare the dial with the plate current.', at: [],
        answers: [
          { id: 'set', words: 'set' },
          { id: 'wrong', words: 'set wrong or bridged' },
          { id: 'none', words: 'there is none' },
        ] },
    ],
  },
  {
    id: 'phase-converter', rows: [47], name: { us: 'phase converter', uk: 'phase converter' }, group: 'drive', families: EVERY,
    places: [
      { id: 'phase-converter.power', name: 'rated power of the idler motor', dimension: 'power', at: [], tools: ['plate'], how: 'Read it off the plate of the idler motor.', accuracy: 'as printed', plausible: [50, 100_000] },
    ],
    looks: [
      { id: 'phase-converter.fitted', question: 'Is there a phase converter?', how: 'Look for a second motor that drives nothing, or a box on the wall.', at: [],
        answers: [
          { id: 'none', words: 'none' },
          { id: 'rotary', words: 'rotary' },
          { id: 'static', words: 'static' },
          { id: 'electronic', words: 'electronic drive' },
        ] },
    ],
  },
  {
    id: 'tyre-wheel', rows: [48], name: { us: 'tire-wheel drive', uk: 'tyre-wheel drive' }, group: 'drive', families: EVERY,
    places: [
      { id: 'tyre-wheel.roller', name: 'drive roller diameter', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Measure over the worn middle.', accuracy: '1/32 in', plausible: [0.02, 0.4], asMade: true },
      { id: 'tyre-wheel.roller-wear', name: 'groove worn in the roller', dimension: 'length', at: [], tools: ['depth-gauge', 'rule'], how: 'Straightedge along the roller; depth at the middle.', accuracy: '1/64 in', plausible: [0, 0.03] },
    ],
    looks: [
      { id: 'tyre-wheel.state', question: 'What is the tyre like?', how: 'Turn it by hand, look for flat spots and cracks, press with a thumb.', at: [],
        answers: [
          { id: 'good', words: 'round and firm' },
          { id: 'soft', words: 'soft' },
          { id: 'flat-spot', spot: true, words: 'flat spot or cracked' },
        ] },
      { id: 'tyre-wheel.slips', whileRunning: true, question: 'Does the roller slip?', how: 'Watch it on a full tread with a block under the die.', at: [],
        answers: [
          { id: 'grips', words: 'grips' },
          { id: 'slips', words: 'slips' },
        ] },
    ],
  },
];
