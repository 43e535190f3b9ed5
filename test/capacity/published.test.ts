import { describe, expect, test } from 'vitest';
import { capacityOf, dentingWork, energyFor, heatTime, stressLaws, type Heat, type Stroke } from '../../src/derived/capacity/index.ts';
import { timeBetween } from '../../src/methods/forming/index.ts';
import { rowsOf, runRows } from '../published/row.ts';
import { exactly, input } from './inputs.ts';

describe('published figures, called through the room', () => {
  test('the laws of flow stress side by side', () => {
    const at = (law: string, carbon: number, celsius: number, strain: number, rate: number): number => {
      const answer = stressLaws(carbon).find((one) => one.id === law)!.at({ temperature: celsius + 273.15, strain, rate });
      return answer.state === 'known' ? answer.stress / 1e6 : Number.NaN;
    };
    type Inputs = { law: string; carbon: number; celsius: number; strain: number; rate: number };
    const row = (source: string, law: string, carbon: number, celsius: number, strain: number, rate: number, printed: string) => rowsOf<Inputs>(source, 'recomputed', { law, carbon, celsius, strain, rate }, [['stress, MPa', printed]]);
    runRows('hot flow stress', [
      ...row('Misaka and Yoshimoto 1967', 'misaka', 0.002, 1000, 0.3, 100, '163.9'), ...row('Misaka and Yoshimoto 1967', 'misaka', 0.002, 1100, 0.3, 100, '134.9'), ...row('Misaka and Yoshimoto 1967', 'misaka', 0.0045, 1100, 0.3, 50, '131.8'),
      ...row('Shida 1968', 'shida', 0.002, 1100, 0.3, 50, '134.1'), ...row('Shida 1968', 'shida', 0.0045, 1000, 0.2, 10, '136.6'), ...row('Spittel and Spittel 2009, C45', 'spittel', 0.0045, 1100, 0.3, 100, '166.7'), ...row('Spittel and Spittel 2009, C22', 'spittel', 0.0022, 1000, 0.3, 10, '133.9'),
    ], (one) => at(one.law, one.carbon, one.celsius, one.strain, one.rate));
  });

  test('energy of an ideal upset, efficiency of a blow, denting of a thick bar', () => {
    const stroke: Stroke = { section: { height: 0.0254, width: 0.0254 }, bite: 0.0254, temperature: 1300, speed: 4, friction: 0, held: 0 };
    runRows('upset of an inch cube to half', rowsOf('E = V s ln(h0/h1), 100 MPa', 'recomputed', stroke, [['J', '1136']]), (one) => energyFor(one, Math.LN2, () => ({ state: 'known', stress: 100e6 })) as number);
    runRows('work of denting over an even squeeze', rowsOf('Hill, The Mathematical Theory of Plasticity, indentation from both sides', 'from memory', 8.7, [['ratio', '2.57', { relative: 0.03 }]]), (thick) => dentingWork(thick, 1));
    type Ratio = { ratio: number; rebound: number };
    const efficiency = ({ ratio, rebound }: Ratio): number => {
      const answer = capacityOf({ ...input(), anvilRatio: exactly(ratio), restitution: exactly(rebound), draws: 100 }, 1);
      return answer.state === 'known' && answer.efficiency.state === 'known' ? answer.efficiency.value : Number.NaN;
    };
    runRows('share of the blow in the work', ([[20, 0.25, '.8929'], [10, 0, '.9091'], [10, 0.25, '.8523'], [5, 0.5, '.6250']] as const).flatMap(([ratio, rebound, printed]) => rowsOf<Ratio>('(1 - e²) R/(R + 1)', 'recomputed', { ratio, rebound }, [['share', printed]])), efficiency);
  });

  test('the quick time of a heat is the exact one, also close to the balance', () => {
    const heat: Heat = { bar: { section: 'square', size: 0.0254, carbon: 0.002 }, from: 1373, to: 1123, bite: 0.06, rate: 5, energy: 150, emissivity: 0.8, film: 10, heatCapacity: 650, pressedContact: 1e4, contactTime: 0.004, lyingContact: 800, dieTemperature: 373, striking: 0.45, firstBlow: 3, hotLength: 6 };
    let worst = 0;
    for (const energy of [20, 150, 600, 900, 1100]) {
      for (const size of [0.01, 0.0254, 0.06]) {
        const one = { ...heat, energy, bar: { ...heat.bar, size } };
        const surface = 4 * size * Math.max(6 * size, 0.06);
        const share = Math.min(0.5, (2 * 0.06 * size) / surface) * 0.45;
        const coefficient = 1e4 * 0.004 * 5 + 400;
        const flux = (0.9 * energy * 5 * 0.45) / surface;
        const exact = timeBetween(1373, 1123, { thickness: size / 4, density: 7600, heatCapacity: 650, emissivity: 0.8 }, { air: 293, walls: 293, film: 10, contact: { share, coefficient, temperature: 373 + flux / (share * coefficient) } });
        const quick = heatTime(one);
        if (exact.state !== 'known') expect(quick).toBeNaN();
        else worst = Math.max(worst, Math.abs(quick / exact.time - 1));
      }
    }
    console.log(`time of a heat: quick against exact, worst ${worst.toExponential(1)}`);
    expect(worst).toBeGreaterThan(0);
    expect(worst).toBeLessThan(1e-5);
  });
});
