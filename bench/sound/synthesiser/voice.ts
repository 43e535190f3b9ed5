import type { NoiseSource } from './noise-source.ts';
import type { Material } from './recipe.ts';

interface Mode {
  readonly frequency: number;
  /** s, to 1/e of its height */
  readonly decay: number;
  readonly height: number;
}

/** How one struck thing sounds: partial tones, duration of the contact, and a burst of noise. */
export interface Voice {
  readonly modes: readonly Mode[];
  /** s */
  readonly contact: number;
  /** height of the noise burst against the sum of the modes */
  readonly noise: number;
  /** s */
  readonly noiseDecay: number;
  /** Hz, corner of the burst's low-pass */
  readonly noiseCorner: number;
  /** makes the usual impact's energy one */
  readonly scale: number;
}

interface Palette {
  readonly count: number;
  readonly frequencies: readonly [number, number];
  readonly decays: readonly [number, number];
  readonly contact: readonly [number, number];
  readonly noise: number;
  readonly noiseDecay: number;
}

/** From memory and ear; no published values. */
const PALETTES: Record<Material, Palette> = {
  steel: { count: 14, frequencies: [250, 9000], decays: [0.008, 0.04], contact: [0.0003, 0.0006], noise: 0.5, noiseDecay: 0.003 },
  ringing: { count: 10, frequencies: [400, 7000], decays: [0.05, 0.2], contact: [0.0002, 0.0004], noise: 0.35, noiseDecay: 0.003 },
  hot: { count: 8, frequencies: [60, 900], decays: [0.006, 0.03], contact: [0.0012, 0.0028], noise: 0.8, noiseDecay: 0.004 },
  wood: { count: 8, frequencies: [120, 2500], decays: [0.004, 0.015], contact: [0.0007, 0.0014], noise: 0.6, noiseDecay: 0.003 },
};

/** A voice of a material; two calls give two different machines of the same kind. */
export function makeVoice(material: Material, rate: number, noise: NoiseSource): Voice {
  const palette = PALETTES[material];
  const modes: Mode[] = [];
  const [low, high] = palette.frequencies;
  for (let i = 0; i < palette.count; i++) {
    const frequency = Math.min(0.42 * rate, low * (high / low) ** ((i + noise.uniform()) / palette.count));
    const decay = palette.decays[0] * (palette.decays[1] / palette.decays[0]) ** noise.uniform() * (low / frequency) ** 0.2;
    modes.push({ frequency, decay, height: 10 ** (noise.normal() * 0.25) });
  }
  modes.push({ frequency: noise.between(60, 120), decay: noise.between(0.02, 0.05), height: noise.between(0.2, 0.7) }); // the floor
  const contact = noise.between(...palette.contact);
  return normalised({ modes, contact, noise: palette.noise, noiseDecay: palette.noiseDecay, noiseCorner: Math.min(0.4 * rate, 1.2 / contact), scale: 1 }, rate, noise);
}

/** The same machine struck softer: longer contact, another mix of its tones. */
export function softerVoice(voice: Voice, rate: number, noise: NoiseSource): Voice {
  const modes = voice.modes.map((mode) => ({ ...mode, height: mode.height * 10 ** (noise.normal() * 0.25) }));
  return normalised({ ...voice, modes, contact: voice.contact * 1.6, noiseCorner: voice.noiseCorner / 1.6 }, rate, noise);
}

function normalised(voice: Voice, rate: number, noise: NoiseSource): Voice {
  const trial = new Float64Array(Math.ceil(1.2 * rate));
  const energy = strike(trial, rate, { ...voice, scale: 1 }, 0.01, 1, noise, 0);
  return { ...voice, scale: 1 / Math.sqrt(energy) };
}

/** Spectrum of a half-sine push against its value at zero. */
function pushAt(frequency: number, contact: number): number {
  const x = 2 * frequency * contact;
  return Math.abs(x - 1) < 1e-3 ? Math.PI / 4 : Math.abs(Math.cos((Math.PI * x) / 2) / (1 - x * x));
}

/**
 * Adds one impact to a row.
 * @param time s, need not fall on a sample
 * @param height factor on the voice's usual height
 * @param spread dB, how far each tone's level strays from blow to blow
 * @returns energy of what was added (sum of squares over the rate)
 */
export function strike(row: Float64Array, rate: number, voice: Voice, time: number, height: number, noise: NoiseSource, spread = 2): number {
  const first = Math.ceil(time * rate);
  const contact = voice.contact * (1 + 0.1 * Math.max(-2, Math.min(2, noise.normal())));
  const longest = Math.min(Math.ceil(rate), row.length - first);
  if (longest <= 0) return 0;
  const own = new Float64Array(longest);
  let reach = 0;
  let sumOfHeights = 0;
  const ramp = Math.max(1, Math.round(contact * rate));
  for (const mode of voice.modes) {
    const size = voice.scale * height * mode.height * pushAt(mode.frequency, contact) * 10 ** ((noise.normal() * spread) / 20);
    sumOfHeights += size * size;
    const length = Math.min(longest, Math.ceil(6.9 * mode.decay * rate));
    reach = Math.max(reach, length);
    const late = first / rate - time;
    const shrink = Math.exp(-1 / (mode.decay * rate));
    const turn = (2 * Math.PI * mode.frequency) / rate;
    const [c, s] = [shrink * Math.cos(turn), shrink * Math.sin(turn)];
    let x = size * Math.exp(-late / mode.decay) * Math.cos(2 * Math.PI * mode.frequency * late);
    let y = size * Math.exp(-late / mode.decay) * Math.sin(2 * Math.PI * mode.frequency * late);
    for (let i = 0; i < length; i++) {
      own[i]! += i < ramp ? y * (0.5 - 0.5 * Math.cos((Math.PI * i) / ramp)) : y;
      const next = x * c - y * s;
      y = x * s + y * c;
      x = next;
    }
  }
  const burst = Math.min(longest, Math.ceil(7 * voice.noiseDecay * rate));
  const smooth = Math.exp((-2 * Math.PI * voice.noiseCorner) / rate);
  const size = voice.noise * Math.sqrt(sumOfHeights) / Math.sqrt(Math.max(1e-6, (1 - smooth) / (1 + smooth)));
  let held = 0;
  for (let i = 0; i < burst; i++) {
    held = held * smooth + (1 - smooth) * noise.normal();
    own[i]! += size * held * Math.exp(-i / (voice.noiseDecay * rate)) * (i < ramp ? 0.5 - 0.5 * Math.cos((Math.PI * i) / ramp) : 1);
  }
  reach = Math.max(reach, burst);
  let energy = 0;
  for (let i = 0; i < reach; i++) {
    row[first + i]! += own[i]!;
    energy += own[i]! * own[i]!;
  }
  return energy / rate;
}
