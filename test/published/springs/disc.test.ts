import { expect, test } from 'vitest';
import { discLoad, discStress, orderDiscSpring } from '../../../src/methods/elements/index.ts';
import { byFigure, rowsOf, runRows } from '../row.ts';
import { GPa, MPa, mm } from '../units.ts';

test('disc spring for a load and a stress when flat', () => {
  const inputs = { P: 4500, stress: 1375, ratio: 1.75, heightRatio: 1.5, E: 207, poisson: 0.3 };
  const disc = (x: typeof inputs) => orderDiscSpring({ loadFlat: x.P, stressFlat: x.stress * MPa, diameterRatio: x.ratio, heightRatio: x.heightRatio, elasticModulus: x.E * GPa, poisson: x.poisson });
  // E and Poisson's ratio are not in the transcription; 207 GPa and 0.3 are the book's usual ones.
  runRows('disc spring', rowsOf('Bhandari, Design of Machine Elements, ex. 10.26', 'transcribed', inputs, [['thickness, mm', '2.653'], ['cone height, mm', '3.979'], ['outside, mm', '154.82'], ['inside, mm', '88.47']]), byFigure({
    'thickness, mm': (x) => disc(x).thickness / mm, 'cone height, mm': (x) => disc(x).coneHeight / mm, 'outside, mm': (x) => disc(x).outsideDiameter / mm, 'inside, mm': (x) => disc(x).insideDiameter / mm,
  }));
  const made = disc(inputs);
  expect(discLoad(made, made.coneHeight)).toBeCloseTo(4500, 6);
  expect(discStress(made, made.coneHeight) / MPa).toBeCloseTo(1375, 6);
  // Odd about the flat position: what it lacks before flat it has after, since 1.5 lies above the root of two.
  const flat = discLoad(made, made.coneHeight);
  expect(discLoad(made, 0.8 * made.coneHeight) + discLoad(made, 1.2 * made.coneHeight)).toBeCloseTo(2 * flat, 6);
  expect(discLoad(made, 0.8 * made.coneHeight)).toBeGreaterThan(flat);
});
