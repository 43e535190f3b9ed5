import type { Dimension } from './dimension.ts';
import { decimal, ONE, over, rational, times, type Rational } from './rational.ts';

/** One unit: SI value = (number + offset) x factor, and x pi where `pi` is set. */
export interface Unit {
  readonly name: string;
  /** What it can measure. */
  readonly dimensions: readonly Dimension[];
  readonly factor: Rational;
  readonly offset: Rational;
  readonly pi: boolean;
  /** As printed. */
  readonly symbol: string;
  /** Printed without a space before it, as the degree sign is. */
  readonly tight: boolean;
  /** Other ways of writing it; compared without capitals unless the spelling has some, see `unitsSpelled`. */
  readonly spellings: readonly string[];
  readonly source: string;
}

const SI = 'BIPM, The International System of Units, 9th edition: prefixes and table 8 (from memory)';
const EXACT = 'NIST SP 811 (2008), appendix B.8, exact';
const MADE = 'made up exactly from inch, pound and standard gravity (NIST SP 811, appendix B.8)';
const TRADE = 'common practice, no source';

const INCH = decimal('0.0254');
const FOOT = decimal('0.3048');
const POUND = decimal('0.45359237');
const GRAVITY = decimal('9.80665');
const POUND_FORCE = times(POUND, GRAVITY);
const THOUSAND = rational(1000);
const product = (...factors: readonly Rational[]): Rational => factors.reduce(times, ONE);
const share = (numerator: number, denominator: number): Rational => rational(numerator, denominator);

interface Row {
  readonly of: readonly Dimension[];
  readonly is: Rational;
  readonly from: string;
  readonly symbol?: string;
  readonly also?: readonly string[];
  readonly offset?: Rational;
  readonly pi?: true;
  readonly tight?: true;
}

const row = (of: Dimension | readonly Dimension[], is: Rational, from: string, also: readonly string[] = [], rest: Partial<Row> = {}): Row =>
  ({ of: typeof of === 'string' ? [of] : of, is, from, also, ...rest });

const ROWS = {
  in: row('length', INCH, EXACT, ['inch', 'inches', 'ins', '"']),
  ft: row('length', FOOT, EXACT, ['foot', 'feet', "'"]),
  thou: row('length', over(INCH, THOUSAND), EXACT, ['thous', 'thousandth', 'thousandths', 'thousandths of an inch', 'thousandth of an inch', 'thousandths of inch']),
  mm: row('length', share(1, 1000), SI, ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
  cm: row('length', share(1, 100), SI, ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  m: row('length', ONE, SI, ['metre', 'metres', 'meter', 'meters']),
  yd: row('length', times(FOOT, rational(3)), EXACT, ['yard', 'yards']),
  tenth: row('length', over(INCH, rational(10_000)), EXACT, ['tenths', 'ten-thousandths', 'tenths of a thou'], { symbol: 'tenths of a thou' }),
  um: row('length', share(1, 1_000_000), SI, ['µm', 'micron', 'microns', 'micrometre', 'micrometres'], { symbol: 'µm' }),

  in2: row('area', product(INCH, INCH), EXACT, ['sq in', 'square inch', 'square inches', 'in^2'], { symbol: 'in²' }),
  ft2: row('area', product(FOOT, FOOT), EXACT, ['sq ft', 'square foot', 'square feet', 'ft^2'], { symbol: 'ft²' }),
  mm2: row('area', decimal('1e-6'), SI, ['sq mm', 'mm^2'], { symbol: 'mm²' }),
  cm2: row('area', decimal('1e-4'), SI, ['sq cm', 'cm^2'], { symbol: 'cm²' }),
  m2: row('area', ONE, SI, ['sq m', 'm^2'], { symbol: 'm²' }),

  in3: row('volume', product(INCH, INCH, INCH), EXACT, ['cu in', 'cubic inch', 'cubic inches', 'in^3'], { symbol: 'in³' }),
  ft3: row('volume', product(FOOT, FOOT, FOOT), EXACT, ['cu ft', 'cubic foot', 'cubic feet', 'ft^3'], { symbol: 'ft³' }),
  yd3: row('volume', product(FOOT, FOOT, FOOT, rational(27)), EXACT, ['cu yd', 'cubic yard', 'cubic yards', 'yd^3'], { symbol: 'yd³' }),
  mm3: row('volume', decimal('1e-9'), SI, ['mm^3'], { symbol: 'mm³' }),
  cm3: row('volume', decimal('1e-6'), SI, ['cc', 'cm^3', 'ml', 'mL'], { symbol: 'cm³' }),
  L: row('volume', share(1, 1000), SI, ['l', 'litre', 'litres', 'liter', 'liters']),
  m3: row('volume', ONE, SI, ['m^3'], { symbol: 'm³' }),
  'fl-oz': row('volume', decimal('29.5735295625e-6'), 'United States fluid ounce of 231/128 cubic inches; NIST SP 811 (2008), appendix B.8', ['fl oz', 'fluid ounce', 'fluid ounces'], { symbol: 'fl oz' }),

  lb: row('mass', POUND, EXACT, ['lbs', 'pound', 'pounds', 'lbm', '#']),
  oz: row('mass', over(POUND, rational(16)), EXACT, ['ounce', 'ounces']),
  kg: row('mass', ONE, SI, ['kilo', 'kilos', 'kilogram', 'kilograms', 'kgs']),
  g: row('mass', share(1, 1000), SI, ['gram', 'grams']),
  t: row('mass', THOUSAND, SI, ['tonne', 'tonnes']),
  cwt: row('mass', times(POUND, rational(112)), 'UK hundredweight of 112 lb; NIST SP 811 (2008), appendix B.8, hundredweight (long)', ['hundredweight']),

  lbf: row('force', POUND_FORCE, EXACT, ['lb', 'lbs', 'pound', 'pounds', 'pounds-force', 'pound-force']),
  ozf: row('force', over(POUND_FORCE, rational(16)), MADE, ['oz', 'ounce', 'ounces']),
  kip: row('force', times(POUND_FORCE, THOUSAND), MADE, ['kips', 'klbf']),
  N: row('force', ONE, SI, ['newton', 'newtons']),
  kN: row('force', THOUSAND, SI, ['kilonewton', 'kilonewtons']),
  MN: row('force', decimal('1e6'), SI, ['meganewton', 'meganewtons']),
  kgf: row('force', GRAVITY, EXACT, ['kg', 'kp', 'kilo', 'kilos']),

  psi: row('pressure', over(POUND_FORCE, product(INCH, INCH)), MADE, ['lb/in2', 'lbf/in2', 'lb/in^2', 'lbf/in^2', 'lb/sq in', 'pounds per square inch']),
  ksi: row('pressure', over(times(POUND_FORCE, THOUSAND), product(INCH, INCH)), MADE, ['kip/in2', 'kip/in^2']),
  psf: row('pressure', over(POUND_FORCE, product(FOOT, FOOT)), MADE, ['lb/ft2', 'lbf/ft2', 'lb/ft^2', 'lbf/ft^2', 'lb/sq ft']),
  Pa: row('pressure', ONE, SI, ['pascal', 'pascals']),
  kPa: row('pressure', THOUSAND, SI, ['kilopascal']),
  MPa: row('pressure', decimal('1e6'), SI, ['N/mm2', 'N/mm^2', 'megapascal']),
  GPa: row('pressure', decimal('1e9'), SI, ['gigapascal']),
  bar: row('pressure', decimal('1e5'), 'NIST SP 811 (2008), table 9, exact', ['bars']),

  'lbf/in': row('stiffness', over(POUND_FORCE, INCH), MADE, ['lb/in', 'lbs/in', 'pounds per inch', 'lb per inch', 'lb per in']),
  'lbf/ft': row('stiffness', over(POUND_FORCE, FOOT), MADE, ['lb/ft']),
  'N/mm': row('stiffness', THOUSAND, SI, ['kN/m']),
  'N/m': row('stiffness', ONE, SI),
  'kgf/mm': row('stiffness', times(GRAVITY, THOUSAND), MADE, ['kg/mm']),

  deg: row('angle', share(1, 180), SI, ['°', 'degree', 'degrees'], { symbol: '°', pi: true, tight: true }),
  arcmin: row('angle', share(1, 10_800), SI, ["'", 'arc min', 'arc minutes', 'minutes of arc'], { symbol: 'arcmin', pi: true }),
  arcsec: row('angle', share(1, 648_000), SI, ['"', 'arc sec', 'arc seconds', 'seconds of arc'], { symbol: 'arcsec', pi: true }),
  rad: row('angle', ONE, SI, ['radian', 'radians']),
  revolution: row('angle', rational(2), SI, ['turn', 'turns', 'rev', 'revs', 'revolutions'], { symbol: 'turns', pi: true }),

  rpm: row(['rotation', 'frequency'], share(1, 60), SI, ['rev/min', 'r/min', 'revs/min', 'turns/min', 'min-1', 'blows/min', 'bpm', 'blows a minute', 'blows per minute', 'strokes/min', 'strokes per minute', 'beats/min', 'turns a minute', '/min', 'per minute', 'rev per minute', 'revs a minute']),
  'rev/s': row('rotation', ONE, SI, ['rps', 'Hz', 'turns/s', 'blows/s', 'blows per second', '1/s']),
  Hz: row('frequency', ONE, SI, ['hertz', '1/s', 'cycles/s']),
  kHz: row('frequency', THOUSAND, SI),

  'ft/min': row('velocity', over(FOOT, rational(60)), EXACT, ['fpm', 'feet per minute', 'ft per min', 'feet a minute']),
  'ft/s': row('velocity', FOOT, EXACT, ['fps', 'ft/sec', 'feet per second']),
  'in/s': row('velocity', INCH, EXACT, ['ips', 'in/sec', 'inches per second']),
  'mm/s': row('velocity', share(1, 1000), SI),
  'm/s': row('velocity', ONE, SI, ['m/sec', 'metres per second', 'meters per second']),
  'm/min': row('velocity', share(1, 60), SI),

  s: row('time', ONE, SI, ['sec', 'secs', 'second', 'seconds']),
  ms: row('time', share(1, 1000), SI, ['msec', 'millisecond', 'milliseconds']),
  min: row('time', rational(60), SI, ['mins', 'minute', 'minutes']),
  h: row('time', rational(3600), SI, ['hr', 'hrs', 'hour', 'hours']),
  day: row('time', rational(86_400), SI, ['days', 'd'], { symbol: 'days' }),

  hp: row('power', product(rational(550), FOOT, POUND_FORCE), 'horsepower of 550 ft·lbf/s; NIST SP 811 (2008), appendix B.8', ['horsepower', 'bhp', 'horse power']),
  W: row('power', ONE, SI, ['watt', 'watts']),
  kW: row('power', THOUSAND, SI, ['kilowatt', 'kilowatts']),
  'ft-lbf/s': row('power', times(FOOT, POUND_FORCE), MADE, ['ft-lb/s'], { symbol: 'ft·lbf/s' }),

  'ft-lbf': row('energy', times(FOOT, POUND_FORCE), MADE, ['ft-lb', 'ft-lbs', 'foot-pounds', 'foot-pound', 'lb-ft', 'lbf-ft'], { symbol: 'ft·lbf' }),
  'in-lbf': row('energy', times(INCH, POUND_FORCE), MADE, ['in-lb', 'in-lbs', 'inch-pounds', 'lb-in', 'lbf-in'], { symbol: 'in·lbf' }),
  J: row('energy', ONE, SI, ['joule', 'joules', 'N-m', 'Nm']),
  kJ: row('energy', THOUSAND, SI, ['kilojoule', 'kilojoules']),
  'kW-h': row('energy', decimal('3.6e6'), SI, ['kWh'], { symbol: 'kW·h' }),

  'lbf-ft': row('torque', times(FOOT, POUND_FORCE), MADE, ['lb-ft', 'ft-lb', 'ft-lbf', 'ft-lbs', 'foot-pounds', 'pound-feet'], { symbol: 'lbf·ft' }),
  'lbf-in': row('torque', times(INCH, POUND_FORCE), MADE, ['lb-in', 'in-lb', 'in-lbf', 'in-lbs', 'inch-pounds'], { symbol: 'lbf·in' }),
  'N-m': row('torque', ONE, SI, ['Nm', 'newton-metres', 'newton-meters'], { symbol: 'N·m' }),
  'kN-m': row('torque', THOUSAND, SI, ['kNm'], { symbol: 'kN·m' }),

  degF: row('temperature', share(5, 9), 'NIST SP 811 (2008), appendix B.8: T/K = (t/°F + 459.67)/1.8', ['°F', 'F', 'deg F', 'degrees F', 'Fahrenheit', 'degrees Fahrenheit'], { symbol: '°F', offset: decimal('459.67') }),
  degC: row('temperature', ONE, 'NIST SP 811 (2008), appendix B.8: T/K = t/°C + 273.15', ['°C', 'C', 'deg C', 'degrees C', 'Celsius', 'centigrade', 'degrees Celsius'], { symbol: '°C', offset: decimal('273.15') }),
  K: row('temperature', ONE, SI, ['kelvin', 'kelvins']),

  V: row('voltage', ONE, SI, ['volt', 'volts']),
  mV: row('voltage', share(1, 1000), SI, ['millivolts']),
  kV: row('voltage', THOUSAND, SI, ['kilovolts']),
  A: row('current', ONE, SI, ['amp', 'amps', 'ampere', 'amperes']),
  mA: row('current', share(1, 1000), SI, ['milliamps']),

  one: row(['ratio', 'count', 'taper'], ONE, SI, [], { symbol: '' }),
  percent: row(['ratio', 'taper'], share(1, 100), SI, ['%', 'per cent', 'pct'], { symbol: '%' }),
  'in/ft': row(['taper', 'ratio'], share(1, 12), EXACT, ['inch per foot', 'inches per foot', 'in per ft', 'in per foot', '"/ft', '"/\'']),
  'thou/in': row(['ratio', 'taper'], share(1, 1000), EXACT, ['thou per inch', 'thou per in', 'thousandths per inch', 'thou/inch', 'thou an inch']),
  'thou/ft': row(['ratio', 'taper'], share(1, 12_000), EXACT, ['thou per foot', 'thou per ft']),
  'in/in': row(['ratio', 'taper'], ONE, EXACT, ['in per in', 'in per inch', 'inch per inch']),
  'mm/m': row(['taper', 'ratio'], share(1, 1000), SI, ['mm per m', 'mm per metre']),
  'mm/mm': row(['ratio', 'taper'], ONE, SI),
  piece: row('count', ONE, TRADE, ['off', 'pcs', 'pc', 'pieces', 'ea'], { symbol: 'off' }),
  turn: row('count', ONE, TRADE, ['turns', 'coil', 'coils', 'rev', 'revs', 'thread', 'threads'], { symbol: 'turns' }),
  blow: row('count', ONE, TRADE, ['blows', 'stroke', 'strokes'], { symbol: 'blows' }),

  HRC: row('hardness', ONE, 'Rockwell C scale, ISO 6508-1 (from memory)', ['Rc', 'Rockwell C']),
  dB: row('level', ONE, SI, ['decibel', 'decibels', 'dBA', 'dB(A)', 'dB A', 'dBC', 'dB(C)']),

  'Pa-s': row('viscosity', ONE, SI, [], { symbol: 'Pa·s' }),
  'mPa-s': row('viscosity', share(1, 1000), SI, ['cP', 'centipoise'], { symbol: 'mPa·s' }),
  'lb/in3': row('density', over(POUND, product(INCH, INCH, INCH)), MADE, ['lb/in^3', 'lb/cu in'], { symbol: 'lb/in³' }),
  'lb/ft3': row('density', over(POUND, product(FOOT, FOOT, FOOT)), MADE, ['lb/ft^3', 'lb/cu ft'], { symbol: 'lb/ft³' }),
  'kg/m3': row('density', ONE, SI, ['kg/m^3'], { symbol: 'kg/m³' }),
  'g/cm3': row('density', THOUSAND, SI, ['g/cm^3', 'kg/L', 'g/cc'], { symbol: 'g/cm³' }),
  'lb-ft2': row('inertia', product(POUND, FOOT, FOOT), MADE, ['lb-ft^2'], { symbol: 'lb·ft²' }),
  'lb-in2': row('inertia', product(POUND, INCH, INCH), MADE, ['lb-in^2'], { symbol: 'lb·in²' }),
  'kg-m2': row('inertia', ONE, SI, ['kg-m^2'], { symbol: 'kg·m²' }),
} as const satisfies Record<string, Row>;

/** Name of a unit, as other rooms call for it. */
export type UnitName = keyof typeof ROWS;

const unitOf = (name: string, { of, is, from, symbol, also, offset, pi, tight }: Row): Unit => ({
  name, dimensions: of, factor: is, offset: offset ?? rational(0), pi: pi ?? false, symbol: symbol ?? name, tight: tight ?? false,
  spellings: [name, ...(symbol === undefined ? [] : [symbol]), ...(also ?? [])], source: from,
});

/** Every unit that can be read or printed, in the order in which they are offered. */
export const UNITS: Readonly<Record<UnitName, Unit>> = Object.fromEntries(
  Object.entries(ROWS).map(([name, one]) => [name, unitOf(name, one)]),
) as unknown as Record<UnitName, Unit>;

/** Names of the units that measure the dimension, in the order in which they are offered; never empty. */
export const unitsFor = (dimension: Dimension): readonly UnitName[] =>
  (Object.keys(UNITS) as UnitName[]).filter((name) => UNITS[name].dimensions.includes(dimension));
