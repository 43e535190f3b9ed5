import type { NoiseSource } from './noise-source.ts';

/**
 * A workshop without blows: mains hum and its harmonics, motor tones that breathe, and pink noise; mean square one.
 * @param hum share of the tones in the power, 0 to 1
 */
export function background(length: number, rate: number, hum: number, noise: NoiseSource): Float64Array {
  const out = new Float64Array(length);
  // Pink noise by P. Kellet's three-pole sum.
  let [b0, b1, b2] = [0, 0, 0];
  for (let i = 0; i < length; i++) {
    const white = noise.normal();
    b0 = 0.99765 * b0 + white * 0.099046;
    b1 = 0.963 * b1 + white * 0.2965164;
    b2 = 0.57 * b2 + white * 1.0526913;
    out[i] = b0 + b1 + b2 + white * 0.1848;
  }
  toPower(out, 1 - hum);
  const tones = new Float64Array(length);
  const mains = noise.oneOf([50, 60]);
  const shaft = noise.between(23, 29);
  for (let k = 1; k <= 10; k++) tone(mains * 2 * k, 1 / k, 0);
  for (let k = 1; k <= 12; k++) tone(shaft * k, noise.uniform() / Math.sqrt(k), noise.between(0.1, 0.4));
  for (let k = 0; k < 3; k++) tone(noise.between(400, 2500), 0.1 * noise.uniform(), 0.3); // gears and bearings
  toPower(tones, hum);
  for (let i = 0; i < length; i++) out[i]! += tones[i]!;
  return out;

  function tone(frequency: number, height: number, breathing: number): void {
    if (frequency > 0.4 * rate) return;
    const turn = (2 * Math.PI * frequency) / rate;
    const slow = (2 * Math.PI * noise.between(0.3, 2)) / rate;
    const [phase, slowPhase] = [noise.between(0, 6.28), noise.between(0, 6.28)];
    for (let i = 0; i < length; i++) tones[i]! += height * Math.sin(turn * i + phase) * (1 + breathing * Math.sin(slow * i + slowPhase));
  }
}

function toPower(row: Float64Array, power: number): void {
  let sum = 0;
  for (const x of row) sum += x * x;
  const scale = sum > 0 ? Math.sqrt((power * row.length) / sum) : 0;
  for (let i = 0; i < row.length; i++) row[i]! *= scale;
}
