import { describe, expect, test } from 'vitest';
import { readQuantity, UNITS, type Dimension } from '../../../src/methods/quantity/index.ts';
import { digits, runRows, type Row } from '../row.ts';

interface One { readonly text: string; readonly dimension: Dimension }

const NIST = 'NIST SP 811 (2008), appendix B.8';
const ASTM = 'ASTM E380-82, Standard for Metric Practice';

/** Seven printed digits of one of the unit in SI, as read in an open transcription of the table; the tables themselves were not opened. */
const row = (source: string, text: string, dimension: Dimension, printed: string): Row<One> =>
  ({ source, status: 'transcribed', figure: `${text} in SI`, inputs: { text, dimension }, expected: Number(printed), tolerance: digits(printed) });

const ROWS: readonly Row<One>[] = [
  row(NIST, '1 oz', 'mass', '2.834952E-02'),
  row(NIST, '1 lb', 'mass', '4.535924E-01'),
  row(NIST, '1 ft3', 'volume', '2.831685E-02'),
  row(NIST, '1 lbf·ft', 'torque', '1.355818'),
  row(NIST, '1 lbf·in', 'torque', '1.129848E-01'),
  row(NIST, '1 lb/ft3', 'density', '1.601846E+01'),
  row(NIST, '1 lb/in3', 'density', '2.767990E+04'),
  row(NIST, '1 hp', 'power', '7.456999E+02'),
  row(NIST, '1 psi', 'pressure', '6.894757E+03'),
  row(NIST, '1 lbf/ft', 'stiffness', '1.459390E+01'),
  row(NIST, '1 °', 'angle', '1.745329E-02'),
  row(ASTM, '1 in', 'length', '2.540000E-02'),
  row(ASTM, '1 thou', 'length', '2.540000E-05'),
  row(ASTM, '1 ft', 'length', '3.048000E-01'),
  row(ASTM, '1 yd', 'length', '9.144000E-01'),
  row(ASTM, '1 micron', 'length', '1.000000E-06'),
  row(ASTM, '1 arcmin', 'angle', '2.908882E-04'),
  row(ASTM, '1 arcsec', 'angle', '4.848137E-06'),
  row(ASTM, '1 ft2', 'area', '9.290304E-02'),
  row(ASTM, '1 in2', 'area', '6.451600E-04'),
  row(ASTM, '1 in3', 'volume', '1.638706E-05'),
  row(ASTM, '1 g/cm3', 'density', '1.000000E+03'),
  row(ASTM, '1 ft·lbf', 'energy', '1.355818'),
  row(ASTM, '1 kWh', 'energy', '3.600000E+06'),
  row(ASTM, '1 kgf', 'force', '9.806650E+00'),
  row(ASTM, '1 kip', 'force', '4.448222E+03'),
  row(ASTM, '1 ozf', 'force', '2.780139E-01'),
  row(ASTM, '1 lbf', 'force', '4.448222E+00'),
  row(ASTM, '1 ft-lbf/s', 'power', '1.355818E+00'),
  row(ASTM, '1 bar', 'pressure', '1.000000E+05'),
  row(ASTM, '1 ksi', 'pressure', '6.894757E+06'),
  row(ASTM, '1 lbf/ft2', 'pressure', '4.788026E+01'),
  row(ASTM, '1 ft/min', 'velocity', '5.080000E-03'),
  row(ASTM, '1 ft/s', 'velocity', '3.048000E-01'),
  row(ASTM, '1 in/s', 'velocity', '2.540000E-02'),
  row(ASTM, '1 centipoise', 'viscosity', '1.000000E-03'),
];

/** Not opened. */
const FROM_MEMORY: readonly Row<One>[] = [
  // The open transcription has 7.645546 here, which is not 0.9144³ = 0.764554857984: a slip of the last digit, so the row is not taken from it.
  { source: NIST, status: 'from memory', figure: '1 yd³ in m³', inputs: { text: '1 yd³', dimension: 'volume' }, expected: 7.645549e-1, tolerance: digits('7.645549E-01') },
  { source: NIST, status: 'from memory', figure: '1 lbf/in in N/m', inputs: { text: '1 lbf/in', dimension: 'stiffness' }, expected: 1.751268e2, tolerance: digits('1.751268E+02') },
  { source: NIST, status: 'from memory', figure: '1 lb·ft² in kg·m²', inputs: { text: '1 lb·ft²', dimension: 'inertia' }, expected: 4.214011e-2, tolerance: digits('4.214011E-02') },
  { source: NIST, status: 'from memory', figure: '1 lb·in² in kg·m²', inputs: { text: '1 lb·in²', dimension: 'inertia' }, expected: 2.926397e-4, tolerance: digits('2.926397E-04') },
  { source: NIST, status: 'from memory', figure: '1 hundredweight (long) in kg', inputs: { text: '1 cwt', dimension: 'mass' }, expected: 5.080235e1, tolerance: digits('5.080235E+01') },
  { source: 'fixed points of the thermometer', status: 'from memory', figure: '32 °F in K', inputs: { text: '32 °F', dimension: 'temperature' }, expected: 273.15, tolerance: { absolute: 1e-12 } },
  { source: 'fixed points of the thermometer', status: 'from memory', figure: '-40 °F and -40 °C are one in K', inputs: { text: '-40 °F', dimension: 'temperature' }, expected: 233.15, tolerance: { absolute: 1e-12 } },
  { source: 'fixed points of the thermometer', status: 'from memory', figure: '212 °F in K', inputs: { text: '212 °F', dimension: 'temperature' }, expected: 373.15, tolerance: { absolute: 1e-12 } },
];

const valueOf = ({ text, dimension }: One): number => {
  const reading = readQuantity(text, { dimension });
  if (!reading.ok) throw new Error(`${text}: ${reading.problem.message}`);
  return reading.quantity.value;
};

describe('conversion factors', () => {
  test('match the printed tables to their last digit', () => {
    runRows('Conversion factors, as printed', ROWS, valueOf);
    runRows('Conversion factors, from memory', FROM_MEMORY, valueOf);
  });

  test('are exact where the definition is exact', () => {
    // NIST SP 811 (2008), appendix B.8, footnotes 22 and 23, as read in an open transcription.
    expect(valueOf({ text: '1 lb', dimension: 'mass' })).toBe(0.45359237);
    expect(valueOf({ text: '1 lbf', dimension: 'force' })).toBe(4.4482216152605);
    expect(valueOf({ text: '1 in', dimension: 'length' })).toBe(0.0254);
    expect(valueOf({ text: '1 rpm', dimension: 'rotation' })).toBe(1 / 60);
  });

  test('name a source for every unit', () => {
    for (const unit of Object.values(UNITS)) {
      expect(unit.source.length, unit.name).toBeGreaterThan(8);
      expect(unit.dimensions.length, unit.name).toBeGreaterThan(0);
    }
  });
});
