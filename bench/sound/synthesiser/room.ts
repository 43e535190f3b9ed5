import type { NoiseSource } from './noise-source.ts';
import type { Recipe } from './recipe.ts';

/**
 * What a room makes of a click: the direct sound, some early reflections, a diffuse tail whose high part dies sooner,
 * and a wall's echo if there is one.
 */
export function roomResponse(room: Recipe['room'], rate: number, noise: NoiseSource): Float64Array {
  const length = Math.ceil(Math.min(1.1, room.decay * 0.9) * rate);
  const out = new Float64Array(length);
  const start = Math.round(0.004 * rate);
  let energy = 0;
  let low = 0;
  const smooth = Math.exp((-2 * Math.PI * 1200) / rate);
  for (let i = start; i < length; i++) {
    const white = noise.normal();
    low = low * smooth + (1 - smooth) * white;
    const t = i / rate;
    const value = 3 * low * Math.exp((-6.91 * t) / room.decay) + 0.5 * (white - low) * Math.exp((-6.91 * t) / (0.6 * room.decay));
    out[i] = value;
    energy += value * value;
  }
  const scale = Math.sqrt(10 ** (-room.direct / 10) / energy);
  for (let i = start; i < length; i++) out[i]! *= scale;
  for (let k = 0; k < 7; k++) {
    const at = Math.round(noise.between(0.002, 0.025) * rate);
    if (at < length) out[at]! += noise.oneOf([-1, 1]) * 10 ** (noise.between(-20, -8) / 20);
  }
  if (room.echo) {
    // A wall swallows a little of the high part, so its echo is smeared over some samples.
    const at = Math.round(room.echo.delay * rate);
    const height = 10 ** (room.echo.level / 20);
    for (let i = 0; i < 3; i++) if (at + i < length) out[at + i]! += height * [0.25, 0.5, 0.25][i]! * 1.6;
  }
  out[0]! += 1;
  return out;
}
