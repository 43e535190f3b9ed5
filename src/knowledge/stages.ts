import type { Stage } from './job.ts';

/** The datum chain: each step needs the ones above it finished. */
export const STAGES: readonly Stage[] = [
  { number: 0, title: 'Safe to work on', because: 'No hand goes near a machine that cannot be cut off and locked, whose wiring can kill, or whose old facing may hold asbestos.', source: 'osha-1910-147' },
  { number: 1, title: 'Level and sound ground', because: 'Bearings are poured and guides are squared to the machine as it stands, so it must stand level first.', source: 'page-bearings' },
  { number: 2, title: 'Die seat and dovetails', because: 'The seat floor is the datum for ways, dies and gap; whether there is a sow block or a filler plate decides every height above it.', source: 'common-practice' },
  { number: 3, title: 'Cracks in frame and guide', because: 'Heat moves castings, so every crack is mended before any bearing is poured or any way is squared.', source: 'common-practice' },
  { number: 4, title: 'Ways and ram square', because: 'The ram must run square to the seat before anything hangs on it; dies are tapered only as a last resort.', source: 'page-guide' },
  { number: 5, title: 'Main shaft', because: 'The bearing is made to the shaft, so the shaft is made round first; undersize does no harm.', source: 'page-bearings' },
  { number: 6, title: 'Main bearings', because: 'Poured and shimmed square to the guides, they set shaft, end float and everything that runs on it.', source: 'page-bearings' },
  { number: 7, title: 'Clutch pulley bushing', because: 'The pulley must run true on a true shaft before a facing can bear evenly on it.', source: 'page-clutch' },
  { number: 8, title: 'Clutch, yoke and return', because: 'A facing fitted to a loose pulley or a wandering shaft grabs again.', source: 'page-clutch' },
  { number: 9, title: 'Crank pin, rod and crosshead', because: 'The joints above set where the linkage hangs.', source: 'common-practice' },
  { number: 10, title: 'Linkage joints, then what springs', because: 'What springs, be it coil, leaves or cushions, can only be set on joints without slack.', source: 'common-practice' },
  { number: 11, title: 'Ram into its guide', because: 'The guide is shimmed when ways and ram are true and clean, and the ram squared to the lower seat.', source: 'common-practice' },
  { number: 12, title: 'Dies and keys', because: 'Dies are keyed and ground parallel once seat and ram are square to one another.', source: 'common-practice' },
  { number: 13, title: 'Settings', because: 'Settings are made on a sound machine, one at a time, in the order in which each changes the next.', source: 'common-practice' },
  { number: 14, title: 'Treadle, then brake', because: 'The brake comes after clutch and treadle, because it hides a clutch that drags.', source: 'common-practice' },
  { number: 15, title: 'Motor, belt, guards and bolts', because: 'Nothing runs before it stands guarded, and a guard goes on when no hand has to reach in behind it any more, so after linkage, clutch and brake; bolts settle only after an hour or two of running.', source: 'common-practice' },
  { number: 16, title: 'Trial', because: 'Wood, then hot steel, then tighten again, then report: a repair counts when the machine has shown it.', source: 'common-practice' },
];
