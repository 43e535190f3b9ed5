import { anvilSpeed, blockLimits, blowEfficiency, foundationResponse, plasticImpact, propFor, stoppingForce } from '../../methods/ground/index.ts';
import {
  allowedTime, capacitanceFor, converterCapacitance, converterIdlerPower, fullLoadCurrent, greatestBreakerRating, leastConductorCurrent, levelsTogether, NIOSH, noiseDose, OSHA, polesOf, slipOf, synchronousSpeed, timeWeightedAverage, UNBALANCE_LIMITS, voltageUnbalance, type Starting,
} from '../../methods/power/index.ts';
import { answer, figure, outside, saying, warnIf, type Reckoning } from './reckoning.ts';

const TURN = 2 * Math.PI;
const MICRO = 1e-6;

const EFFICIENCY: Reckoning = {
  name: 'anvil-ratio', title: 'Anvil against ram: how much of a blow the work gets', formula: 'η = (1 − e²) R/(R + 1), R = anvil/ram; V = (1 + e) m v/(m + M)', source: 'mechanics of two free bodies; textbook knowledge', validity: 'anvil free to move, nothing lost in the frame',
  inputs: [{ name: 'ram', kind: 'mass', words: 'mass of the ram' }, { name: 'anvil', kind: 'mass', words: 'mass of anvil and all that is fixed to it' }, { name: 'speed', kind: 'velocity', words: 'speed of the ram at the blow', usual: '4 m/s' }, { name: 'restitution', kind: 'ratio', words: 'rebound; hot work about 0.25, cold dies 0.6', usual: '0.25' }],
  run: (given) => {
    const ratio = given.of('anvil') / given.of('ram');
    return answer([figure('anvil over ram', 'ratio', ratio, 'one'), figure('share of the blow that the work gets', 'ratio', blowEfficiency(ratio, given.of('restitution'))), figure('speed of the anvil after the blow', 'velocity', anvilSpeed(given.of('ram'), given.of('anvil'), given.of('speed'), given.of('restitution')))]);
  },
};

const DROP: Reckoning = {
  name: 'drop', title: 'A mass that falls on another and both are stopped', formula: 'common speed m v/(m + M); F = (m + M) g + E/s', source: 'mechanics; textbook knowledge', validity: 'dead blow, both stay together; the force is the mean, its peak is higher',
  inputs: [{ name: 'falling', kind: 'mass', words: 'falling mass' }, { name: 'struck', kind: 'mass', words: 'mass that it strikes' }, { name: 'height', kind: 'length', words: 'height of fall' }, { name: 'stop', kind: 'length', words: 'distance in which both are stopped' }],
  run: (given) => {
    const speed = Math.sqrt(2 * 9.80665 * given.of('height'));
    const impact = plasticImpact(given.of('falling'), given.of('struck'), speed);
    return answer([figure('speed at the blow', 'velocity', speed), figure('common speed after it', 'velocity', impact.speed), figure('energy lost', 'energy', impact.lost), figure('energy left', 'energy', impact.left), figure('mean stopping force', 'force', stoppingForce(impact, given.of('falling') + given.of('struck'), given.of('stop')))]);
  },
};

const FOUNDATION: Reckoning = {
  name: 'foundation', title: 'Foundation block: how far anvil and block move under a blow', formula: 'two masses on two springs; w⁴ − (1 + r)(wa² + wl²) w² + (1 + r) wa² wl² = 0', source: 'D. D. Barkan, Dynamics of Bases and Foundations; limits of IS 2974 part 2:1980 from memory, little sure', validity: 'no damping, so the greatest movement is on the safe side; stiffness of pad and ground must be known',
  inputs: [
    { name: 'ram', kind: 'mass', words: 'mass of the ram' }, { name: 'anvil', kind: 'mass', words: 'mass of anvil and frame' }, { name: 'block', kind: 'mass', words: 'mass of the block' }, { name: 'pad-stiffness', kind: 'stiffness', words: 'stiffness of the pad below the anvil' }, { name: 'ground-stiffness', kind: 'stiffness', words: 'stiffness of the ground below the block' },
    { name: 'speed', kind: 'velocity', words: 'speed of the ram at the blow', usual: '4 m/s' }, { name: 'restitution', kind: 'ratio', words: 'rebound', usual: '0.25' },
  ],
  run: (given) => {
    const limits = blockLimits(given.of('ram'));
    const start = anvilSpeed(given.of('ram'), given.of('anvil'), given.of('speed'), given.of('restitution'));
    const response = foundationResponse({ anvilMass: given.of('anvil'), blockMass: given.of('block'), padStiffness: given.of('pad-stiffness'), groundStiffness: given.of('ground-stiffness') }, start);
    return answer(
      [
        figure('speed of the anvil after the blow', 'velocity', start), figure('lower natural frequency', 'frequency', response.modes[0].frequency / TURN), figure('upper natural frequency', 'frequency', response.modes[1].frequency / TURN), figure('greatest movement of the anvil', 'length', response.exact.anvil),
        figure('greatest movement of the block', 'length', response.exact.block), figure('movement of the block that the code allows', 'length', limits.blockAmplitude), figure('thickness of block that it asks for', 'length', limits.thickness), figure('block over anvil that it asks for', 'ratio', limits.blockOverAnvil),
      ],
      warnIf(response.exact.block > limits.blockAmplitude, 'the block moves more than the code allows'), 'the code is for industrial hammers and was remembered, not opened',
    );
  },
};

const PROP: Reckoning = {
  name: 'ram-prop', title: 'Timber that may hold a ram up', formula: 'table', source: '29 CFR 1910.218, table O-11', validity: 'square hardwood of full size, ends square, up to 12 by 12 in',
  inputs: [{ name: 'mass', kind: 'mass', words: 'everything that would come down' }, { name: 'length', kind: 'length', words: 'length of the prop' }],
  run: (given) => {
    const choice = propFor(given.of('mass'), given.of('length'));
    return choice.state === 'known' ? answer([saying('timber', `${choice.prop.name} in`), figure('side', 'length', choice.prop.side), figure('may hold', 'mass', choice.prop.hammerMass), figure('longest', 'length', choice.prop.length)]) : outside(choice.because);
  },
};

const MOTOR_SPEED: Reckoning = {
  name: 'motor-speed', title: 'Poles and slip of an induction motor from its plate', formula: 'n_s = 2 f / p (pairs: 120 f / poles in rpm); s = (n_s − n)/n_s', source: 'textbook knowledge of induction machines', validity: 'induction motors, 2 to 24 poles',
  inputs: [{ name: 'speed', kind: 'rotation', words: 'full-load speed on the plate' }, { name: 'frequency', kind: 'frequency', words: 'frequency of the supply', usual: '60 Hz' }],
  run: (given) => {
    const poles = polesOf(given.of('speed') * TURN, given.of('frequency'));
    if (poles === undefined) return outside('no number of poles gives this speed with a slip of 0 to 20 %');
    const synchronous = synchronousSpeed(given.of('frequency'), poles);
    return answer([figure('poles', 'count', poles), figure('synchronous speed', 'rotation', synchronous / TURN), figure('slip', 'ratio', slipOf(given.of('speed') * TURN, synchronous))]);
  },
};

const MOTOR_CURRENT: Reckoning = {
  name: 'motor-current', title: 'Full-load current of a motor, and what wire and breaker it asks for', formula: 'table; conductors 125 %, breaker at most 250 %', source: 'NEC tables 430.248 and 430.250, sections 430.22 and 430.52', validity: 'the horsepower steps and voltages of the table only; the local code governs and a licensed person does the work',
  inputs: [{ name: 'power', kind: 'power', words: 'rated power' }, { name: 'voltage', kind: 'voltage', words: 'rated voltage', usual: '230 V' }, { name: 'phases', kind: 'choice', words: 'phases', choices: ['1', '3'], usual: '1' }],
  run: (given) => {
    const current = fullLoadCurrent({ phases: given.choice('phases') === '3' ? 3 : 1, voltage: given.of('voltage'), power: given.of('power') });
    return current.state === 'known' ? answer([figure('full-load current', 'current', current.current), figure('least that the conductors must carry', 'current', leastConductorCurrent(current.current)), figure('greatest breaker', 'current', greatestBreakerRating(current.current))], current.note) : outside(current.because);
  },
};

const CONVERTER: Reckoning = {
  name: 'converter', title: 'Rotary phase converter: idler and capacitors for a hammer motor', formula: 'idler = 1 to 2 times the largest motor; capacitors in µF for each horsepower', source: 'common practice, no source; rules conflict and all are shown', validity: '230 V and 60 Hz for the capacitors; balance is settled by reading the voltages under load',
  inputs: [{ name: 'motor', kind: 'power', words: 'largest motor that it must start' }, { name: 'starting', kind: 'choice', words: 'how hard it starts', choices: ['easy', 'flywheel', 'hard'], usual: 'flywheel' }],
  run: (given) => {
    const idler = converterIdlerPower(given.of('motor'), given.choice('starting') as Starting);
    const start = converterCapacitance(idler.least, 'start');
    const balance = converterCapacitance(idler.least, 'balance');
    const micro = (farad: number): string => (farad / MICRO).toPrecision(3);
    return answer([
      figure('idler, least', 'power', idler.least), figure('idler, most', 'power', idler.most), ...idler.rules.map((rule) => saying('rule', `${rule.says} (${rule.source})`)),
      saying('start capacitors for the least idler', `${micro(start.least)} to ${micro(start.most)} µF`), saying('balancing capacitors for it', `${micro(balance.least)} to ${micro(balance.most)} µF in each bank`),
    ]);
  },
};

const CAPACITOR: Reckoning = {
  name: 'capacitor', title: 'Capacitor for a reactive power', formula: 'C = Q / (2 π f V²)', source: 'textbook knowledge', validity: 'sine waves',
  inputs: [{ name: 'reactive', kind: 'power', words: 'reactive power, in var written as W' }, { name: 'voltage', kind: 'voltage', words: 'voltage across it', usual: '230 V' }, { name: 'frequency', kind: 'frequency', words: 'frequency', usual: '60 Hz' }],
  run: (given) => answer([saying('capacitance', `${(capacitanceFor(given.of('reactive'), given.of('frequency'), given.of('voltage')) / MICRO).toPrecision(4)} µF`)]),
};

const VOLTAGE: Reckoning = {
  name: 'voltage', title: 'Unbalance of three voltages', formula: 'greatest departure from the mean over the mean', source: 'NEMA MG 1, 14.36, from memory', validity: 'line to line, under load',
  inputs: [{ name: 'ab', kind: 'voltage', words: 'first leg to second' }, { name: 'bc', kind: 'voltage', words: 'second to third' }, { name: 'ca', kind: 'voltage', words: 'third to first' }],
  run: (given) => {
    const unbalance = voltageUnbalance([given.of('ab'), given.of('bc'), given.of('ca')]);
    return answer([figure('unbalance', 'ratio', unbalance), figure('derate the motor from', 'ratio', UNBALANCE_LIMITS.derate), figure('do not run from', 'ratio', UNBALANCE_LIMITS.doNotRun)], warnIf(unbalance >= UNBALANCE_LIMITS.doNotRun, 'do not run the motor on this'), warnIf(unbalance >= UNBALANCE_LIMITS.derate && unbalance < UNBALANCE_LIMITS.doNotRun, 'the motor must be derated'));
  },
};

const NOISE: Reckoning = {
  name: 'noise', title: 'How long a noise may be borne, and the dose of a day', formula: 'T = 8 h / 2^((L − criterion)/exchange); dose = Σ t/T', source: `${OSHA.source}; ${NIOSH.source}`, validity: 'levels in dB(A) at the ear, without protection; the two rules differ greatly and both are shown',
  inputs: [{ name: 'level', kind: 'level', words: 'level at the ear' }, { name: 'time', kind: 'time', words: 'time of the day spent in it', usual: '1 h' }, { name: 'beside', kind: 'level', words: 'another noise at the same time', usual: '0 dB' }],
  run: (given) => {
    const level = levelsTogether([given.of('level'), given.of('beside')]);
    const lines = [OSHA, NIOSH].flatMap((rule) => {
      const dose = noiseDose([{ level, time: given.of('time') }], rule);
      const mean = timeWeightedAverage(dose, rule);
      return [figure(`time allowed, ${rule.id.toUpperCase()}`, 'time', allowedTime(level, rule)), figure(`dose, ${rule.id.toUpperCase()}`, 'ratio', dose, 'percent'), ...(mean === undefined ? [] : [figure(`mean over eight hours, ${rule.id.toUpperCase()}`, 'level', mean)])];
    });
    return answer([figure('level of both together', 'level', level), ...lines], warnIf(level >= 100, 'plug and muff together at this level'));
  },
};

export const GROUND_AND_POWER_RECKONINGS: readonly Reckoning[] = [EFFICIENCY, DROP, FOUNDATION, PROP, MOTOR_SPEED, MOTOR_CURRENT, CONVERTER, CAPACITOR, VOLTAGE, NOISE];
