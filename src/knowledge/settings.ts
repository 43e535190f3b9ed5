import type { LinkageFamily } from '../hammer/index.ts';
import { BOW, COIL, EVERY, HELVE } from './families.ts';
import type { ShopText } from './criterion.ts';

/** One setting in the order in which each changes the next. Figures of the very hammer come from its values. */
export interface SettingRule {
  readonly id: string;
  readonly title: string;
  readonly families: readonly LinkageFamily[];
  /** Only where this look has one of these answers. */
  readonly onlyWhere?: { readonly look: string; readonly answers: readonly string[] };
  /** Value or look that shows it as found. */
  readonly shownBy: string;
  readonly because: string;
  /** What is done with the power locked off and the ram blocked, from the top of the sheet down. */
  readonly how: string;
  /** What only the running hammer shows: done last of all, with everything else set and the prop out. */
  readonly running?: string;
  /** The rule that judges it by another value than the one that shows it: a rate is judged against its class. */
  readonly judgedBy?: string;
  /** Said instead where a slack belt or a wheel is the clutch. */
  readonly withoutClutch?: { readonly because: string; readonly how?: string };
  /** Target where no value of this hammer gives one. */
  readonly from?: ShopText;
  readonly to?: ShopText;
  /** How near is near enough, either way. */
  readonly tolerance?: ShopText;
  readonly source: string;
}

/** Hold-down, speed, die heights, gap, spring, throw, clutch, brake: one change at a time, written down, with a recording. */
export const SETTINGS: readonly SettingRule[] = [
  { id: 'hold-down', title: 'Hold-down', families: EVERY, shownBy: 'base.rock', to: '0.005 in', because: 'A hammer that is loose on its bed double-beats whatever else is set.', how: 'Level both ways, nuts tight in turn, then a feeler at each corner. Again after one hour of running and after ten, locked off each time.', source: 'page-foundation' },
  { id: 'speed', title: 'Speed', families: EVERY, shownBy: 'running.rate', judgedBy: 'drive.rate', tolerance: '5 rpm', because: 'Load on the linkage grows with the square of the speed, and everything else is set for one speed.', how: 'Rule or caliper over the pulleys, where the belt runs: they set the speed. Never above the maker’s; where it is not known, start 15 to 20 % under the usual and raise it only if the blow stays weak.', running: 'Count the blows for 30 seconds on wood. The count wants full tread: as long as the limits card allows less, tread no deeper than it says, and the count waits.', source: 'common-practice' },
  { id: 'upper-die', title: 'Upper die height', families: EVERY, shownBy: 'stack.upper-net', tolerance: '0.005 in', because: 'The height of the stack decides where the linkage hangs; the gap is set on finished heights.', how: 'Ram blocked: from the dovetail floor to the face at all four corners.', source: 'common-practice' },
  { id: 'lower-die', title: 'Lower die height above the seat’s true base', families: EVERY, shownBy: 'stack.lower-net', tolerance: '0.005 in', because: 'A sunk seat is made good by a plate, not by the rod.', how: 'From the seat’s true base to the face at all four corners, filler plate in.', source: 'common-practice' },
  { id: 'cushions', title: 'Cushion height, free, each', families: HELVE, shownBy: 'helve.cushion-height', tolerance: '1/8 in', because: 'The cushions throw the head; height and gap are set on cushions that stay.', how: 'Rubber out of the machine, standing free: rule from face to face. Upper and lower alike; put back with the same squeeze on both.', source: 'page-other-families' },
  { id: 'height-screws', title: 'Height screws', families: HELVE, shownBy: 'helve.height-screws', because: 'They set how high the head stands over the work, so that they turn before the gap is set.', how: 'Beam held up on a prop. Oil them, then the same part of a turn on each; lock nuts tight, and the gap read again.', source: 'page-other-families' },
  { id: 'gap', title: 'Gap between the dies at bottom dead centre', families: EVERY, shownBy: 'upper-die.rest-gap', tolerance: '1/16 in', because: 'The gap is set on a speed and die heights that are right, never to cure a weak blow.', how: 'Power locked off, crank turned by hand to bottom dead centre. Lock nuts tight, at least one diameter of thread engaged at both ends.', source: 'common-practice' },
  { id: 'spring-set', title: 'Spring as set, ram hanging', families: COIL, shownBy: 'coil-spring.installed-length', tolerance: '1/16 in', because: 'It is what the spanner sets; how short the spring runs follows from it.', how: 'Ram hanging at rest: rule between the seats of the spring, at both sides. Nut half a turn at a time, lock nut tight.', source: 'common-practice' },
  { id: 'spring', title: 'Spring', families: COIL, shownBy: 'coil-spring.shortest-length', because: 'Set so that the arms stand close to level; a spring that goes solid breaks, or breaks what holds it.', how: 'Half a turn to one turn at a time, standing aside, as much as the film asks for. Lock the nut.', running: 'Guard in front, a rule fixed beside the spring: film it from the side and read the shortest length. Lock off and block the ram before the nut is touched.', source: 'common-practice' },
  { id: 'arms', title: 'Gap between arm and spring carrier', families: COIL, shownBy: 'toggle-arms.carrier-gap', from: '1/2 in', because: 'It shows how tight the spring stands.', how: 'Ram hanging at rest: measure at both arms; they stand alike.', source: 'page-linkage' },
  { id: 'straps', title: 'Straps from bow to ram, each', families: BOW, shownBy: 'bow-spring.strap-length', tolerance: '1/32 in', because: 'They draw the bow in, and a ram on unequal straps hangs askew.', how: 'Ram hanging: from the middle of the eye to the middle of the pin, left and right alike.', source: 'common-practice' },
  { id: 'bow', title: 'Flex of the bow in full stroke', families: BOW, shownBy: 'bow-spring.deflection', because: 'How far it is drawn in sets how far its leaves are bent at every stroke.', how: 'Flexes too far: both straps let out alike, a little at a time.', running: 'Guard in front: film it from the side with a rule behind and read the greatest change of its height. Lock off and block the ram before a strap is touched.', source: 'bhandari-springs' },
  { id: 'throw', title: 'Throw', families: EVERY, shownBy: 'crank.throw', tolerance: '1/32 in', because: 'The throw is changed last of the motion, and only when every setting above is right and the blow is still wrong.', how: 'Centre of shaft to centre of pin. Mark the pin’s place before it is moved, and tighten and lock it.', source: 'common-practice' },
  { id: 'clutch', title: 'Play of the clutch pulley', families: EVERY, shownBy: 'clutch-pulley.play', from: '10 thou', to: '15 thou', because: 'Too tight runs on, too loose grabs.', how: 'Dial indicator on the rim, bar under the hub. Then back the adjuster off a little at a time, with a drop or two of oil.', running: 'Soft on wood: it just slips as it takes up, and lets go at once. Lock off and block the ram before the adjuster is touched.', source: 'owners-practice' },
  { id: 'idler', title: 'Belt clear of the pulley, treadle up', families: EVERY, onlyWhere: { look: 'belt-idler.fitted', answers: ['yes'] }, shownBy: 'belt-idler.clear', because: 'The slack belt is the clutch: it hangs clear with the treadle up, and grips fully before the pedal bottoms.', how: 'Belt clean and dry, no oil. Treadle up, power locked off: the pulley turns free by hand with the belt clear of it. Treadle down: the idler grips well before the pedal meets the floor.', source: 'page-drive' },
  { id: 'treadle', title: 'Free play at the pedal', families: EVERY, shownBy: 'treadle.free-play', from: '1/4 in', to: '1/2 in', because: 'The pedal is set to the finished clutch.', how: 'Two fingers until the clutch begins to take. It comes fully up by itself.', withoutClutch: { because: 'The pedal is set to the belt, or the wheel, that is the clutch.', how: 'Two fingers until the belt, or the wheel, begins to take. It comes fully up by itself.' }, source: 'common-practice' },
  { id: 'brake', title: 'Brake', families: EVERY, shownBy: 'brake.holds', because: 'The brake comes last, because it hides a clutch that drags.', how: 'Power locked off and the prop in: band even all round, and fully off with the treadle down. Prop out again before any power.', running: 'Wood between the dies and no prop: a hammer never runs with the prop in. Let go ten times, from no deeper tread than the limits card allows, and see each time where the ram stops and that it holds there. Then lock off, put the prop in, and only then set the band.', withoutClutch: { because: 'The brake comes last, because it hides a belt, or a wheel, that drags.' }, source: 'page-brake' },
];

/** Usual gap at bottom dead centre by ram class, in inches: about the stock, or a little more. */
export const USUAL_GAPS: readonly { readonly ramPounds: number; readonly inches: readonly [least: number, most: number]; readonly source: string }[] = [
  { ramPounds: 25, inches: [0.75, 1], source: 'common-practice' },
  { ramPounds: 50, inches: [0.75, 1], source: 'common-practice' },
  { ramPounds: 100, inches: [1, 1.5], source: 'common-practice' },
];
