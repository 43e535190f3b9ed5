import { BOW, COIL, EVERY, GUIDED, HELVE } from '../families.ts';
import type { Criterion } from '../criterion.ts';

/** Criteria for ram, guide and linkage. */
export const RAM_AND_LINKAGE_CRITERIA: readonly Criterion[] = [
  {
    id: 'ram.crack', title: 'Crack in the ram', question: 'Is the ram whole at dovetail and pin boss?', part: 'ram', rows: [11], families: EVERY,
    rule: { kind: 'seen', look: 'ram.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line at dovetail or boss counts as a crack until dye has shown otherwise.', source: 'common-practice', cures: ['frame.dye-test'] },
      present: { grade: 'stand-down', because: 'A ram cracked at dovetail or boss drops its die or itself.', source: 'common-practice', cures: ['ram.mend-or-renew'] },
    } },
    gate: true, minutes: 3, cures: ['frame.dye-test', 'ram.mend-or-renew'], cautions: ['cracked-casting', 'block-ram'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'ram.wear-step', title: 'Wear of the ram', question: 'Are the faces of the ram worn in a step?', part: 'ram', rows: [11], families: EVERY,
    rule: { kind: 'measured', value: 'ram.wear-step', worse: 'more', steps: [
      { grade: 'watch', from: '0.006 in', source: 'common-practice', because: 'Parallel within 0.005 in is good.', cures: [] },
      { grade: 'limited', from: '0.015 in', source: 'common-practice', because: 'A stepped ram is loose at one end of its travel and tight at the other.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 15, cures: ['ram.build-up'], cautions: ['block-ram'],
    examples: [{ given: '0.005 in', grade: 'sound', stands: 'just under' }, { given: '0.006 in', grade: 'watch', stands: 'at' }, { given: '0.007 in', grade: 'watch', stands: 'just over' }, { given: '0.014 in', grade: 'watch', stands: 'just under' }, { given: '0.015 in', grade: 'limited', stands: 'at' }, { given: '0.016 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'guide.ears', title: 'Ears of the ram guide', question: 'Are the ears of the guide whole?', part: 'ram-guide', rows: [12], families: GUIDED,
    rule: { kind: 'seen', look: 'ram-guide.ears', answers: {
      whole: { grade: 'sound', because: 'Whole.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line at an ear counts as a crack until dye has shown otherwise.', source: 'common-practice', cures: ['frame.dye-test'] },
      broken: { grade: 'stand-down', because: 'A broken ear lets the ram out of its guide.', source: 'page-guide', cures: ['guide.mend'] },
      repaired: { grade: 'limited', because: 'An old repair that holds is worked gently and watched.', source: 'page-guide', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }], cures: ['frame.have-repair-judged'] },
    } },
    gate: true, minutes: 4, cures: ['frame.dye-test', 'guide.mend', 'frame.have-repair-judged'], cautions: ['cracked-casting', 'hot-casting'],
    examples: [{ given: 'whole', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'broken', grade: 'stand-down', stands: 'plain' }, { given: 'repaired', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'guide.play-fore-aft', title: 'Ram play fore and aft', question: 'How far does the ram move fore and aft in its guide?', part: 'ram-guide', rows: [12, 13], families: GUIDED,
    rule: { kind: 'measured', value: 'ram-guide.play-fore-aft', worse: 'more', steps: [
      { grade: 'watch', from: '0.015 in', source: 'common-practice', because: '0.005 to 0.010 in in all is good; take shims out soon.' },
      { grade: 'limited', from: '0.030 in', source: 'common-practice', because: 'The ram cocks in the blow: work slews and the dies wear out of parallel.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'flat-dies-only', sentence: 'Flat dies only.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
      { grade: 'stand-down', from: '1/4 in', source: 'page-guide', because: 'A quarter inch was once accepted at a sale, and then found to be destroying the machine.' },
    ] },
    gate: false, minutes: 10, cures: ['guide.shim'], cautions: ['block-ram'],
    examples: [{ given: '0.014 in', grade: 'sound', stands: 'just under' }, { given: '0.015 in', grade: 'watch', stands: 'at' }, { given: '0.016 in', grade: 'watch', stands: 'just over' }, { given: '0.029 in', grade: 'watch', stands: 'just under' }, { given: '0.030 in', grade: 'limited', stands: 'at' }, { given: '0.031 in', grade: 'limited', stands: 'just over' }, { given: '0.249 in', grade: 'limited', stands: 'just under' }, { given: '1/4 in', grade: 'stand-down', stands: 'at' }, { given: '0.251 in', grade: 'stand-down', stands: 'just over' }],
  },
  {
    id: 'guide.play-side', title: 'Ram play from side to side', question: 'How far does the ram move from side to side in its guide?', part: 'ram-guide', rows: [12, 13], families: GUIDED,
    rule: { kind: 'measured', value: 'ram-guide.play-side', worse: 'more', steps: [
      { grade: 'watch', from: '0.015 in', source: 'common-practice', because: '0.005 to 0.010 in in all is good; take shims out soon.' },
      { grade: 'limited', from: '0.030 in', source: 'common-practice', because: 'The ram cocks in the blow: work slews and the dies wear out of parallel.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'flat-dies-only', sentence: 'Flat dies only.' }, { kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
      { grade: 'stand-down', from: '1/4 in', source: 'page-guide', because: 'A quarter inch was once accepted at a sale, and then found to be destroying the machine.' },
    ] },
    gate: false, minutes: 10, cures: ['guide.shim'], cautions: ['block-ram'],
    examples: [{ given: '0.014 in', grade: 'sound', stands: 'just under' }, { given: '0.015 in', grade: 'watch', stands: 'at' }, { given: '0.016 in', grade: 'watch', stands: 'just over' }, { given: '0.029 in', grade: 'watch', stands: 'just under' }, { given: '0.030 in', grade: 'limited', stands: 'at' }, { given: '0.031 in', grade: 'limited', stands: 'just over' }, { given: '0.249 in', grade: 'limited', stands: 'just under' }, { given: '1/4 in', grade: 'stand-down', stands: 'at' }, { given: '0.251 in', grade: 'stand-down', stands: 'just over' }],
  },
  {
    id: 'guide.fall', title: 'Ram falls free', question: 'Does the ram fall of its own weight without rock?', part: 'ram-guide', rows: [12], families: GUIDED,
    rule: { kind: 'seen', look: 'ram-guide.fall', answers: {
      free: { grade: 'sound', because: 'Falls free without rock.', source: 'common-practice' },
      rocks: { grade: 'watch', because: 'It falls and rocks: measure the play.', source: 'common-practice', cures: ['guide.shim'] },
      sticks: { grade: 'limited', because: 'A ram that sticks drops when nobody expects it.', source: 'common-practice', limits: [{ kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    } },
    gate: false, minutes: 15, cures: ['ways.polish', 'guide.shim'], cautions: ['block-ram'],
    examples: [{ given: 'free', grade: 'sound', stands: 'plain' }, { given: 'rocks', grade: 'watch', stands: 'plain' }, { given: 'sticks', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'guide-shims.state', title: 'Hold of the guide shims', question: 'Are the guide shims held?', part: 'guide-shims', rows: [13], families: GUIDED,
    rule: { kind: 'seen', look: 'guide-shims.state', answers: {
      held: { grade: 'sound', because: 'Held so that they cannot climb.', source: 'common-practice' },
      free: { grade: 'watch', because: 'Nothing keeps them from climbing with the ram.', source: 'page-guide', cures: ['guide.retain-shims'] },
      climbing: { grade: 'limited', because: 'A shim on its way out gives sudden play.', source: 'page-guide', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['guide.retain-shims'] },
      broken: { grade: 'limited', because: 'With a shim gone the guide is loose or tight without warning.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['guide.shim'] },
    } },
    gate: false, minutes: 3, cures: ['guide.shim', 'guide.retain-shims'], cautions: ['block-ram'],
    examples: [{ given: 'held', grade: 'sound', stands: 'plain' }, { given: 'free', grade: 'watch', stands: 'plain' }, { given: 'climbing', grade: 'limited', stands: 'plain' }, { given: 'broken', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'guide-bolts.state', title: 'Guide bolts', question: 'Are the guide bolts tight, alike and locked?', part: 'guide-bolts', rows: [14], families: GUIDED,
    rule: { kind: 'seen', look: 'guide-bolts.state', answers: {
      tight: { grade: 'sound', because: 'All tight, locked and alike.', source: 'common-practice' },
      loose: { grade: 'limited', because: 'A loose bolt lets the guide walk.', source: 'common-practice', limits: [{ kind: 'longest-run', value: { fixed: '30 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
      stripped: { grade: 'limited', because: 'A stripped thread or stretched bolt holds nothing in a hard blow.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
      mixed: { grade: 'watch', because: 'Bolts of unknown grade stretch unequally.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['guide.renew-bolts'], cautions: ['block-ram'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'loose', grade: 'limited', stands: 'plain' }, { given: 'stripped', grade: 'limited', stands: 'plain' }, { given: 'mixed', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'toggles.crack', title: 'Crack in arm, link or pin', question: 'Is every arm, link and pin of the linkage whole?', part: 'toggle-arms', rows: [16, 17, 18], families: COIL,
    rule: { kind: 'seen', look: 'toggle-arms.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line counts as a crack until dye has shown otherwise.', source: 'common-practice', cures: ['frame.dye-test'] },
      present: { grade: 'stand-down', because: 'A cracked arm, link or pin fails at speed at the height of a face.', source: 'common-practice', cures: ['arms.renew'] },
    } },
    gate: true, minutes: 5, cures: ['frame.dye-test', 'arms.renew', 'links.renew', 'pins.renew'], cautions: ['spring-unload', 'stand-aside', 'cracked-casting'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'links.crack', title: 'Crack in a link', question: 'Are both links whole at their eyes?', part: 'toggle-links', rows: [16], families: COIL,
    rule: { kind: 'seen', look: 'toggle-links.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line counts as a crack until dye has shown otherwise.', source: 'common-practice' },
      present: { grade: 'stand-down', because: 'A cracked link lets half the linkage swing free.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['links.renew'], cautions: ['spring-unload', 'stand-aside'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'links.play', title: 'Play of the links', question: 'How slack are the links at the ram pin?', part: 'toggle-links', rows: [16], families: COIL,
    rule: { kind: 'measured', value: 'toggle-links.play', worse: 'more', steps: [
      { grade: 'watch', from: '0.015 in', source: 'common-practice', because: '0.002 to 0.005 in over the pin is good.' },
      { grade: 'limited', from: '1/32 in', source: 'common-practice', because: 'The ram lags the linkage and lands with a slap.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 6, cures: ['links.renew'], cautions: ['spring-unload'],
    examples: [{ given: '0.014 in', grade: 'sound', stands: 'just under' }, { given: '0.015 in', grade: 'watch', stands: 'at' }, { given: '0.016 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'arms.straight', title: 'Arms straight', question: 'Are both arms straight and a pair?', part: 'toggle-arms', rows: [17], families: COIL,
    rule: { kind: 'seen', look: 'toggle-arms.straight', answers: {
      alike: { grade: 'sound', because: 'Straight and alike.', source: 'common-practice' },
      bent: { grade: 'limited', because: 'A bent arm has been overloaded once, and cocks the ram.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
      odd: { grade: 'watch', because: 'Arms that are not a pair cock the ram.', source: 'common-practice', cures: [] },
    } },
    gate: false, minutes: 3, cures: ['arms.renew'], cautions: ['spring-unload'],
    examples: [{ given: 'alike', grade: 'sound', stands: 'plain' }, { given: 'bent', grade: 'limited', stands: 'plain' }, { given: 'odd', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'arms.mismatch', title: 'Difference of the arms', question: 'Are both arms of one length?', part: 'toggle-arms', rows: [17], families: COIL,
    rule: { kind: 'measured', value: 'linkage.arm-mismatch', worse: 'more', steps: [
      { grade: 'watch', from: '1/64 in', source: 'common-practice', because: 'The ram begins to hang crooked.', cures: [] },
      { grade: 'limited', from: '1/32 in', source: 'common-practice', because: 'The ram cocks in its guide at every stroke.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 10, cures: ['arms.renew'], cautions: ['spring-unload'],
    examples: [{ given: '0.015 in', grade: 'sound', stands: 'just under' }, { given: '1/64 in', grade: 'watch', stands: 'at' }, { given: '0.016 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'arms.set', title: 'How the arms stand', question: 'Do the arms stand close to level at rest?', part: 'toggle-arms', rows: [17, 19], families: COIL,
    rule: { kind: 'seen', look: 'toggle-arms.set', answers: {
      level: { grade: 'sound', because: 'Close to level.', source: 'page-linkage' },
      droop: { grade: 'watch', because: 'The ram hangs low: tired spring, short dies, worn joints or a long rod.', source: 'common-practice' },
      lifted: { grade: 'watch', because: 'The ram hangs high: spring over-tight, or the rod short.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['spring.set-tension'], cautions: ['stand-aside'],
    examples: [{ given: 'level', grade: 'sound', stands: 'plain' }, { given: 'droop', grade: 'watch', stands: 'plain' }, { given: 'lifted', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'arms.carrier-gap', title: 'Arm clear of the carrier', question: 'Do the arms clear the spring carrier?', part: 'toggle-arms', rows: [17], families: COIL,
    rule: { kind: 'measured', value: 'toggle-arms.carrier-gap', worse: 'less', steps: [
      { grade: 'watch', from: '1/2 in', source: 'page-linkage', because: 'About half an inch was as tight as a cautious owner went on a 100 lb hammer.' },
    ] },
    gate: false, minutes: 5, cures: ['spring.set-tension'], cautions: ['stand-aside'],
    examples: [{ given: '0.499 in', grade: 'watch', stands: 'just under' }, { given: '1/2 in', grade: 'watch', stands: 'at' }, { given: '0.501 in', grade: 'sound', stands: 'just over' }],
  },
  {
    id: 'pins.play-sum', title: 'Play of the linkage joints', question: 'How much play have the four joints together?', part: 'toggle-pins', rows: [18], families: COIL,
    rule: { kind: 'measured', value: 'linkage.pin-play-sum', worse: 'more', steps: [
      { grade: 'watch', from: '0.020 in', source: 'common-practice', because: '0.002 to 0.005 in at each of the four is good.', cures: ['pins.oil'] },
      { grade: 'limited', from: '1/32 in', source: 'common-practice', because: 'It is the sum of the four that matters: the blow comes late and weak, and hammers the joints.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 12, cures: ['pins.renew', 'pins.oil'], cautions: ['spring-unload'],
    examples: [{ given: '0.019 in', grade: 'sound', stands: 'just under' }, { given: '0.020 in', grade: 'watch', stands: 'at' }, { given: '0.021 in', grade: 'watch', stands: 'just over' }, { given: '0.031 in', grade: 'watch', stands: 'just under' }, { given: '1/32 in', grade: 'limited', stands: 'at' }, { given: '0.032 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'pins.state', title: 'Surface of the pins', question: 'Are the pins smooth and oily?', part: 'toggle-pins', rows: [18], families: COIL,
    rule: { kind: 'seen', look: 'toggle-pins.state', answers: {
      oiled: { grade: 'sound', because: 'Smooth and oily.', source: 'common-practice' },
      dry: { grade: 'watch', because: 'A dry pin seizes, and a seized pin breaks an arm.', source: 'common-practice', cures: ['pins.oil'] },
      galled: { grade: 'limited', because: 'A galled pin is on its way to seizing.', source: 'common-practice', limits: [{ kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['pins.renew'] },
    } },
    gate: false, minutes: 15, cures: ['pins.oil', 'pins.renew'], cautions: ['spring-unload'],
    examples: [{ given: 'oiled', grade: 'sound', stands: 'plain' }, { given: 'dry', grade: 'watch', stands: 'plain' }, { given: 'galled', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'pins.held', title: 'Pins kept in', question: 'Is every pin kept from walking out?', part: 'toggle-pins', rows: [18], families: COIL,
    rule: { kind: 'seen', look: 'toggle-pins.held', answers: {
      held: { grade: 'sound', because: 'All held.', source: 'common-practice' },
      'not-held': { grade: 'stand-down', because: 'A pin that walks out drops the linkage at speed.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['pins.hold'], cautions: ['spring-unload', 'stand-aside'],
    examples: [{ given: 'held', grade: 'sound', stands: 'plain' }, { given: 'not-held', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'spring.crack', title: 'Crack in the coil spring', question: 'Is the spring whole?', part: 'coil-spring', rows: [19], families: COIL,
    rule: { kind: 'seen', look: 'coil-spring.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line on a spring counts as a crack.', source: 'common-practice' },
      present: { grade: 'stand-down', because: 'A cracked spring breaks, and its pieces fly off at head height.', source: 'common-practice' },
    } },
    gate: true, minutes: 3, cures: ['spring.renew'], cautions: ['spring-unload', 'stand-aside'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'spring.travel-left', title: 'Spring travel left', question: 'How much travel is left before the coils touch?', part: 'coil-spring', rows: [19], families: COIL,
    rule: { kind: 'measured', value: 'spring.travel-left-share', worse: 'less', steps: [
      { grade: 'watch', from: '20 %', source: 'derived', because: '15 to 20 % of the travel from free to solid should be left.', cures: ['spring.set-tension'] },
      { grade: 'limited', from: '15 %', source: 'derived', because: 'The coils come close to touching: coils that strike one another break, whatever the wire stands.', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'guard-first', sentence: 'Fit the guard in front of the linkage before anybody else comes near.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
    ] },
    gate: false, minutes: 15, cures: ['spring.renew', 'spring.set-tension'], cautions: ['stand-aside', 'spring-unload'],
    examples: [{ given: '19 %', grade: 'watch', stands: 'just under' }, { given: '20 %', grade: 'watch', stands: 'at' }, { given: '21 %', grade: 'sound', stands: 'just over' }, { given: '14 %', grade: 'limited', stands: 'just under' }, { given: '15 %', grade: 'limited', stands: 'at' }, { given: '16 %', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'spring.clash', title: 'Coils touching', question: 'Do the coils touch when it runs?', part: 'coil-spring', rows: [19], families: COIL,
    rule: { kind: 'seen', look: 'coil-spring.clash', answers: {
      clear: { grade: 'sound', because: 'The paint between the coils is untouched.', source: 'common-practice' },
      touch: { grade: 'limited', because: 'Coils that touch break the spring.', source: 'page-linkage', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'guard-first', sentence: 'Fit the guard in front of the linkage before anybody else comes near.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
    } },
    gate: false, minutes: 10, cures: ['spring.set-tension', 'spring.renew'], cautions: ['stand-aside', 'spring-unload'],
    examples: [{ given: 'clear', grade: 'sound', stands: 'plain' }, { given: 'touch', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'spring.set', title: 'Length lost for good', question: 'How much of its length has the spring lost for good?', part: 'coil-spring', rows: [19], families: COIL,
    rule: { kind: 'measured', value: 'spring.set-share', worse: 'more', steps: [
      { grade: 'watch', from: '2 %', source: 'common-practice', because: 'It has begun to take a set.', cures: [] },
      { grade: 'limited', from: '3 %', source: 'common-practice', because: 'A spring that has lost 3 % has been overloaded: replace it.', limits: [{ kind: 'greatest-tread', value: { fixed: '75 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'guard-first', sentence: 'Fit the guard in front of the linkage before anybody else comes near.' }] },
    ] },
    gate: false, minutes: 15, cures: ['spring.renew'], cautions: ['spring-unload'],
    examples: [{ given: '1.9 %', grade: 'sound', stands: 'just under' }, { given: '2 %', grade: 'watch', stands: 'at' }, { given: '2.1 %', grade: 'watch', stands: 'just over' }, { given: '2 %', grade: 'watch', stands: 'just under' }, { given: '3 %', grade: 'limited', stands: 'at' }, { given: '4 %', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'spring.pits', title: 'Rust pits in the spring', question: 'How deep are the rust pits?', part: 'coil-spring', rows: [19], families: COIL,
    rule: { kind: 'measured', value: 'coil-spring.pit-depth', worse: 'more', steps: [
      { grade: 'watch', from: '0.005 in', source: 'common-practice', because: 'Every pit is where a crack starts.', cures: [] },
      { grade: 'limited', from: '0.020 in', source: 'common-practice', because: 'Pits this deep are cracks in the making.', limits: [{ kind: 'guard-first', sentence: 'Fit the guard in front of the linkage before anybody else comes near.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
    ] },
    gate: false, minutes: 5, cures: ['spring.renew'], cautions: ['stand-aside'],
    examples: [{ given: '0.004 in', grade: 'sound', stands: 'just under' }, { given: '0.005 in', grade: 'watch', stands: 'at' }, { given: '0.006 in', grade: 'watch', stands: 'just over' }, { given: '0.019 in', grade: 'watch', stands: 'just under' }, { given: '0.020 in', grade: 'limited', stands: 'at' }, { given: '0.021 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'spring.age', title: 'Spring after long standing', question: 'Has the spring stood loaded for decades?', part: 'coil-spring', rows: [19], families: COIL,
    rule: { kind: 'seen', look: 'whole-machine.idle', answers: {
      'in-use': { grade: 'sound', because: 'In use.', source: 'common-practice' },
      'some-years': { grade: 'watch', because: 'Look at the spring twice and listen.', source: 'owners-practice', cures: [] },
      decades: { grade: 'watch', because: 'After decades of standing the spring is replaced as a habit.', source: 'owners-practice' },
    } },
    gate: false, minutes: 1, cures: ['spring.renew'], cautions: ['stand-aside'],
    examples: [{ given: 'in-use', grade: 'sound', stands: 'plain' }, { given: 'some-years', grade: 'watch', stands: 'plain' }, { given: 'decades', grade: 'watch', stands: 'plain' }],
  },
  {
    id: 'spring.stress-solid', title: 'Stress if it goes solid', question: 'Would the spring stand going solid?', part: 'coil-spring', rows: [19], families: COIL,
    rule: { kind: 'measured', value: 'spring.stress-share', worse: 'more', steps: [
      { grade: 'watch', from: '100 %', source: 'derived', because: 'If it ever goes solid the wire is loaded beyond what it stands: it must never go solid.' },
    ], otherwise: {
      value: 'spring.stress-share-newer', taken: 'the older table', other: 'the newer table', source: 'spring-wire-strength', words: { sound: 'good', worse: 'too much' },
      why: 'The older is taken, since it allows less and holds wire of any thickness; nobody knows which table this wire was drawn to.',
    } },
    gate: false, minutes: 10, cures: [], cautions: ['stand-aside'],
    examples: [{ given: '99 %', grade: 'sound', stands: 'just under' }, { given: '100 %', grade: 'watch', stands: 'at' }, { given: '101 %', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'spring-bolt.thread-left', title: 'Spring bolt thread left', question: 'Is there thread left to tighten the spring?', part: 'spring-bolt', rows: [20], families: COIL,
    rule: { kind: 'measured', value: 'spring-bolt.thread-left', worse: 'less', steps: [
      { grade: 'watch', from: '1/2 in', source: 'common-practice', because: 'Near the end of the thread: the spring is tired or the joints are worn.', cures: [] },
      { grade: 'limited', from: '1/16 in', source: 'common-practice', because: 'The spring cannot be tightened any more.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }], cures: ['spring.renew'] },
    ] },
    gate: false, minutes: 2, cures: ['spring.renew', 'spring-bolt.renew'], cautions: ['spring-unload'],
    examples: [{ given: '0.499 in', grade: 'watch', stands: 'just under' }, { given: '1/2 in', grade: 'watch', stands: 'at' }, { given: '0.501 in', grade: 'sound', stands: 'just over' }, { given: '0.062 in', grade: 'limited', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'spring-bolt.lock', title: 'Lock of the spring nut', question: 'Is the spring nut locked?', part: 'spring-bolt', rows: [20], families: COIL,
    rule: { kind: 'seen', look: 'spring-bolt.lock', answers: {
      locked: { grade: 'sound', because: 'Locked.', source: 'common-practice' },
      'not-locked': { grade: 'limited', because: 'A nut that backs off changes the blow, and then lets the spring go.', source: 'common-practice', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'guard-first', sentence: 'Fit the guard in front of the linkage before anybody else comes near.' }] },
    } },
    gate: false, minutes: 1, cures: ['spring.lock-nut'], cautions: ['stand-aside'],
    examples: [{ given: 'locked', grade: 'sound', stands: 'plain' }, { given: 'not-locked', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'spring-bolt.state', title: 'Spring bolt sound', question: 'Is the spring bolt sound?', part: 'spring-bolt', rows: [20], families: COIL,
    rule: { kind: 'seen', look: 'spring-bolt.state', answers: {
      good: { grade: 'sound', because: 'Straight, thread whole.', source: 'common-practice' },
      stretched: { grade: 'stand-down', because: 'It holds the whole preload beside the operator’s face.', source: 'common-practice' },
    } },
    gate: false, minutes: 2, cures: ['spring-bolt.renew'], cautions: ['spring-unload', 'stand-aside'],
    examples: [{ given: 'good', grade: 'sound', stands: 'plain' }, { given: 'stretched', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'crosshead.play', title: 'Crosshead play', question: 'How slack is the crosshead?', part: 'crosshead', rows: [21], families: COIL,
    rule: { kind: 'measured', value: 'crosshead.play', worse: 'more', steps: [
      { grade: 'watch', from: '0.010 in', source: 'common-practice', because: 'It begins to knock at the top.' },
      { grade: 'limited', from: '0.020 in', source: 'common-practice', because: 'It knocks at the top at every stroke and hammers itself looser.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 5, cures: ['crosshead.bush'], cautions: ['spring-unload'],
    examples: [{ given: '0.009 in', grade: 'sound', stands: 'just under' }, { given: '0.010 in', grade: 'watch', stands: 'at' }, { given: '0.011 in', grade: 'watch', stands: 'just over' }, { given: '0.019 in', grade: 'watch', stands: 'just under' }, { given: '0.020 in', grade: 'limited', stands: 'at' }, { given: '0.021 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'crosshead.crack', title: 'Crack in the crosshead', question: 'Is the crosshead whole?', part: 'crosshead', rows: [21], families: COIL,
    rule: { kind: 'seen', look: 'crosshead.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line counts as a crack until dye has shown otherwise.', source: 'common-practice' },
      present: { grade: 'stand-down', because: 'A cracked crosshead drops arms, spring and ram together.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['crosshead.renew'], cautions: ['spring-unload', 'cracked-casting'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'rod.thread', title: 'Rod thread engaged', question: 'Is at least one thread diameter engaged at each end of the rod?', part: 'connecting-rod', rows: [22], families: EVERY,
    rule: { kind: 'measured', value: 'stack.thread-engagement-share', worse: 'less', steps: [
      { grade: 'watch', from: '1.1', source: 'common-practice', because: 'One diameter is the least; little is left.', cures: [] },
      { grade: 'limited', from: '0.95', source: 'common-practice', because: 'Less than one diameter is engaged.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-bystanders', sentence: 'Nobody but the operator within ten feet while it runs.' }] },
      { grade: 'stand-down', from: '0.75', source: 'common-practice', because: 'The rod can pull out of its thread.' },
    ] },
    gate: false, minutes: 5, cures: ['rod.set-gap', 'rod.renew'], cautions: ['block-ram'],
    examples: [{ given: '1.0', grade: 'watch', stands: 'just under' }, { given: '1.1', grade: 'watch', stands: 'at' }, { given: '1.2', grade: 'sound', stands: 'just over' }, { given: '0.94', grade: 'limited', stands: 'just under' }, { given: '0.95', grade: 'limited', stands: 'at' }, { given: '0.96', grade: 'watch', stands: 'just over' }, { given: '0.74', grade: 'stand-down', stands: 'just under' }, { given: '0.75', grade: 'stand-down', stands: 'at' }, { given: '0.76', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'rod.thread-left', title: 'Rod thread left', question: 'Can the rod still be lengthened?', part: 'connecting-rod', rows: [3, 22], families: EVERY,
    rule: { kind: 'measured', value: 'stack.thread-left-share', worse: 'less', steps: [
      { grade: 'watch', from: '0.5', source: 'common-practice', because: 'With the stack right the rod stands near the middle of its thread; this one is nearly spent.', cures: [] },
    ] },
    gate: false, minutes: 3, cures: ['seat.fit-filler-plate', 'dies.new-lower'], cautions: [],
    examples: [{ given: '0.4', grade: 'watch', stands: 'just under' }, { given: '0.5', grade: 'watch', stands: 'at' }, { given: '0.6', grade: 'sound', stands: 'just over' }],
  },
  {
    id: 'rod.lock', title: 'Rod lock nuts', question: 'Are the rod’s lock nuts tight?', part: 'connecting-rod', rows: [22], families: EVERY,
    rule: { kind: 'seen', look: 'connecting-rod.lock', answers: {
      tight: { grade: 'sound', because: 'There and tight.', source: 'common-practice' },
      loose: { grade: 'limited', because: 'The gap changes by itself.', source: 'common-practice', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
      missing: { grade: 'limited', because: 'The gap changes overnight, and the rod can unscrew.', source: 'common-practice', limits: [{ kind: 'longest-run', value: { fixed: '15 min' }, sentence: 'Run no longer than {value}, then stop and feel the bearings.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
      'not-adjustable': { grade: 'sound', because: 'A rod of fixed length has none.', source: 'common-practice' },
    } },
    gate: false, minutes: 1, cures: ['rod.lock-nuts'], cautions: ['block-ram'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'loose', grade: 'limited', stands: 'plain' }, { given: 'missing', grade: 'limited', stands: 'plain' }, { given: 'not-adjustable', grade: 'sound', stands: 'plain' }],
  },
  {
    id: 'rod.straight', title: 'Rod sound', question: 'Is the rod straight and whole?', part: 'connecting-rod', rows: [22], families: EVERY,
    rule: { kind: 'seen', look: 'connecting-rod.straight', answers: {
      straight: { grade: 'sound', because: 'Straight and whole.', source: 'common-practice' },
      bent: { grade: 'limited', because: 'A bent rod works its pins at every turn.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
      cracked: { grade: 'stand-down', because: 'A rod that parts drops the ram and flails.', source: 'common-practice' },
    } },
    gate: false, minutes: 2, cures: ['rod.renew'], cautions: ['spring-unload'],
    examples: [{ given: 'straight', grade: 'sound', stands: 'plain' }, { given: 'bent', grade: 'limited', stands: 'plain' }, { given: 'cracked', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'rod.play', title: 'Play of the big end', question: 'How slack is the rod on the crank pin?', part: 'connecting-rod', rows: [22], families: EVERY,
    rule: { kind: 'measured', value: 'connecting-rod.play', worse: 'more', steps: [
      { grade: 'watch', from: '0.010 in', source: 'common-practice', because: '0.003 to 0.006 in is good.' },
      { grade: 'limited', from: '0.020 in', source: 'common-practice', because: 'It knocks at the top and at the bottom.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 5, cures: ['rod.bush'], cautions: ['spring-unload'],
    examples: [{ given: '0.009 in', grade: 'sound', stands: 'just under' }, { given: '0.010 in', grade: 'watch', stands: 'at' }, { given: '0.011 in', grade: 'watch', stands: 'just over' }, { given: '0.019 in', grade: 'watch', stands: 'just under' }, { given: '0.020 in', grade: 'limited', stands: 'at' }, { given: '0.021 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'crank.crack', title: 'Crack in plate or pin', question: 'Are crank plate and pin whole?', part: 'crank', rows: [23], families: EVERY,
    rule: { kind: 'seen', look: 'crank.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line counts as a crack until dye has shown otherwise.', source: 'common-practice', cures: ['frame.dye-test'] },
      present: { grade: 'stand-down', because: 'A cracked crank plate bursts, and a cracked pin lets the rod flail.', source: 'common-practice', cures: ['crank.renew-plate'] },
    } },
    gate: true, minutes: 3, cures: ['frame.dye-test', 'crank.renew-plate', 'crank.pin-bush'], cautions: ['cracked-casting', 'pinch'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'crank.pin-tight', title: 'Hold of the crank pin', question: 'Is the crank pin tight and locked?', part: 'crank', rows: [23], families: EVERY,
    rule: { kind: 'seen', look: 'crank.pin-tight', answers: {
      tight: { grade: 'sound', because: 'Tight and locked.', source: 'common-practice' },
      loose: { grade: 'stand-down', because: 'A loose pin works out and lets the rod flail.', source: 'common-practice' },
    } },
    gate: false, minutes: 2, cures: ['crank.pin-bush'], cautions: ['pinch'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'loose', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'crank.pin-play', title: 'Pin in the plate', question: 'Does the crank pin move in the plate?', part: 'crank', rows: [23], families: EVERY,
    rule: { kind: 'measured', value: 'crank.pin-play', worse: 'more', steps: [
      { grade: 'watch', from: '0.002 in', source: 'common-practice', because: 'A pin that is tight gives no movement at all.' },
      { grade: 'limited', from: '0.010 in', source: 'common-practice', because: 'It knocks at every turn, at top and bottom.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    ] },
    gate: false, minutes: 5, cures: ['crank.pin-bush'], cautions: ['pinch'],
    examples: [{ given: '0.0019 in', grade: 'sound', stands: 'just under' }, { given: '0.002 in', grade: 'watch', stands: 'at' }, { given: '0.0021 in', grade: 'watch', stands: 'just over' }, { given: '0.009 in', grade: 'watch', stands: 'just under' }, { given: '0.010 in', grade: 'limited', stands: 'at' }, { given: '0.011 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'crank.pin-round', title: 'Crank pin round', question: 'Is the crank pin round?', part: 'crank', rows: [23], families: EVERY,
    rule: { kind: 'measured', value: 'crank.pin-out-of-round', worse: 'more', steps: [
      { grade: 'watch', from: '0.002 in', source: 'common-practice', because: 'Round within 0.001 in is good.' },
      { grade: 'limited', from: '0.010 in', source: 'common-practice', because: 'No bush fits an oval pin.', limits: [{ kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 5, cures: ['crank.pin-bush'], cautions: ['pinch'],
    examples: [{ given: '0.0019 in', grade: 'sound', stands: 'just under' }, { given: '0.002 in', grade: 'watch', stands: 'at' }, { given: '0.0021 in', grade: 'watch', stands: 'just over' }, { given: '0.009 in', grade: 'watch', stands: 'just under' }, { given: '0.010 in', grade: 'limited', stands: 'at' }, { given: '0.011 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'bow.crack', title: 'Crack in a leaf', question: 'Is every leaf of the bow whole?', part: 'bow-spring', rows: [49], families: BOW,
    rule: { kind: 'seen', look: 'bow-spring.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line on a leaf counts as a crack.', source: 'common-practice' },
      present: { grade: 'stand-down', because: 'A cracked leaf flies off at head height.', source: 'common-practice' },
    } },
    gate: true, minutes: 4, cures: ['bow.replace-leaf'], cautions: ['spring-unload', 'stand-aside'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'bow.stress', title: 'Bending of the leaves', question: 'Are the leaves bent further than a leaf stands?', part: 'bow-spring', rows: [49], families: BOW,
    rule: { kind: 'measured', value: 'bow.stress-share', worse: 'more', steps: [
      { grade: 'watch', from: '100 %', source: 'bhandari-springs', because: 'Bent that far blow after blow, a leaf cracks one day, at the clip first: draw the bow in less, look at the leaves often, and keep a guard in front.' },
    ] },
    gate: false, minutes: 10, cures: [], cautions: ['spring-unload', 'stand-aside'],
    examples: [{ given: '99 %', grade: 'sound', stands: 'just under' }, { given: '100 %', grade: 'watch', stands: 'at' }, { given: '101 %', grade: 'watch', stands: 'just over' }],
  },
  {
    id: 'bow.clip', title: 'Clip of the bow', question: 'Is the clip tight?', part: 'bow-spring', rows: [49], families: BOW,
    rule: { kind: 'seen', look: 'bow-spring.clip', answers: {
      tight: { grade: 'sound', because: 'Tight.', source: 'common-practice' },
      slack: { grade: 'limited', because: 'Leaves that shift break at the clip, and the blow runs wild.', source: 'common-practice', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'guard-first', sentence: 'Fit the guard in front of the linkage before anybody else comes near.' }] },
    } },
    gate: false, minutes: 3, cures: ['bow.tighten-clip'], cautions: ['spring-unload', 'stand-aside'],
    examples: [{ given: 'tight', grade: 'sound', stands: 'plain' }, { given: 'slack', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'bow.straps', title: 'Straps to the ram', question: 'Are the straps sound?', part: 'bow-spring', rows: [49], families: BOW,
    rule: { kind: 'seen', look: 'bow-spring.straps', answers: {
      sound: { grade: 'sound', because: 'Sound.', source: 'common-practice' },
      worn: { grade: 'watch', because: 'A strap that frays is renewed before it lets go.', source: 'common-practice' },
      torn: { grade: 'stand-down', because: 'A strap that parts drops the ram and frees the bow.', source: 'common-practice' },
    } },
    gate: false, minutes: 3, cures: ['bow.renew-straps'], cautions: ['spring-unload', 'stand-aside', 'block-ram'],
    examples: [{ given: 'sound', grade: 'sound', stands: 'plain' }, { given: 'worn', grade: 'watch', stands: 'plain' }, { given: 'torn', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'bow.pivot-play', title: 'Play of eyes and clip pivot', question: 'How slack are the joints of the bow?', part: 'bow-spring', rows: [49], families: BOW,
    rule: { kind: 'measured', value: 'bow-spring.pivot-play', worse: 'more', steps: [
      { grade: 'watch', from: '1/64 in', source: 'common-practice', because: 'It rattles and hits late.' },
      { grade: 'limited', from: '1/16 in', source: 'common-practice', because: 'The bow throws the ram about.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 5, cures: ['bow.bush-eyes'], cautions: ['spring-unload'],
    examples: [{ given: '0.015 in', grade: 'sound', stands: 'just under' }, { given: '1/64 in', grade: 'watch', stands: 'at' }, { given: '0.016 in', grade: 'watch', stands: 'just over' }, { given: '0.062 in', grade: 'watch', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'helve.crack', title: 'Crack in the helve', question: 'Is the helve whole?', part: 'helve', rows: [50], families: HELVE,
    rule: { kind: 'seen', look: 'helve.crack', answers: {
      none: { grade: 'sound', because: 'Looked at clean, and nothing found.', source: 'common-practice' },
      suspected: { grade: 'stand-down', because: 'A doubtful line along the grain counts as a crack.', source: 'page-other-families' },
      present: { grade: 'stand-down', because: 'A cracked helve throws its head.', source: 'page-other-families' },
    } },
    gate: true, minutes: 4, cures: ['helve.renew'], cautions: ['stand-aside', 'top-heavy'],
    examples: [{ given: 'none', grade: 'sound', stands: 'plain' }, { given: 'suspected', grade: 'stand-down', stands: 'plain' }, { given: 'present', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'helve.head-bolts', title: 'Bolts of head and clamps', question: 'Are the bolts of head and clamps tight and not too old?', part: 'helve', rows: [50], families: HELVE,
    rule: { kind: 'seen', look: 'helve.head-bolts', answers: {
      'tight-known': { grade: 'sound', because: 'Tight, and their age is known.', source: 'common-practice' },
      'tight-unknown': { grade: 'watch', because: 'Head bolts go brittle with the blows, some within days of hard work: renew them and mark the date.', source: 'page-other-families' },
      loose: { grade: 'stand-down', because: 'A head on loose bolts comes off.', source: 'page-other-families' },
    } },
    gate: false, minutes: 3, cures: ['helve.renew-bolts'], cautions: ['stand-aside'],
    examples: [{ given: 'tight-known', grade: 'sound', stands: 'plain' }, { given: 'tight-unknown', grade: 'watch', stands: 'plain' }, { given: 'loose', grade: 'stand-down', stands: 'plain' }],
  },
  {
    id: 'helve.cushions', title: 'Cushions', question: 'Are the cushions springy?', part: 'helve', rows: [50], families: HELVE,
    rule: { kind: 'seen', look: 'helve.cushions', answers: {
      springy: { grade: 'sound', because: 'Springy.', source: 'common-practice' },
      hard: { grade: 'watch', because: 'Hard rubber passes the shock on to the pivot.', source: 'page-other-families' },
      missing: { grade: 'limited', because: 'Without its cushions the helve strikes iron.', source: 'common-practice', limits: [{ kind: 'greatest-tread', value: { fixed: '25 %' }, sentence: 'Tread no deeper than {value}.' }, { kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }] },
    } },
    gate: false, minutes: 2, cures: ['helve.renew-cushions'], cautions: [],
    examples: [{ given: 'springy', grade: 'sound', stands: 'plain' }, { given: 'hard', grade: 'watch', stands: 'plain' }, { given: 'missing', grade: 'limited', stands: 'plain' }],
  },
  {
    id: 'helve.cushion-set', title: 'Set of the cushions', question: 'How much height have the cushions lost?', part: 'helve', rows: [50], families: HELVE,
    rule: { kind: 'measured', value: 'helve.cushion-set', worse: 'more', steps: [
      { grade: 'watch', from: '10 %', source: 'common-practice', because: 'Cushion rubber takes a set.' },
      { grade: 'limited', from: '25 %', source: 'common-practice', because: 'The cushion no longer throws the helve; the blow is dull and the pivot takes it.', limits: [{ kind: 'greatest-tread', value: { fixed: '50 %' }, sentence: 'Tread no deeper than {value}.' }] },
    ] },
    gate: false, minutes: 5, cures: ['helve.renew-cushions'], cautions: [],
    examples: [{ given: '9 %', grade: 'sound', stands: 'just under' }, { given: '10 %', grade: 'watch', stands: 'at' }, { given: '11 %', grade: 'watch', stands: 'just over' }, { given: '24 %', grade: 'watch', stands: 'just under' }, { given: '25 %', grade: 'limited', stands: 'at' }, { given: '26 %', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'helve.pivot-play', title: 'Play at the pivot', question: 'How slack is the pivot?', part: 'helve', rows: [50], families: HELVE,
    rule: { kind: 'measured', value: 'helve.pivot-play', worse: 'more', steps: [
      { grade: 'watch', from: '1/64 in', source: 'common-practice', because: 'It begins to slap.' },
      { grade: 'limited', from: '1/16 in', source: 'common-practice', because: 'The head wanders over the die, and the slack hammers the trunnions.', limits: [{ kind: 'light-work-only', sentence: 'Light work only: small bars, hot, short heats, no heavy drawing.' }, { kind: 'no-hand-held-tools', sentence: 'No hand-held tools under the upper die.' }, { kind: 'oil-every', value: { fixed: '15 min' }, sentence: 'Oil every joint every {value} of running.' }] },
    ] },
    gate: false, minutes: 5, cures: ['helve.bush-pivot'], cautions: ['block-ram'],
    examples: [{ given: '0.015 in', grade: 'sound', stands: 'just under' }, { given: '1/64 in', grade: 'watch', stands: 'at' }, { given: '0.016 in', grade: 'watch', stands: 'just over' }, { given: '0.062 in', grade: 'watch', stands: 'just under' }, { given: '1/16 in', grade: 'limited', stands: 'at' }, { given: '0.063 in', grade: 'limited', stands: 'just over' }],
  },
  {
    id: 'helve.height-screws', title: 'Height screws', question: 'Do the height screws move?', part: 'helve', rows: [50], families: HELVE,
    rule: { kind: 'seen', look: 'helve.height-screws', answers: {
      free: { grade: 'sound', because: 'Free.', source: 'common-practice' },
      stuck: { grade: 'watch', because: 'The height cannot be set for other work.', source: 'page-other-families' },
      none: { grade: 'sound', because: 'Has none.', source: 'common-practice' },
    } },
    gate: false, minutes: 2, cures: ['helve.free-screws'], cautions: [],
    examples: [{ given: 'free', grade: 'sound', stands: 'plain' }, { given: 'stuck', grade: 'watch', stands: 'plain' }, { given: 'none', grade: 'sound', stands: 'plain' }],
  },
];
