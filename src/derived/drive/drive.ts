import { leatherBeltPower, openBeltWrap } from '../../methods/elements/index.ts';
import { voltageUnbalance } from '../../methods/power/index.ts';
import { workOut, type Ledger } from '../ledger.ts';

/** From motor to crank: rate, slip, belt speed, wrap, what the belt carries, and whether motor and converter are large enough. */
export function workOutDrive(ledger: Ledger): void {
  const driven = 'pulley.diameter';
  workOut(ledger, {
    key: 'drive.rate-without-slip', title: 'rate from the pulleys, no slip', dimension: 'rotation', formula: 'motor speed x motor pulley / hammer pulley',
    sources: ['belt-arithmetic'], inputs: ['motor.speed', 'motor.pulley', driven], work: (speed, small, large) => (speed! * small!) / large!,
  });
  workOut(ledger, {
    key: 'drive.rate', title: 'rate from the pulleys', dimension: 'rotation', formula: 'rate without slip x (1 - slip)',
    sources: ['belt-arithmetic', 'common-practice'], inputs: ['drive.rate-without-slip', 'practice.belt-slip'], work: (rate, slip) => rate! * (1 - slip!),
  });
  workOut(ledger, {
    key: 'drive.slip', title: 'slip, counted against pulleys', dimension: 'ratio', formula: '1 - rate counted / rate without slip',
    sources: ['belt-arithmetic'], inputs: ['running.rate', 'drive.rate-without-slip'], work: (counted, without) => 1 - counted! / without!,
  });
  workOut(ledger, {
    key: 'drive.rate-share', title: 'rate against the usual greatest of the class', dimension: 'ratio', formula: 'rate / usual greatest rate',
    sources: ['common-practice'], inputs: ['running.rate|drive.rate', 'class.rate'], work: (rate, usual) => rate! / usual!,
  });
  workOut(ledger, {
    key: 'drive.overspeed-load', title: 'inertia load against the usual greatest rate', dimension: 'ratio', formula: '(rate / usual greatest rate)²',
    sources: ['rigid-body-mechanics'], inputs: ['drive.rate-share'], work: (share) => share! ** 2,
  });
  workOut(ledger, {
    key: 'drive.belt-speed', title: 'belt speed', dimension: 'velocity', formula: 'pi x hammer pulley x rate',
    sources: ['belt-arithmetic'], inputs: [driven, 'running.rate|drive.rate'], work: (diameter, rate) => Math.PI * diameter! * rate!,
  });
  workOut(ledger, {
    key: 'drive.wrap', title: 'wrap on the small pulley', dimension: 'angle', formula: 'pi - 2 asin((D - d) / 2C)',
    sources: ['belt-arithmetic'], inputs: ['motor.pulley', driven, 'belt.centre-distance'],
    work: (small, large, centres) => openBeltWrap(small!, large!, centres!),
  });
  workOut(ledger, {
    key: 'drive.belt-power', title: 'power that the belt carries', dimension: 'power', formula: '1 hp for each inch of single belt at 1000 ft/min, less wrap share',
    sources: ['leather-belt-rules'], inputs: ['belt.width', 'drive.belt-speed', 'drive.wrap'],
    work: (width, speed, wrap) => leatherBeltPower(width!, speed!, wrap!),
  });
  workOut(ledger, {
    key: 'drive.belt-power-share', title: 'power wanted against what the belt carries', dimension: 'ratio', formula: 'motor power / belt power',
    sources: ['leather-belt-rules'], inputs: ['motor.power|class.motor-power', 'drive.belt-power'], work: (wanted, carried) => wanted! / carried!,
  });
  workOut(ledger, {
    key: 'drive.motor-share', title: 'motor against what the class wants', dimension: 'ratio', formula: 'motor power / usual power of the class',
    sources: ['common-practice'], inputs: ['motor.power', 'class.motor-power'], work: (power, usual) => power! / usual!,
  });
  const legs = ['motor.running-current', 'motor.running-current@a', 'motor.running-current@b', 'motor.running-current@c'].filter((key) => ledger.values.has(key));
  workOut(ledger, {
    key: 'drive.running-share', title: 'current running against the plate', dimension: 'ratio', formula: 'greatest leg running / full-load current of the plate',
    sources: ['nec-430'], inputs: ['motor.current', ...(legs.length === 0 ? ['motor.running-current@a'] : legs)], work: (full, ...running) => Math.max(...running) / full!,
  });
  workOut(ledger, {
    key: 'drive.converter-share', title: 'converter idler against the motor', dimension: 'ratio', formula: 'idler power / motor power',
    sources: ['phase-converter-rules'], inputs: ['phase-converter.power', 'motor.power'], work: (idler, motor) => idler! / motor!,
  });
  workOut(ledger, {
    key: 'drive.voltage-unbalance', title: 'voltage unbalance under load', dimension: 'ratio', formula: 'greatest departure from the mean / mean',
    sources: ['nema-mg-1'], inputs: ['motor.leg-voltage@ab', 'motor.leg-voltage@bc', 'motor.leg-voltage@ca'], work: (ab, bc, ca) => voltageUnbalance([ab!, bc!, ca!]),
  });
}
