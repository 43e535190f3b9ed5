import { LogOf } from '../cases/log-of.ts';

/** Invented hammers for drawings, built by hand. Every part that can be drawn is asked for by at least one of them. */

/** A 50 lb hammer in inches: sunk seat, short dies, loose keys, worn pins, tired spring. */
export const inchHammer = (): LogOf => {
  const log = new LogOf('50 lb', 'coil-and-toggle')
    .made('upper-die.height', '3 in').made('lower-die.height', '3 in').made('upper-die.width', '2 1/4 in').made('upper-die.length', '4 1/2 in')
    .read('upper-die.height', '2 1/2 in').read('lower-die.height', '2 in', 'above-seat-base').read('seat.sunk', '1/4 in')
    .read('lower-die.width', '2 in').read('lower-die.length', '4 1/2 in').read('lower-die.face-width', '2 1/8 in')
    .read('seat.width', '3 in').read('seat.length', '4 3/4 in').read('seat.depth', '3/4 in')
    .read('dovetail.flank-angle@lower', '10 deg').read('dovetail.flank-angle@upper', '10 deg').read('keys.thickness@lower', '5/16 in').read('keys.thickness@upper', '3/8 in').read('keys.taper@lower', '1/8 in')
    .read('ram-guide.linkage-clearance', '0 in').read('upper-die.rest-gap', '1 in').read('crank.throw', '2 in').read('ram.mass', '52 lb')
    .read('crank.pin-diameter', '1.480 in').read('crank.pin-shank', '1.496 in').read('crank.pin-play', '4 thou').read('crank.pin-length', '2 1/16 in').read('crank.pin-collar', '2 in').read('crank.pin-collar-thickness', '3/8 in').read('crank.pin-thread', '1.245 in').read('crank.pin-thread-pitch', '0.1429 in').read('crank.plate-thickness', '1 1/4 in')
    .read('connecting-rod.eye-width', '2 in').read('crosshead.pin-diameter', '1.240 in').read('crosshead.pin-length', '3 in').read('crosshead.eye-bore', '1.370 in').read('treadle.pivot-diameter', '0.740 in').read('treadle.eye-width', '1 1/4 in').read('treadle.eye-outside', '1 1/2 in').read('main-shaft.end-float', '30 thou').read('main-shaft.thrust-thickness', '0.125 in').read('main-shaft.thrust-outside', '3 1/8 in').read('crosshead.eye-width', '1 3/4 in').read('crosshead.eye-outside', '1 7/8 in').read('clutch-pulley.hub-length', '3 1/2 in').read('clutch-pulley.hub-outside', '3 in')
    .read('motor.shaft-diameter', '0.875 in').read('guide-shims.width', '1 1/4 in').read('guide-shims.holes', '3').read('guide-shims.hole-diameter', '9/16 in').read('guide-shims.hole-pitch', '2 1/4 in')
    .read('hold-down-bolts.diameter', '5/8 in').read('hold-down-bolts.spacing@along', '30 in').read('hold-down-bolts.spacing@across', '15 in').read('ram.dovetail-depth', '5/8 in').read('keys.taper@upper', '1/8 in').read('connecting-rod.play', '40 thou').read('main-shaft.diameter@rear', '2.000 in').read('clutch-pulley.play', '45 thou')
    .read('coil-spring.wire', '5/8 in').read('coil-spring.inside-diameter', '1 3/4 in').read('coil-spring.coils', '7').made('coil-spring.free-length', '6 in').read('coil-spring.free-length', '5 5/8 in').read('coil-spring.installed-length', '5 1/4 in').read('coil-spring.shortest-length', '4 5/8 in')
    .read('ram-guide.play-side@top', '45 thou').read('ram-guide.play-side@bottom', '40 thou').read('ram-guide.play-fore-aft@top', '40 thou').read('ram-guide.play-fore-aft@bottom', '36 thou').read('guide-shims.thickness@left', '62 thou').read('guide-shims.thickness@right', '58 thou').read('ram-guide.height', '6 in')
    .read('motor.speed', '1740 rpm').read('motor.power', '2 hp').read('motor.pulley', '2 in').read('pulley.diameter', '14 in').read('pulley.face', '3 1/2 in').read('belt.width', '2 1/2 in').read('belt.thickness', '3/16 in').read('belt.centre-distance', '48 in')
    .read('frame.base-length', '36 in').read('frame.base-width', '20 in')
    .look('keys.secure', 'loose').look('coil-spring.crack', 'present').look('coil-spring.ends', 'closed-and-ground').look('ram-guide.kind', 'capped').look('belt.state', 'cracked').look('belt.material', 'single-leather').look('foundation.kind', 'soil').look('lower-die.face', 'cracked').look('drive-line.kind', 'motor-flat-belt').look('crank.thread-hand', 'right').look('keys.taper-flank@upper', 'die').look('keys.side@upper', 'left').look('keys.taper-flank@lower', 'seat');
  for (const [joint, size] of [['upper-left', '0.742 in'], ['upper-right', '0.740 in'], ['lower-left', '0.738 in'], ['lower-right', '0.741 in']] as const) log.read(`toggle-pins.diameter@${joint}`, size).read(`toggle-pins.play@${joint}`, '40 thou').made(`toggle-pins.diameter@${joint}`, '3/4 in').read(`toggle-pins.length@${joint}`, joint.startsWith('upper') ? '3 1/4 in' : '2 3/4 in').read(`toggle-pins.eye-width@${joint}`, '7/8 in').read(`toggle-pins.eye-outside@${joint}`, '1 3/8 in');
  return log;
};

/** A 30 kg hammer in millimetres: both dies to be made, little else measured, so that much stays not known. */
export const metricHammer = (): LogOf =>
  new LogOf('30 kg', 'coil-and-toggle', '2026-06-02')
    .made('upper-die.height', '80 mm').made('lower-die.height', '80 mm').read('upper-die.height', '70 mm').read('lower-die.height', '55 mm', 'above-seat-base')
    .read('upper-die.width', '60 mm').read('upper-die.length', '120 mm').read('lower-die.width', '52 mm').read('lower-die.length', '120 mm').read('seat.width', '82 mm').read('seat.length', '125 mm').read('seat.sunk', '5 mm')
    .read('ram-guide.linkage-clearance', '2 mm').look('upper-die.face', 'cracked').look('lower-die.face', 'cracked').look('keys.secure', 'loose')
    .read('toggle-pins.diameter@upper-left', '19.4 mm').read('toggle-pins.play@upper-left', '1.2 mm');

/** A 40 kg bow hammer in millimetres: broken main leaf, worn eyes, a countershaft whose driver is too fast. */
export const bowHammer = (): LogOf => {
  const log = new LogOf('40 kg', 'bow-spring', '2026-06-02')
    .read('bow-spring.leaf-thickness', '8 mm').read('bow-spring.leaf-width', '60 mm').read('bow-spring.span', '720 mm').read('bow-spring.camber', '140 mm').read('bow-spring.deflection', '35 mm').read('bow-spring.new-leaf-length', '785 mm').read('bow-spring.centre-hole', '11 mm')
    .read('bow-spring.pin-diameter@middle', '24.9 mm').read('bow-spring.eye-width@middle', '64 mm').read('bow-spring.eye-outside@middle', '52 mm').look('bow-spring.new-leaf', 'main')
    .read('bow-spring.pin-length@middle', '130 mm').read('bow-spring.strap-length@left', '225 mm').read('bow-spring.strap-length@right', '226 mm').read('bow-spring.strap-width', '50 mm').read('bow-spring.strap-thickness', '10 mm').read('bow-spring.strap-hole', '20 mm')
    .read('motor.speed', '1450 rpm').read('motor.pulley', '90 mm').read('pulley.diameter', '450 mm').read('pulley.face', '110 mm').read('belt.width', '80 mm').read('belt.thickness', '5 mm').read('drive-line.countershaft-diameter', '40 mm').read('drive-line.motor-belt-width', '60 mm').look('drive-line.kind', 'countershaft');
  for (const end of ['left', 'right']) log.read(`bow-spring.pin-diameter@${end}`, '18.9 mm').read(`bow-spring.eye-bore@${end}`, '24.6 mm').read(`bow-spring.eye-width@${end}`, '60 mm').read(`bow-spring.pin-length@${end}`, end === 'left' ? '112 mm' : '118 mm');
  return log;
};

/** A 150 lb helve in inches: worn trunnions and a crank pin whose thread nobody measured. */
export const helveHammer = (): LogOf => {
  const log = new LogOf('150 lb', 'helve').read('crank.pin-diameter', '1.735 in').read('crank.pin-shank', '1.742 in').read('crank.plate-thickness', '1 1/2 in').read('connecting-rod.eye-width', '2 1/2 in').read('connecting-rod.eye-outside', '2 7/8 in');
  for (const end of ['left', 'right']) log.read(`helve.pivot-diameter@${end}`, '1.968 in').read(`helve.pivot-width@${end}`, '3 in').read(`helve.pivot-outside@${end}`, '3 3/4 in').read(`helve.pin-length@${end}`, '6 1/2 in');
  for (const end of ['upper', 'lower']) log.read(`helve.cushion-height@${end}`, end === 'upper' ? '2 5/8 in' : '2 1/2 in').read(`helve.cushion-set@${end}`, end === 'upper' ? '12 %' : '17 %').read(`helve.cushion-width@${end}`, '5 in').read(`helve.cushion-span@${end}`, '6 in');
  return log;
};

/** A slow motor on a large hammer pulley: its own pulley has rim, web and hub. */
export const slowHammer = (): LogOf =>
  new LogOf('100 lb', 'coil-and-toggle').read('motor.speed', '480 rpm').read('pulley.diameter', '22 in').read('belt.width', '4 in').made('running.rate', '260 blows/min').read('motor.shaft-diameter', '1.625 in').read('motor.shaft-length', '4 5/8 in').read('motor.key-width', '3/8 in').look('drive-line.kind', 'motor-flat-belt');
