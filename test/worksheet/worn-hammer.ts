import { picture, type Picture } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';

/** A worn hammer of an invented yard: much is tired, one thing stands it down, and every matter of safety was looked at. */
export function wornHammer(): LogOf {
  return gatesSound(new LogOf('50 lb', 'coil-and-toggle'))
    .look('keys.secure', 'loose')
    .made('upper-die.height', '3 in').made('lower-die.height', '3 in')
    .read('upper-die.height', '2 3/4 in').read('lower-die.height', '1 7/8 in', 'above-seat-base').read('seat.sunk', '1/4 in')
    .read('ram-guide.linkage-clearance', '1/8 in').read('upper-die.rest-gap', '3/4 in')
    .read('ram-guide.play-fore-aft@top', '0.045 in').read('ram-guide.play-fore-aft@bottom', '0.040 in')
    .read('main-shaft.diameter', '2 in').read('main-bearings.clearance@front', '0.010 in').read('main-bearings.clearance@rear', '0.004 in')
    .read('clutch-pulley.play', '35 thou').read('clutch-facing.thickness', '3/32 in').read('treadle.free-play', '1/32 in')
    .look('coil-spring.clash', 'touch').look('guide-shims.state', 'climbing').look('treadle.control', 'jumpy').look('belt.state', 'cracked')
    .look('toggle-pins.state', 'dry').look('whole-machine.idle', 'decades').look('guards.belt', 'open').look('base.bearing', 'corners');
}

/** Every gate that a look settles, looked at and found good. */
export function gatesSound(log: LogOf): LogOf {
  const family = 'coil-and-toggle';
  for (const { gate, families, rule, onlyWhere } of knowledge.criteria) {
    if (!gate || !families.includes(family) || rule.kind !== 'seen' || onlyWhere !== undefined) continue;
    const good = Object.entries(rule.answers).find(([, graded]) => graded.grade === 'sound');
    if (good === undefined) throw new Error(`no answer is good for ${rule.look}`);
    log.look(rule.look, good[0]);
  }
  return log.look('brake.fitted', 'none');
}

export function pictureOf(log: LogOf, asOf = '2027-01-01T00:00:00Z'): Picture {
  const found = picture(log.entries, knowledge, asOf, 1);
  if (found === undefined) throw new Error('the case enrols no hammer');
  return found;
}
