import type { Estimate } from '../../src/methods/chance/index.ts';
import type { CapacityInput, Stroke } from '../../src/derived/capacity/index.ts';

export const exactly = (value: number): Estimate => ({ value, uncertainty: 0 });

/** A 50 lb class hammer on an inch of mild steel at 1100 °C. */
export const input = (): CapacityInput => ({
  bar: { section: 'square', size: 0.0254, carbon: 0.002 }, temperature: { value: 1373, uncertainty: 25 }, dieWidth: { value: 0.0635, uncertainty: 0.001 }, blowEnergy: { value: 180, uncertainty: 40 }, ramMass: { value: 24, uncertainty: 0.5 },
  anvilRatio: { value: 11, uncertainty: 1 }, restitution: { value: 0.25, uncertainty: 0.05 }, rate: { value: 5.3, uncertainty: 0.1 }, draws: 300,
});

export const stroke = (): Stroke => ({ section: { height: 0.0254, width: 0.0254 }, bite: 0.06, temperature: 1343, speed: 3.8, friction: 0.3, held: 0.1 });
