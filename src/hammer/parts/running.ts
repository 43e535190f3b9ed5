import type { Part } from '../vocabulary.ts';
import { COIL, EVERY, GUIDED } from './families.ts';

/** What is read while it runs, and only when nothing cold stands in the way. */
export const RUNNING: readonly Part[] = [
  {
    id: 'running', rows: [], name: { us: 'running trial', uk: 'running trial' }, group: 'running', families: EVERY,
    places: [
      { id: 'running.rate', name: 'blows a minute at full tread', dimension: 'rotation', at: [], tools: ['counted-blows', 'recording', 'tachometer', 'stopwatch', 'ear'], how: 'Hardwood block under the die, full tread: count the blows for 30 seconds, or record and count after; times two.', accuracy: '2 %', plausible: [0.3, 12], asMade: true },
      { id: 'running.release-strokes', name: 'strokes after the treadle is let go', dimension: 'count', at: [], tools: ['ear', 'recording', 'camera'], how: 'Full tread on wood, let go, count the strokes until the ram stands still.', accuracy: '1 stroke', plausible: [0, 200] },
      { id: 'running.release-time', name: 'time from release until it stops', dimension: 'time', at: [], tools: ['stopwatch', 'recording'], how: 'Full tread on wood, let go, time it until the ram stands still.', accuracy: '0.5 s', plausible: [0, 300] },
      { id: 'running.noise', name: 'sound level at the operator’s ear', dimension: 'level', at: [], tools: ['sound-level-meter'], how: 'Meter set to A and slow, at the ear, over a minute of work.', accuracy: '2 dB', plausible: [50, 140] },
      { id: 'running.bearing-temperature', name: 'bearing temperature', dimension: 'temperature', at: ['front', 'rear', 'clutch-pulley'], tools: ['thermometer', 'hand'], how: 'After five minutes idle and again after work: thermometer on the cap. A hand held there for five seconds is well under 60 C.', accuracy: '2 degrees', plausible: [250, 450] },
      { id: 'running.motor-start-time', name: 'time for the motor to reach speed', dimension: 'time', at: [], tools: ['stopwatch', 'ear'], how: 'Treadle up: from the switch to steady pitch.', accuracy: '0.5 s', plausible: [0, 60] },
      { id: 'running.test-bar-side', name: 'test bar before the blows', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Side of the square bar, cold. One inch where nothing is entered.', accuracy: '1/64 in', plausible: [0.005, 0.2] },
      { id: 'running.test-bar-length', name: 'length of test bar under the dies', dimension: 'length', at: [], tools: ['rule'], how: 'How much of the bar lies under the dies. Two inches where nothing is entered.', accuracy: '1/16 in', plausible: [0.005, 0.5] },
      { id: 'running.test-bar-blows', name: 'full blows on the test bar', dimension: 'count', at: [], tools: ['counted-blows'], how: 'One for a single marked blow, five or ten else. Five where nothing is entered.', accuracy: '1', plausible: [1, 50] },
      { id: 'running.test-bar-thickness', name: 'hot test bar after five blows', dimension: 'length', at: ['front-left', 'front-right', 'rear-left', 'rear-right'], tools: ['caliper', 'rule'], how: 'One inch square mild steel, bright orange, two inches of it under flat dies, five full blows: measure the corners. Write down the length under the die and the heat.', accuracy: '1/64 in', plausible: [0.001, 0.2] },
      { id: 'running.crusher-diameter', name: 'crusher, diameter before', dimension: 'length', at: [], tools: ['caliper', 'micrometer'], how: 'A round of annealed copper, or of lead, stood on end in the middle of the lower die. An inch across where nothing is entered.', accuracy: '1 thou', plausible: [0.003, 0.15] },
      { id: 'running.crusher-height', name: 'crusher, height before', dimension: 'length', at: [], tools: ['caliper', 'micrometer'], how: 'No higher than twice as wide, or it bends; so thick that the dies never come near each other.', accuracy: '1 thou', plausible: [0.003, 0.2] },
      { id: 'running.crusher-blows', name: 'full blows on the crusher', dimension: 'count', at: [], tools: ['counted-blows'], how: 'One where nothing is entered: a marked blow from the top.', accuracy: '1', plausible: [1, 20] },
      { id: 'running.copper-crusher', name: 'copper crusher, height after', dimension: 'length', at: [], tools: ['caliper', 'micrometer'], how: 'Annealed at dull red just before, quenched or not, cold and clean. Struck full, nobody near: a round on end may fly. Measure the height in its middle.', accuracy: '1 thou', plausible: [0.001, 0.2] },
      { id: 'running.lead-crusher', name: 'lead crusher, height after', dimension: 'length', at: [], tools: ['caliper', 'rule'], how: 'Soft lead, gloves on. It tells far less than copper does: nobody knows its strength at such a speed well.', accuracy: '1/64 in', plausible: [0.001, 0.2] },
      { id: 'running.walk', name: 'how far it walks in five minutes', dimension: 'length', at: [], tools: ['rule'], how: 'Chalk round the feet; run five minutes; lock off; measure the greatest shift.', accuracy: '1/16 in', plausible: [0, 1] },
    ],
    looks: [
      { id: 'running.creep', question: 'With the treadle up and the motor running, does the ram stay still?', how: 'Prop under the ram until just before; idle five minutes; watch a chalk mark on the ram.', at: [],
        answers: [
          { id: 'still', words: 'stays still' },
          { id: 'drifts', words: 'drifts a little and stops' },
          { id: 'creeps', words: 'creeps, strokes or drops' },
        ] },
      { id: 'running.sound', question: 'What does it sound like at full tread on wood?', how: 'Record a minute with a phone two metres away; then listen for the main blow and anything beside it.', at: [],
        answers: [
          { id: 'clean', words: 'one clean thunk each turn' },
          { id: 'double', words: 'bang-tap, or bang-tap-miss' },
          { id: 'uneven', words: 'hard and soft by turns' },
        ] },
      { id: 'running.clank', question: 'Is there a ring or clank at the bottom with nothing on the die?', how: 'Only by hand or the softest tread: listen for iron on iron. Stop at once if it is there.', at: [],
        answers: [
          { id: 'no', words: 'no' },
          { id: 'yes', words: 'yes: stop' },
        ] },
      { id: 'running.top-knock', question: 'Is there a dull knock at the top of the stroke?', how: 'Light tread, listen from the side.', at: [],
        answers: [
          { id: 'no', words: 'no' },
          { id: 'yes', words: 'yes' },
        ] },
      { id: 'running.test-bar-heat', question: 'What colour was the test bar at the first blow?', how: 'In the shade of the shop, as it leaves the fire for the die. Two smiths differ by some 50 degrees. Bright orange where nothing is entered.', at: [],
        answers: [
          { id: 'cherry-red', words: 'cherry red' },
          { id: 'bright-red', words: 'bright red' },
          { id: 'orange', words: 'orange' },
          { id: 'bright-orange', words: 'bright orange' },
          { id: 'yellow', words: 'yellow' },
          { id: 'bright-yellow', words: 'bright yellow' },
        ] },
      { id: 'running.click', question: 'Does it click twice a turn at light tread?', how: 'Light tread on wood; listen near the linkage from the side.', at: [], families: COIL,
        answers: [
          { id: 'no', words: 'no' },
          { id: 'yes', words: 'yes' },
        ] },
      { id: 'running.chatter', question: 'How does the clutch take up?', how: 'Five slow starts on wood.', at: [],
        answers: [
          { id: 'smooth', words: 'smoothly' },
          { id: 'chatters', words: 'chatters or shudders' },
          { id: 'grabs', words: 'grabs' },
          { id: 'slips', words: 'slips under the blow' },
        ] },
      { id: 'running.walks', question: 'Does the machine walk?', how: 'Chalk round the feet, run five minutes, lock off, look.', at: [],
        answers: [
          { id: 'no', words: 'stays on its marks' },
          { id: 'little', words: 'has shifted by a chalk line' },
          { id: 'yes', words: 'walks' },
        ] },
      { id: 'running.shims', question: 'Do the guide shims creep up while it runs?', how: 'Paint a line over shim and guide; look after five minutes.', at: [], families: GUIDED,
        answers: [
          { id: 'no', words: 'line unbroken' },
          { id: 'yes', words: 'creeping' },
        ] },
      { id: 'running.die-shift', question: 'Do the dies shift in their seats?', how: 'Paint a line over each die and seat; look after ten full blows on wood.', at: ['upper', 'lower'],
        answers: [
          { id: 'no', words: 'line unbroken' },
          { id: 'yes', words: 'shifted' },
        ] },
      { id: 'running.oil', question: 'Where does the oil go?', how: 'Look at ways, pins and floor after five minutes.', at: [],
        answers: [
          { id: 'flings', words: 'a little is flung from every joint' },
          { id: 'dry', words: 'one or more joints stay dry' },
          { id: 'on-dies', words: 'it runs down to the dies' },
        ] },
      { id: 'running.off-centre', question: 'Where does the blow fall?', how: 'Chalk the lower die, one slow blow on paper or soft wood; look at the print.', at: [],
        answers: [
          { id: 'even', words: 'evenly over the face' },
          { id: 'edge', words: 'to one edge or corner' },
        ] },
    ],
  },
];
