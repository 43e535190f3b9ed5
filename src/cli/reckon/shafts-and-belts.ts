import {
  beltSpeed, capShims, CLEARANCE_RULES, clearanceByRule, crankSlider, drivenSpeed, driveForGap, driverForSpeed, fitOf, frictionPower, KEY_TAPERS, keySize, leatherBeltPower, leatherBeltWidth, LEATHER_RULES, openBeltLength,
  openBeltWrap, raimondiBoyd, sommerfeldNumber, strokeOf, taperAngle, taperHolds, toggleRatioByLengths, wedgeForceRatio, type HoleCode, type LeatherRuleId, type ShaftCode,
} from '../../methods/elements/index.ts';
import { answer, figure, outside, saying, warnIf, type Reckoning } from './reckoning.ts';

const TURN = 2 * Math.PI;
const SLIP = { name: 'slip', kind: 'ratio', words: 'slip of the belt', usual: '3 %' } as const;

const JOURNAL: Reckoning = {
  name: 'journal', title: 'Main bearing: clearance against the rules, and the shims to take out',
  formula: 'clearance = rule × shaft diameter; shims out at each side = clearance now − clearance wanted',
  source: CLEARANCE_RULES.map((rule) => `${rule.id}: ${rule.words} (${rule.source})`).join('; '), validity: 'split bearings of babbitt or bronze, both sides shimmed alike; the rules do not agree',
  inputs: [
    { name: 'diameter', kind: 'length', words: 'diameter of the shaft' }, { name: 'clearance', kind: 'length', words: 'clearance now, on the diameter' },
    { name: 'shims', kind: 'length', words: 'thickness of the pack at each side' }, { name: 'wanted', kind: 'ratio', words: 'clearance wanted over diameter', usual: '0.0015' },
    { name: 'rule', kind: 'choice', words: 'published rule to hold it against', choices: CLEARANCE_RULES.map((rule) => rule.id), usual: 'general' },
  ],
  run: (given) => {
    const diameter = given.of('diameter');
    const rule = CLEARANCE_RULES.find((one) => one.id === given.choice('rule')) ?? CLEARANCE_RULES[0]!;
    const limits = clearanceByRule(rule, diameter);
    const wanted = given.of('wanted') * diameter;
    const shims = capShims(given.of('clearance'), wanted, given.of('shims'));
    const share = given.of('clearance') / diameter;
    return answer(
      [
        figure('clearance over diameter', 'taper', share), figure('least when set, by the rule', 'length', limits.least), figure('most when set, by the rule', 'length', limits.most),
        ...(rule.mostInService === undefined ? [] : [figure('most in service, by the rule', 'length', rule.mostInService * diameter)]), figure('clearance wanted', 'length', wanted),
        ...(shims.state === 'tighter-than-wanted' ? [figure('shims to put in at each side', 'length', -shims.removeEachSide)] : [figure('shims to take out at each side', 'length', shims.removeEachSide), figure('left at each side', 'length', shims.leftEachSide)]),
      ],
      warnIf(shims.state === 'not-enough-left', 'there are not enough shims left: the bearing must be poured again'),
      warnIf(rule.mostInService !== undefined && share > rule.mostInService, 'beyond what the rule allows in service'),
    );
  },
};

const FILM: Reckoning = {
  name: 'oil-film', title: 'Oil film of a plain bearing', formula: 'S = (r/c)² µ N / P, then eccentricity, friction and flow from the table',
  source: 'Raimondi and Boyd, ASLE Transactions 1 (1958); Shigley, Mechanical Engineering Design, ch. 12', validity: 'full bearing, steady load, length over diameter 1/4 to 3, no grooves in the loaded half',
  inputs: [
    { name: 'diameter', kind: 'length', words: 'diameter of the shaft' }, { name: 'length', kind: 'length', words: 'length of the bearing' }, { name: 'clearance', kind: 'length', words: 'clearance on the diameter' },
    { name: 'speed', kind: 'rotation', words: 'speed of the shaft' }, { name: 'load', kind: 'force', words: 'load on the bearing' }, { name: 'viscosity', kind: 'viscosity', words: 'viscosity of the oil as warm as it runs', usual: '0.06 Pa·s' },
  ],
  run: (given) => {
    const radius = given.of('diameter') / 2;
    const journal = { radius, radialClearance: given.of('clearance') / 2, length: given.of('length'), viscosity: given.of('viscosity'), turnsPerSecond: given.of('speed'), load: given.of('load') };
    const sommerfeld = sommerfeldNumber(journal);
    const film = raimondiBoyd(sommerfeld, journal.length / (2 * radius));
    if (film.state !== 'known') return outside(`the ${film.what} lies outside the table; ${film.from.toPrecision(3)} to ${film.to.toPrecision(3)} is allowed: ${(film.what === 'Sommerfeld number' ? sommerfeld : journal.length / (2 * radius)).toPrecision(3)}`);
    return answer([
      figure('Sommerfeld number', 'ratio', sommerfeld), figure('share of the clearance used up', 'ratio', film.eccentricity), figure('least film', 'length', film.leastFilmRatio * journal.radialClearance), figure('friction power', 'power', frictionPower(journal, film.friction)),
    ]);
  },
};

const BELT: Reckoning = {
  name: 'belt', title: 'Flat leather belt: speed, wrap and power, or the width for a power',
  formula: 'v = π D N; P = w v × pull per width × (1 − e^(−µθ))/(1 − e^(−µπ)), µ 0.25', source: LEATHER_RULES.map((rule) => `${rule.id}: ${rule.words}`).join('; '), validity: 'open leather belts up to about 25 m/s; the rules disagree by a quarter and more',
  inputs: [
    { name: 'small', kind: 'length', words: 'smaller pulley' }, { name: 'large', kind: 'length', words: 'larger pulley' }, { name: 'centres', kind: 'length', words: 'centre distance' },
    { name: 'speed', kind: 'rotation', words: 'speed of the smaller pulley' }, { name: 'width', kind: 'length', words: 'width of the belt' }, { name: 'power', kind: 'power', words: 'power to carry', usual: '2 hp' },
    { name: 'rule', kind: 'choice', words: 'rule of thumb', choices: LEATHER_RULES.map((rule) => rule.id), usual: 'single-1000' },
  ],
  run: (given) => {
    const rule = given.choice('rule') as LeatherRuleId;
    const speed = beltSpeed(given.of('small'), given.of('speed') * TURN);
    const wrap = openBeltWrap(given.of('small'), given.of('large'), given.of('centres'));
    const carries = leatherBeltPower(given.of('width'), speed, wrap, rule);
    return answer(
      [figure('belt speed', 'velocity', speed), figure('wrap on the smaller pulley', 'angle', wrap), figure('power that it carries', 'power', carries), figure('width for the power', 'length', leatherBeltWidth(given.of('power'), speed, wrap, rule)), figure('length of the belt', 'length', openBeltLength(given.of('small'), given.of('large'), given.of('centres')))],
      warnIf(carries < given.of('power'), 'the belt carries less than is asked of it: it will slip'),
      warnIf(speed > 25, `the belt runs faster than the rules are for; up to 25 m/s is allowed: ${speed.toFixed(1)} m/s`),
    );
  },
};

const BELT_LENGTH: Reckoning = {
  name: 'belt-length', title: 'Length of an open belt', formula: 'L = 2 C cos α + D (π/2 + α) + d (π/2 − α), sin α = (D − d)/(2 C)', source: 'geometry; Khurmi and Gupta, Theory of Machines, ch. 11', validity: 'exact for a thin open belt',
  inputs: [{ name: 'small', kind: 'length', words: 'smaller pulley' }, { name: 'large', kind: 'length', words: 'larger pulley' }, { name: 'centres', kind: 'length', words: 'centre distance' }],
  run: (given) => answer([figure('length', 'length', openBeltLength(given.of('small'), given.of('large'), given.of('centres'))), figure('wrap on the smaller pulley', 'angle', openBeltWrap(given.of('small'), given.of('large'), given.of('centres')))]),
};

const PULLEY: Reckoning = {
  name: 'pulley', title: 'Motor pulley for a wanted rate, and the rate of a pulley', formula: 'd = N_hammer D / (N_motor (1 − s)); N_hammer = N_motor d/D (1 − s)', source: 'Khurmi and Gupta, Theory of Machines, ch. 11', validity: 'one belt; slip of 2 to 4 % is common practice, no source',
  inputs: [
    { name: 'motor-speed', kind: 'rotation', words: 'speed of the motor' }, { name: 'driven', kind: 'length', words: 'pulley on the hammer' }, { name: 'wanted', kind: 'rotation', words: 'rate wanted' },
    { name: 'fitted', kind: 'length', words: 'motor pulley at hand', usual: '4 in' }, SLIP,
  ],
  run: (given) => answer([
    figure('motor pulley for the rate', 'length', driverForSpeed(given.of('motor-speed'), given.of('wanted'), given.of('driven'), given.of('slip'))),
    figure('rate with the pulley at hand', 'rotation', drivenSpeed(given.of('motor-speed'), [{ driver: given.of('fitted'), driven: given.of('driven'), slip: given.of('slip') }])),
  ]),
};

const CRANK: Reckoning = {
  name: 'crank', title: 'Crank and rod: where the crosshead is, how fast, and what it feels', formula: 'x = r cos θ + √(l² − (r sin θ)²), and its derivatives by time', source: 'Khurmi and Gupta, Theory of Machines, ch. 15; exact here', validity: 'rod longer than the crank radius, line through the shaft centre',
  inputs: [{ name: 'throw', kind: 'length', words: 'shaft centre to pin centre' }, { name: 'rod', kind: 'length', words: 'rod between pins' }, { name: 'angle', kind: 'angle', words: 'crank angle from the outer dead centre' }, { name: 'speed', kind: 'rotation', words: 'speed of the shaft' }],
  run: (given) => {
    const gear = { crank: given.of('throw'), rod: given.of('rod') };
    const state = crankSlider(gear, given.of('angle'), given.of('speed') * TURN);
    return answer([figure('stroke', 'length', strokeOf(gear)), figure('crosshead from the shaft centre', 'length', state.position), figure('speed, outward positive', 'velocity', state.velocity), saying('acceleration, outward positive', `${state.acceleration.toPrecision(4)} m/s² (${(state.acceleration / 9.80665).toPrecision(3)} g)`), figure('lean of the rod', 'angle', state.rodAngle)]);
  },
};

const TOGGLE: Reckoning = {
  name: 'toggle', title: 'Toggle: force along the arms for a force across them', formula: 'F_along / F_across = 1 / (2 tan α), tan α = rise / half span', source: 'statics; textbook knowledge', validity: 'equal arms, pins without friction',
  inputs: [{ name: 'half-span', kind: 'length', words: 'outer pin to the middle, along the line' }, { name: 'rise', kind: 'length', words: 'middle pin off the line' }, { name: 'force', kind: 'force', words: 'force across', usual: '100 lbf' }],
  run: (given) => {
    const ratio = toggleRatioByLengths(given.of('half-span'), given.of('rise'));
    return answer([figure('ratio', 'ratio', ratio), figure('force along the arms', 'force', ratio * given.of('force'))]);
  },
};

const KEY: Reckoning = {
  name: 'key', title: 'Shaft key: size for a shaft', formula: 'table', source: 'ANSI B17.1, in part from memory', validity: 'shafts over 5/16 to 6 1/2 in',
  inputs: [{ name: 'diameter', kind: 'length', words: 'diameter of the shaft' }],
  run: (given) => {
    const key = keySize(given.of('diameter'));
    return key.state === 'known'
      ? answer([figure('width, and height where square', 'length', key.width), figure('height where flat', 'length', key.flatHeight), saying('how the row is known', key.standing)])
      : outside('the table has no key for this shaft; over 5/16 to 6 1/2 in is allowed');
  },
};

const TAPER_KEY: Reckoning = {
  name: 'taper-key', title: 'Die or shaft key with a taper: how far it drives, and whether it stays', formula: 'drive = gap / taper; holds where the taper angle is below twice the angle of friction', source: 'statics; tapers of ANSI B17.1, in part from memory', validity: 'dry faces, both alike',
  inputs: [
    { name: 'gap', kind: 'length', words: 'gap to take up' }, { name: 'taper', kind: 'choice', words: 'taper', choices: Object.keys(KEY_TAPERS), usual: 'eighth-per-foot' }, { name: 'friction', kind: 'ratio', words: 'friction on each face', usual: '0.15' },
  ],
  run: (given) => {
    const taper = KEY_TAPERS[given.choice('taper') as keyof typeof KEY_TAPERS];
    return answer([figure('drive for the gap', 'length', driveForGap(taper, given.of('gap'))), figure('angle of the taper', 'angle', taperAngle(taper)), figure('side force over driving force', 'ratio', wedgeForceRatio(taper, given.of('friction'))), saying('stays in by itself', taperHolds(taper, given.of('friction')) ? 'yes' : 'no')], warnIf(!taperHolds(taper, given.of('friction')), 'the key walks out: oil in a dovetail does this'));
  },
};

const FIT: Reckoning = {
  name: 'fit', title: 'Fit of a pin or bush: clearance between hole and shaft', formula: 'clearance = hole − shaft, by the limits of each', source: 'ISO 286-1 and -2', validity: 'over 6 to 180 mm; holes D to H, shafts d to s, grades 5 to 11',
  inputs: [{ name: 'size', kind: 'length', words: 'nominal size' }, { name: 'hole', kind: 'choice', words: 'hole, such as H7', usual: 'H7' }, { name: 'shaft', kind: 'choice', words: 'shaft, such as f7 or s6', usual: 'f7' }],
  run: (given) => {
    const fit = fitOf(given.of('size'), given.choice('hole') as HoleCode, given.choice('shaft') as ShaftCode);
    if (fit.state !== 'known') return outside(`the tables end there; over ${1000 * fit.from} to ${1000 * fit.to} mm is allowed: ${(1000 * given.of('size')).toFixed(2)} mm`);
    return answer([saying('kind', fit.kind), figure('least clearance (below zero: interference)', 'length', fit.leastClearance), figure('most clearance', 'length', fit.mostClearance), figure('hole, lower', 'length', fit.hole.lower), figure('hole, upper', 'length', fit.hole.upper), figure('shaft, lower', 'length', fit.shaft.lower), figure('shaft, upper', 'length', fit.shaft.upper)]);
  },
};

export const SHAFT_RECKONINGS: readonly Reckoning[] = [JOURNAL, FILM, BELT, BELT_LENGTH, PULLEY, CRANK, TOGGLE, KEY, TAPER_KEY, FIT];
