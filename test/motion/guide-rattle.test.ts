import { expect, it } from 'vitest';
import { guideRattle, runHammer, usualHammer } from '../../src/derived/motion/index.ts';
import type { MotionTrace } from '../../src/derived/motion/index.ts';

const steady = (side: (t: number) => number, seconds = 2, every = 1e-3): MotionTrace => {
  const count = Math.round(seconds / every) + 1;
  const time = Float64Array.from({ length: count }, (_, i) => i * every);
  const none = new Float64Array(count);
  return { time, side: time.map(side), angle: none, gap: none, speed: none, carrier: none, force: none, rod: none, energy: none, crankSpeed: none, hang: none };
};

it('a steady push crosses once, arrives with the speed of the fall, and hops to rest', () => {
  // 25 kg pushed by 250 N over 2 x 1 mm: v = sqrt(2 a s) = 0.2 m/s.
  const r = guideRattle(steady(() => 250), 25, 1e-3, 4);
  expect(Math.abs(r.hardest - 0.2)).toBeLessThan(1e-9);
  expect(r.level!).toBeCloseTo(20 * Math.log10(0.05), 6);
  // Hops at 0.2, 0.06, 0.018, 0.0054 and 0.0016 m/s are counted, the next is below a millimetre a second.
  expect(r.strikesPerSecond * 2).toBeCloseTo(5, 6);
});
it('a push that turns round throws it across each time', () => {
  const r = guideRattle(steady((t) => (Math.floor(t / 0.1) % 2 === 0 ? 250 : -250)), 25, 1e-3, 4);
  expect(r.hardest).toBeGreaterThan(0.19);
  expect(r.strikesPerSecond).toBeGreaterThan(10);
});
it('no play, no strike; a loose guide on a healthy hammer is far below the blow', () => {
  const b = usualHammer(25).spec;
  const r = runHammer(b, { traceSeconds: 2 });
  if (r.outcome !== 'ran') throw new Error(r.outcome);
  expect(guideRattle(r.trace, b.ramMass, 0, r.impactSpeed).strikesPerSecond).toBe(0);
  for (const slop of [0.15e-3, 0.5e-3, 1e-3, 2e-3]) {
    const rattle = guideRattle(r.trace, b.ramMass, slop, r.impactSpeed);
    console.log(`half play ${slop * 1e3} mm: ${rattle.strikesPerSecond.toFixed(0)} strikes a second, hardest ${rattle.hardest.toFixed(3)} m/s, ${rattle.level!.toFixed(1)} dB`);
    expect(rattle.level!).toBeLessThan(-15);
  }
});
