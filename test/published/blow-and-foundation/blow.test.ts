import fc from 'fast-check';
import { expect, test } from 'vitest';
import { BLOW_EFFICIENCY, drivenRamEnergy, peakForce } from '../../../src/methods/forming/index.ts';
import { anvilSpeed, blowEfficiency, drivenResistance, plasticImpact, stoppingForce } from '../../../src/methods/ground/index.ts';
import { byFigure, rowsOf, runRows } from '../row.ts';
import { kN, mm } from '../units.ts';

test('share of the blow that the anvil gives to the work', () => {
  const printed: readonly (readonly [number, string])[] = [[20, '.9524 .8929 .7143 .4857'], [10, '.9091 .8523 .6818 .4636'], [5, '.8333 .7813 .6250 .4250']];
  runRows('anvil ratio', [
    ...printed.flatMap(([ratio, shares]) => shares.split(' ').flatMap((share, i) => {
      const restitution = [0, 0.25, 0.5, 0.7][i]!;
      return rowsOf('two free rigid bodies, (1 - e²) R/(R + 1)', 'recomputed', { ratio, restitution }, [[`R ${ratio}, e ${restitution}`, share]]);
    })),
    ...rowsOf('95 per cent at a dead blow', 'recomputed', { ratio: 19, restitution: 0 }, [['R 19, e 0', '.95']]),
  ], (x) => blowEfficiency(x.ratio, x.restitution));
});

test('the share is what momentum and restitution leave, whatever the masses', () => {
  const positive = fc.double({ min: 0.1, max: 1000, noNaN: true });
  fc.assert(fc.property(positive, positive, positive, fc.double({ min: 0, max: 1, noNaN: true }), (ram, anvil, speed, restitution) => {
    const after = anvilSpeed(ram, anvil, speed, restitution);
    const rebound = after - restitution * speed;
    expect(Math.abs(ram * rebound + anvil * after - ram * speed)).toBeLessThan(1e-9 * ram * speed);
    const kept = 0.5 * ram * rebound ** 2 + 0.5 * anvil * after ** 2;
    const blow = 0.5 * ram * speed ** 2;
    expect(blowEfficiency(anvil / ram, restitution)).toBeCloseTo((blow - kept) / blow, 9);
    expect(plasticImpact(ram, anvil, speed).lost / blow).toBeCloseTo(blowEfficiency(anvil / ram, 0), 9);
  }), { numRuns: 300, seed: 51 });
});

test('peak force and energy of a hammer blow', () => {
  const inputs = { energy: 47.5e3, efficiency: 0.4, way: 5 * mm };
  type Blow = typeof inputs;
  const taken = (x: Blow): number => x.energy * x.efficiency;
  const asm = 'ASM Handbook vol. 14, Hammers and Presses for Forging';
  runRows('hammer blow', [
    ...rowsOf(`${asm}, eq. 11`, 'read', inputs, [['energy into the work, kJ', '19']]),
    ...rowsOf(`${asm}, eq. 13`, 'recomputed', inputs, [['peak force, kN', '5700']]),
  ], byFigure<Blow>({ 'energy into the work, kJ': (x) => taken(x) / 1000, 'peak force, kN': (x) => peakForce(taken(x), x.way) / kN }));
  // The area under a force rising from P/3 to P is the energy.
  expect(((peakForce(19e3, 5 * mm) * (1 + 1 / 3)) / 2) * 5 * mm).toBeCloseTo(19e3, 6);
  expect([BLOW_EFFICIENCY.soft, BLOW_EFFICIENCY.hard]).toEqual([{ least: 0.8, most: 0.9 }, { least: 0.2, most: 0.5 }]);
  // E = (mg + pA)H: without a driving force it is the fall alone.
  expect(drivenRamEnergy(50, 9.80665, 0, 0.3)).toBeCloseTo(0.5 * 50 * 2 * 9.80665 * 0.3, 9);
  expect(drivenRamEnergy(50, 9.80665, 1000, 0.3) - drivenRamEnergy(50, 9.80665, 0, 0.3)).toBeCloseTo(300, 9);
});

test('dead blows on piles', () => {
  const inputs = { ram: 300, pile: 500, fall: 1, way: 0.15 };
  type Pile = typeof inputs;
  // The books take g as 9.81.
  const impact = (x: Pile) => plasticImpact(x.ram, x.pile, Math.sqrt(2 * 9.81 * x.fall));
  const force = (x: Pile): number => stoppingForce(impact(x), x.ram + x.pile, x.way, 9.81);
  const tayal: Pile = { ram: 750, pile: 200, fall: 1.2, way: 0.1 };
  const figures = byFigure<Pile>({ 'energy lost, J': (x) => impact(x).lost, 'resistance, kN': (x) => force(x) / kN });
  runRows('plastic impact', [
    ...rowsOf('Khurmi, ex. 3.9, p. 43', 'transcribed', inputs, [['energy lost, J', '1839'], ['resistance, kN', '15.206']]),
    ...rowsOf('Khurmi, ex. 3.9, p. 43', 'recomputed', inputs, [['energy lost, J', '1839.4'], ['resistance, kN', '15.2055']]),
    ...rowsOf('Tayal, Engineering Mechanics, ex. 18.11', 'transcribed', tayal, [['resistance, kN', '79.022']]),
  ], figures);
  const das = { ramWeight: 7.5, pileWeight: 12.55, ramEnergy: 360, efficiency: 0.8, set: 1 / 8, give: 0.1, restitution: 0.4 };
  const book = 'Das, Principles of Foundation Engineering, ex. 11.9, p. 567';
  runRows('driven pile', [
    ...rowsOf(book, 'transcribed', das, [['resistance, kip', '607'], ['allowed, kip', '101']]),
    ...rowsOf(book, 'recomputed', das, [['resistance, kip', '606.99'], ['allowed, kip', '101.17'], ['share of masses', '.4742']]),
  ], byFigure<typeof das>({
    'resistance, kip': drivenResistance, 'allowed, kip': (x) => drivenResistance(x) / 6, 'share of masses': (x) => (drivenResistance(x) * (x.set + x.give)) / (x.efficiency * x.ramEnergy),
  }));
});
