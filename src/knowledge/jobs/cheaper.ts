import type { CheaperBar } from '../job.ts';

/** A cheaper way to do a job, with what it costs in the long run, by the job. It stands by itself: no order follows from it, and the first page is sent without. */
export const CHEAPER: Readonly<Record<string, string>> = {
  'base.level': 'Hardwood wedges do for a trial; they settle within weeks.',
  'base.grout': 'Rubber belting under the foot evens it out for a small hammer.',
  'base.mend-ear': 'A clamp bar over the flange beside the ear holds the corner for light work.',
  'foundation.block': 'Oak beams bolted under the base carry a 50 lb hammer for decades in some shops.',
  'foundation.part-from-slab': 'Belting under the base and shorter working hours.',
  'frame.dye-test': 'Chalk and thin oil show a coarse crack and miss a fine one.',
  'frame.stitch': 'Brazing costs less and heats the casting; a bolted plate costs least and only holds.',
  'ways.true': 'Grinding a taper on the upper die hides it; it must be done again with every die.',
  'anvil.add-mass': 'Smaller bars: a light anvil still works, and wastes part of the blow.',
  'seat.file': 'A bedded steel shim until there is time; it curls within hours of heavy work.',
  'seat.mill': 'A guided plate jig with an abrasive disc, 8 to 12 hours of careful work: it trues by thousandths, and a pocket keeps its plate.',
  'seat.mend-ear': 'Where the die still sits solid, keep it, re-key every session and work light.',
  'dovetail.machine-flanks': 'Filing by hand with blue: slow and good.',
  'dies.dress': 'A file and an angle grinder at the machine, with a straightedge.',
  'dies.new-upper': 'Heavy rail or axle steel, unhardened, dressed twice a year.',
  'dies.new-lower': 'Heavy rail or axle steel, unhardened, dressed twice a year.',
  'bearings.pour': 'Bronze inserts where the shells allow. A shop that pours both saves the hours, and not the money.',
  'clutch-pulley.bush': 'A shim sleeve in the old bush lasts a season.',
  'clutch.reline': 'Packing behind the old facing where it is thick enough.',
  'brake.fit': 'None: no tools under the die is the cheaper way.',
  'ram.build-up': 'Scrape off the step and shim; good for light work.',
  'guide.shim': 'A strip of hard plastic behind the shims quietens a worn guide for a season.',
  'pins.renew': 'Oversize pins in reamed holes, without bushes.',
  'spring.renew': 'A washer behind the old spring brings its preload back for a while; it is nearer to solid then.',
  'helve.renew': 'Iron bands over the crack only hide it.',
  'drive.set-speed': 'A frequency drive where the motor is three-phase.',
  'converter.enlarge': 'A single-phase motor of the same power.',
};

/** Where a cheaper way is no way, by the job: the readings say so, or it would spoil what another open job has just made good. */
export const CHEAPER_NOT: Readonly<Record<string, CheaperBar>> = {
  // A washer behind a spring takes as much from the travel that is left: coils that come close, or touch, have none to give.
  'spring.renew': { findings: [{ criterion: 'spring.travel-left', from: 'watch' }, { criterion: 'spring.clash', from: 'limited' }, { criterion: 'spring.crack', from: 'stand-down' }] },
  'dies.dress': { jobs: ['dies.grind-pair'] },
  'drive.set-speed': { looks: [{ look: 'motor.phase', answers: ['single', 'direct-current'] }] },
  'clutch.reline': { findings: [{ criterion: 'clutch.facing-thickness', from: 'limited' }] },
};
