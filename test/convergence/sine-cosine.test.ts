import { expect, it } from 'vitest';
import { sineCosine } from '../../src/methods/numerics/index.ts';

const both = (x: number): [number, number] => {
  const out = new Float64Array(2);
  sineCosine(x, out);
  return [out[0]!, out[1]!];
};

it('is within two units in the last place of the engine\'s own, over several turns both ways', () => {
  let worst = 0;
  for (let i = -40_000; i <= 40_000; i++) {
    const x = i * 7.3e-4;
    const [s, c] = both(x);
    worst = Math.max(worst, Math.abs(s - Math.sin(x)), Math.abs(c - Math.cos(x)));
  }
  console.log(`sine and cosine: worst ${worst.toExponential(1)}`);
  expect(worst).toBeLessThan(4.5e-16);
});

it('gives the places of the circle and passes on what is not a number', () => {
  expect(both(0)).toEqual([0, 1]);
  expect(both(Math.PI / 2)[0]).toBe(1);
  expect(both(Math.PI)[1]).toBe(-1);
  expect(both(NaN)[0]).toBeNaN();
});
