import { EVERY } from '../families.ts';
import type { Criterion } from '../criterion.ts';

/** Criteria for drive and electrics. */
export const DRIVE_CRITERIA: readonly Criterion[] = [
  {
    id: 'drive.rate', title: 'Rate against the class', question: 'Does it run faster than the class allows?', part: 'drive-line', rows: [27, 43], families: EVERY,
    rule: { kind: 'measured', value: 'drive.rate-share', worse: 'more', steps: [
      { grade: 'watch', from: '105 %', source: 'common-practice', because: 'Above what is usual for the class; load grows with the square of the rate.' },
      { grade: 'limited', from: '115 %', source: 'rigid-body-mechanics', because: 'A third more load on every pin.', limits: [{ kind: 'greatest-speed', value: { from: 'class.rate' }, sentence: 'No faster than {value}.' }] },
      { grade: 'stand-down', from: '140 %', source: 'rigid-body-mechanics', because: 'Twice the load on arms, pins and spring.' },
    ] },
    gate: false, minutes: 3, cures: ['drive.set-speed'], cautions: ['stand-aside'],
    examples: [{ given: '104 %', grade: 'sound', stands: 'just under' }, { given: '105 %', grade: 'watch', stands: 'at' }, { given: '106 %', grade: 'watch', stands: 'just over' }, { given: '114 %', grade: 'watch', stands: 'just under' }, { given: '115 %', grade: 'limited', stands: 'at' }, { given: '116 %', grade: 'limited', stands: 'just over' }, { given: '139 %', grade: 'limited', stands: 'just under' }, { given: '140 %', grade: 'stand-down', stands: 'at' }, { given: '141 %', grade: 'stand-down', stands: 'just over' }],
  },
  {
    id: 'drive.slip', title: 'Slip', question: 'How much does the drive slip?', part: 'belt', rows: [43], families: EVERY,
    rule: { kind: 'measured', value: 'drive.slip', worse: 'more', steps: [
      { grade: 'watch', from: '6 %', source: 'common-practice', because: '2 to 4 % is usual.', cures: ['belt.dress'] },
      { grade: 'limited', from: '15 %', source: 'common-practice', because: 'The belt burns and the blow is weak.', limits: [{ kind: 'greatest-tread', value: { fixed: '75 %' }, sentence: 'Tread no deeper than {value}.' }], cures: ['belt.renew'] },
    ] },
    gate: false, minutes: 5, cures: ['belt.dress', 'belt.renew'], cautions: ['pinch'],
    examples: [{ given: '5 %', grade: 'sound', stands: 'just under' }, { given: '6 %', grade: 'watch', stands: 'at' }, { given: '7 %', grade: 'watch', stands: 'just over' }, { given: '14 %', grade: 'watch', stands: 'just under' }, { given: '15 %', grade: 'limited', stands: 'at' }, { given: '16 %', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'belt.power', title: 'What the belt carries', question: 'Is the belt wide enough for the motor?', part: 'belt', rows: [43], families: EVERY,
    rule: { kind: 'measured', value: 'drive.belt-power-share', worse: 'more', steps: [
      { grade: 'watch', from: '100 %', source: 'leather-belt-rules', because: 'The belt is worked to its limit.', cures: [] },
      { grade: 'limited', from: '150 %', source: 'leather-belt-rules', because: 'It slips under the blow.', limits: [{ kind: 'greatest-tread', value: { fixed: '75 %' }, sentence: 'Tread no deeper than {value}.' }] },
    ] },
    gate: false, minutes: 5, cures: ['belt.renew'], cautions: ['pinch'],
    examples: [{ given: '99 %', grade: 'sound', stands: 'just under' }, { given: '100 %', grade: 'watch', stands: 'at' }, { given: '101 %', grade: 'watch', stands: 'just over' }, { given: '149 %', grade: 'watch', stands: 'just under' }, { given: '150 %', grade: 'limited', stands: 'at' }, { given: '151 %', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'belt.state', title: 'State of the belt', question: 'Is the belt sound?', part: 'belt', rows: [43], families: EVERY,
    rule: { kind: 'seen', look: 'belt.state', answers: {
      good: { grade: 'sound', because: 'Supple, joint whole.', source: 'common-practice' },
      glazed: { grade: 'watch', because: 'A glazed belt slips.', source: 'common-practice', cures: ['belt.dress'] },
      oily: { grade: 'watch', because: 'An oily belt slips and rots.', source: 'common-practice', cures: ['belt.dress'] },
      cracked: { grade: 'limited', because: 'It parts under load and whips.', source: 'common-practice', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['belt.renew'] },
      'joint-worn': { grade: 'limited', because: 'The joint parts under load and whips.', source: 'common-practice', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['belt.renew'] },
    } },
    gate: false, minutes: 3, cures: ['belt.dress', 'belt.renew'], cautions: ['pinch'],
    examples: [{ given: 'good', grade: 'sound', stands: 'plain' }, { given: 'glazed', grade: 'watch', stands: 'plain' }, { given: 'oily', grade: 'watch', stands: 'plain' }, { given: 'cracked', grade: 'limited', stands: 'plain' }, { given: 'joint-worn', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'belt.runs', title: 'How the belt runs', question: 'Does the belt run true?', part: 'belt', rows: [43], families: EVERY,
    rule: { kind: 'seen', look: 'belt.runs', answers: {
      true: { grade: 'sound', because: 'True.', source: 'common-practice' },
      walks: { grade: 'limited', because: 'A belt that comes off takes whatever is near.', source: 'common-practice', limits: [{ kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }], cures: ['belt.align'] },
      slips: { grade: 'watch', because: 'It slips under the blow.', source: 'common-practice', cures: ['belt.dress'] },
    } },
    gate: false, minutes: 3, cures: ['belt.align', 'belt.dress'], cautions: ['pinch'],
    examples: [{ given: 'true', grade: 'sound', stands: 'plain' }, { given: 'walks', grade: 'limited', stands: 'plain' }, { given: 'slips', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'belt.grain', title: 'Grain of the belt', question: 'Does the grain side run on the pulley?', part: 'belt', rows: [43], families: EVERY,
    rule: { kind: 'seen', look: 'belt.grain', answers: {
      grain: { grade: 'sound', because: 'Grain side on the pulley.', source: 'page-drive' },
      flesh: { grade: 'watch', because: 'Turn it: the grain side grips better.', source: 'page-drive' },
      'not-leather': { grade: 'sound', because: 'Not leather.', source: 'common-practice' },
    } },
    gate: false, minutes: 1, cures: ['belt.dress'], cautions: [],
    examples: [{ given: 'grain', grade: 'sound', stands: 'plain' }, { given: 'flesh', grade: 'watch', stands: 'plain' }, { given: 'not-leather', grade: 'sound', stands: 'plain' }],
  },
  {
    id: 'idler.drag', title: 'Idler belt with the treadle up', question: 'Is the belt clear with the treadle up?', part: 'belt-idler', rows: [44], families: EVERY,
    onlyWhere: { look: 'belt-idler.fitted', answers: ['yes'] },
    rule: { kind: 'seen', look: 'belt-idler.drag', answers: {
      clear: { grade: 'sound', because: 'Clear, pulley stands still.', source: 'common-practice' },
      drags: { grade: 'limited', because: 'A belt that drags keeps the ram creeping.', source: 'common-practice', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }] },
      bottoms: { grade: 'watch', because: 'The pedal bottoms before the belt grips.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['idler.set'], cautions: ['pinch'],
    examples: [{ given: 'clear', grade: 'sound', stands: 'plain' }, { given: 'drags', grade: 'limited', stands: 'plain' }, { given: 'bottoms', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'motor.share', title: 'Motor against the class', question: 'Is the motor large enough for the class?', part: 'motor', rows: [45], families: EVERY,
    rule: { kind: 'measured', value: 'drive.motor-share', worse: 'less', steps: [
      { grade: 'watch', from: '75 %', source: 'common-practice', because: 'Smaller than usual: it slows in long heats.', cures: [] },
      { grade: 'limited', from: '60 %', source: 'common-practice', because: 'Too small: it stalls and burns under full blows.', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'greatest-bar', value: { from: 'capacity.largest-bar' }, sentence: 'No bar thicker than {value}.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    ] },
    gate: false, minutes: 2, cures: ['motor.renew'], cautions: ['electrician'],
    examples: [{ given: '74 %', grade: 'watch', stands: 'just under' }, { given: '75 %', grade: 'watch', stands: 'at' }, { given: '76 %', grade: 'sound', stands: 'just over' }, { given: '59 %', grade: 'limited', stands: 'just under' }, { given: '60 %', grade: 'limited', stands: 'at' }, { given: '61 %', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'motor.temperature', title: 'Motor temperature', question: 'How hot does the motor get?', part: 'motor', rows: [45], families: EVERY,
    rule: { kind: 'measured', value: 'motor.temperature', worse: 'more', steps: [
      { grade: 'watch', from: '70 °C', source: 'common-practice', because: 'Warm; look at load and air.', cures: ['motor.service'] },
      { grade: 'limited', from: '80 °C', source: 'common-practice', because: 'Too hot: insulation ages fast.', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }], cures: ['motor.service'] },
    ] },
    gate: false, minutes: 3, cures: ['motor.service', 'motor.renew'], cautions: ['electrician'],
    examples: [{ given: '69 °C', grade: 'sound', stands: 'just under' }, { given: '70 °C', grade: 'watch', stands: 'at' }, { given: '71 °C', grade: 'watch', stands: 'just over' }, { given: '79 °C', grade: 'watch', stands: 'just under' }, { given: '80 °C', grade: 'limited', stands: 'at' }, { given: '81 °C', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'motor.start', title: 'How the motor starts', question: 'Does the motor start briskly?', part: 'motor', rows: [45], families: EVERY,
    rule: { kind: 'seen', look: 'motor.start', answers: {
      brisk: { grade: 'sound', because: 'Brisk.', source: 'common-practice' },
      slow: { grade: 'watch', because: 'Low voltage, a tight belt or a dragging brake.', source: 'common-practice', cures: ['motor.service'] },
      trips: { grade: 'limited', because: 'It hums, trips or stalls: it burns if it is tried again and again.', source: 'common-practice', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }], cures: ['motor.service'] },
    } },
    gate: false, minutes: 2, cures: ['motor.service', 'converter.enlarge', 'motor.renew'], cautions: ['electrician'],
    examples: [{ given: 'brisk', grade: 'sound', stands: 'plain' }, { given: 'slow', grade: 'watch', stands: 'plain' }, { given: 'trips', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'starter.isolation', title: 'Isolation', question: 'Can the power be cut off and kept off?', part: 'starter', rows: [46], families: EVERY,
    rule: { kind: 'seen', look: 'starter.isolation', answers: {
      lockable: { grade: 'sound', because: 'An isolator that takes a padlock, in reach.', source: 'osha-1910-147' },
      plug: { grade: 'sound', because: 'A plug in sight of whoever pulled it.', source: 'osha-1910-147' },
      none: { grade: 'stand-down', because: 'Without a sure way to keep it off, no hand may go near the dies.', source: 'osha-1910-147' },
    } },
    gate: true, minutes: 1, cures: ['starter.isolator'], cautions: ['isolate', 'electrician'],
    examples: [{ given: 'lockable', grade: 'sound', stands: 'plain' }, { given: 'plug', grade: 'sound', stands: 'plain' }, { given: 'none', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'starter.live-parts', title: 'Live parts', question: 'Are all live parts covered?', part: 'starter', rows: [46], families: EVERY,
    rule: { kind: 'seen', look: 'starter.live-parts', answers: {
      covered: { grade: 'sound', because: 'All covered.', source: 'common-practice' },
      exposed: { grade: 'stand-down', because: 'Exposed live parts kill.', source: 'common-practice' },
      'no-electrics': { grade: 'sound', because: 'No electric drive here.', source: 'common-practice' },
    } },
    gate: true, minutes: 2, cures: ['electrics.make-safe'], cautions: ['electrician'],
    examples: [{ given: 'covered', grade: 'sound', stands: 'plain' }, { given: 'exposed', grade: 'stand-down', stands: 'plain' }, { given: 'no-electrics', grade: 'sound', stands: 'plain' }],
  },
  {
    id: 'starter.no-volt', title: 'Start again after a power cut', question: 'Does it stay off when the power comes back?', part: 'starter', rows: [46], families: EVERY,
    rule: { kind: 'seen', look: 'starter.no-volt', answers: {
      'stays-off': { grade: 'sound', because: 'Stays off.', source: 'common-practice' },
      restarts: { grade: 'limited', because: 'It starts by itself when the power returns.', source: 'common-practice', limits: [{ kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }] },
    } },
    gate: false, minutes: 2, cures: ['starter.isolator'], cautions: ['electrician'],
    examples: [{ given: 'stays-off', grade: 'sound', stands: 'plain' }, { given: 'restarts', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'starter.overload', title: 'Overload', question: 'Is the overload set to the plate?', part: 'starter', rows: [46], families: EVERY,
    rule: { kind: 'seen', look: 'starter.overload', answers: {
      set: {
        grade: 'sound', because: 'Set to the plate.', source: 'common-practice',
        gainsaid: { by: 'drive.running-share', from: '125 %', as: { grade: 'limited', because: 'One of the two is wrong: an overload set to the plate lets no more than 125 % of it through for long, and the motor was read above that. It is set higher than was said, or bridged, or the meter was wrong.', source: 'nec-430', limits: [{ kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }], cures: ['motor.service'] } },
      },
      wrong: { grade: 'limited', because: 'A bridged or wrong overload burns the motor, and the shop with it.', source: 'common-practice', limits: [{ kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }], cures: ['motor.service'] },
      none: { grade: 'watch', because: 'Without an overload a stalled motor burns.', source: 'common-practice', limits: [{ kind: 'not-unattended', sentence: 'Never leave it with the power on; block the treadle.' }], cures: ['starter.isolator'] },
    } },
    gate: false, minutes: 5, cures: ['motor.service', 'starter.isolator'], cautions: ['electrician'],
    examples: [{ given: 'set', grade: 'sound', stands: 'plain' }, { given: 'wrong', grade: 'limited', stands: 'plain' }, { given: 'none', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'converter.size', title: 'Converter against the motor', question: 'Is the converter large enough to start the hammer?', part: 'phase-converter', rows: [47], families: EVERY,
    onlyWhere: { look: 'phase-converter.fitted', answers: ['rotary'] },
    rule: { kind: 'measured', value: 'drive.converter-share', worse: 'less', steps: [
      { grade: 'watch', from: '1.4', source: 'phase-converter-rules', because: '1.5 times the motor is asked for a flywheel start, 2 times for a hard one.', cures: [] },
      { grade: 'limited', from: '1', source: 'phase-converter-rules', because: 'Smaller than the motor: it hums, trips and starts slowly.', limits: [{ kind: 'greatest-tread', value: { fixed: '75 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    ] },
    gate: false, minutes: 2, cures: ['converter.enlarge'], cautions: ['electrician'],
    examples: [{ given: '1.3', grade: 'watch', stands: 'just under' }, { given: '1.4', grade: 'watch', stands: 'at' }, { given: '1.5', grade: 'sound', stands: 'just over' }, { given: '0.9', grade: 'limited', stands: 'just under' }, { given: '1', grade: 'limited', stands: 'at' }, { given: '1.1', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'converter.unbalance', title: 'Voltage unbalance', question: 'Are the three legs alike under load?', part: 'motor', rows: [47], families: EVERY,
    onlyWhere: { look: 'motor.phase', answers: ['three', 'three-from-converter'] },
    rule: { kind: 'measured', value: 'drive.voltage-unbalance', worse: 'more', steps: [
      { grade: 'watch', from: '2 %', source: 'nema-mg-1', because: 'Above 1 % a motor is derated.' },
      { grade: 'limited', from: '5 %', source: 'nema-mg-1', because: 'Above 5 % a motor should not be run: it overheats.', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }] },
    ] },
    gate: false, minutes: 10, cures: ['converter.balance'], cautions: ['electrician'],
    examples: [{ given: '1.9 %', grade: 'sound', stands: 'just under' }, { given: '2 %', grade: 'watch', stands: 'at' }, { given: '2.1 %', grade: 'watch', stands: 'just over' }, { given: '4 %', grade: 'watch', stands: 'just under' }, { given: '5 %', grade: 'limited', stands: 'at' }, { given: '6 %', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'tyre.state', title: 'Tyre', question: 'Is the tyre round and firm?', part: 'tyre-wheel', rows: [48], families: EVERY,
    onlyWhere: { look: 'drive-line.kind', answers: ['tyre-wheel'] },
    rule: { kind: 'seen', look: 'tyre-wheel.state', answers: {
      good: { grade: 'sound', because: 'Round and firm.', source: 'common-practice' },
      soft: { grade: 'watch', because: 'A soft tyre wastes power: pump it up.', source: 'common-practice' },
      'flat-spot': { grade: 'limited', because: 'A flat spot bounces the drive and drops the ram.', source: 'common-practice', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
    } },
    gate: false, minutes: 3, cures: ['tyre.renew'], cautions: ['pinch'],
    examples: [{ given: 'good', grade: 'sound', stands: 'plain' }, { given: 'soft', grade: 'watch', stands: 'plain' }, { given: 'flat-spot', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'tyre.slips', title: 'Roller grip', question: 'Does the roller grip?', part: 'tyre-wheel', rows: [48], families: EVERY,
    onlyWhere: { look: 'drive-line.kind', answers: ['tyre-wheel'] },
    rule: { kind: 'seen', look: 'tyre-wheel.slips', answers: {
      grips: { grade: 'sound', because: 'Grips.', source: 'common-practice' },
      slips: { grade: 'watch', because: 'Roughen the roller or raise the pressure.', source: 'page-drive' },
    } },
    gate: false, minutes: 3, cures: ['tyre.renew'], cautions: ['pinch'],
    examples: [{ given: 'grips', grade: 'sound', stands: 'plain' }, { given: 'slips', grade: 'watch', stands: 'plain' }],
  },
];
