import { describe, expect, it } from 'vitest';
import { RECKONINGS } from '../../src/cli/reckon/catalogue.ts';
import { typed } from './at-the-door.ts';

interface Said {
  readonly state: string;
  readonly because?: string;
  readonly lines?: readonly { readonly words: string; readonly quantity?: { readonly dimension: string; readonly value: number; readonly uncertainty: number }; readonly says?: string }[];
  readonly warnings?: readonly string[];
}

const reckoned = async (words: string): Promise<Said> => JSON.parse((await typed(['reckon', ...words.split(' ').map((word) => word.replaceAll('_', ' ')), '--json'])).out) as Said;
const value = (said: Said, words: string): number => said.lines?.find((line) => line.words === words)?.quantity?.value ?? Number.NaN;

/** Figures that can be had on paper; the formulas themselves are held against their books elsewhere. */
const HAND: readonly { readonly words: string; readonly line: string; readonly si: number; readonly digits: number; readonly from: string }[] = [
  { words: 'spring --wire 10_mm --inside-diameter 50_mm --coils 10 --free-length 200_mm --installed-length 180_mm --shortest-length 150_mm --shear-modulus 80_GPa', line: 'rate', si: (80e9 * 0.01 ** 4) / (8 * 0.06 ** 3 * 8), digits: 3, from: 'G d^4 / 8 D^3 n' },
  { words: 'pulley --motor-speed 1740_rpm --driven 14_in --wanted 325_rpm --slip 0_%', line: 'motor pulley for the rate', si: ((325 * 14) / 1740) * 0.0254, digits: 6, from: 'ratio of diameters' },
  { words: 'belt-length --small 4_in --large 4_in --centres 40_in', line: 'length', si: (80 + Math.PI * 4) * 0.0254, digits: 9, from: 'two equal pulleys' },
  { words: 'toggle --half-span 10_in --rise 1_in --force 100_lbf', line: 'ratio', si: 5, digits: 9, from: '10 / (2 x 1)' },
  { words: 'anvil-ratio --ram 50_lb --anvil 500_lb --restitution 0', line: 'share of the blow that the work gets', si: 10 / 11, digits: 9, from: 'R / (R + 1)' },
  { words: 'voltage --ab 240_V --bc 240_V --ca 210_V', line: 'unbalance', si: 20 / 230, digits: 9, from: '20 off a mean of 230' },
  { words: 'noise --level 100_dB --time 1_h', line: 'time allowed, OSHA', si: 7200, digits: 1, from: '29 CFR 1910.95, table G-16: 2 h at 100 dBA' },
  { words: 'noise --level 100_dB --time 1_h', line: 'time allowed, NIOSH', si: 900, digits: 1, from: 'NIOSH 98-126, table 1-1: 15 min at 100 dBA' },
  { words: 'motor-speed --speed 1740_rpm', line: 'poles', si: 4, digits: 9, from: '1800 rpm at 60 Hz' },
  { words: 'motor-current --power 5_hp --phases 3', line: 'full-load current', si: 15.2, digits: 9, from: 'NEC table 430.250' },
  { words: 'key --diameter 2_in', line: 'width, and height where square', si: 0.0127, digits: 9, from: 'ANSI B17.1: 1/2 in over 1 3/4 to 2 1/4' },
  { words: 'ram-energy --mass 10_kg --fall 1_m', line: 'energy', si: 98.0665, digits: 9, from: 'm g H' },
  { words: 'ram-prop --mass 100_lb --length 20_in', line: 'side', si: 4 * 0.0254, digits: 9, from: '29 CFR 1910.218, table O-11' },
  { words: 'seat-pressure --energy 100_J --stop 1_mm --width 50_mm --length 100_mm', line: 'pressure on the seat', si: 40e6, digits: 3, from: '2 x 100 J / 1 mm over 5000 mm2' },
];

describe('reckoning at the command line', () => {
  it.each(HAND)('$words: $line, $from', async ({ words, line, si, digits }) => {
    expect(value(await reckoned(words), line)).toBeCloseTo(si, digits);
  });

  it('has a name, a source, a validity and plain inputs for every calculation, each name once', () => {
    expect(new Set(RECKONINGS.map((one) => one.name)).size).toBe(RECKONINGS.length);
    expect(RECKONINGS.length).toBeGreaterThanOrEqual(30);
    for (const one of RECKONINGS) {
      for (const text of [one.title, one.formula, one.source, one.validity]) expect(text.length, one.name).toBeGreaterThan(4);
      expect(new Set(one.inputs.map((input) => input.name)).size).toBe(one.inputs.length);
      for (const input of one.inputs) expect(input.name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    }
  });

  it.each(RECKONINGS.map((one) => ({ name: one.name, one })))('$name gives finite figures on ordinary input, and shows its source and where it holds', async ({ one }) => {
    const words = one.inputs.flatMap((input) => (input.usual === undefined ? [`--${input.name}`, ORDINARY[`${one.name}.${input.name}`] ?? ORDINARY[input.kind] ?? ''] : []));
    const heard = await typed(['reckon', one.name, ...words]);
    expect(heard.err).toBe('');
    expect(heard.exit).toBe(0);
    expect(heard.out).toContain(`source: ${one.source}`);
    expect(heard.out).toContain(`holds for: ${one.validity}`);
    expect(heard.out).not.toMatch(/NaN|Infinity|undefined/);
    const said = JSON.parse((await typed(['reckon', one.name, ...words, '--json'])).out) as Said;
    expect(said.lines?.length).toBeGreaterThan(0);
    for (const line of said.lines ?? []) if (line.quantity !== undefined) expect(Number.isFinite(line.quantity.value)).toBe(true);
  });

  it.each(RECKONINGS.map((one) => one.name))('%s --help names every input with its usual value', async (name) => {
    const heard = await typed(['reckon', name, '--help']);
    const one = RECKONINGS.find((each) => each.name === name)!;
    expect(heard.exit).toBe(0);
    for (const input of one.inputs) {
      expect(heard.out).toContain(`--${input.name} <`);
      if (input.usual !== undefined) expect(heard.out.replace(/\s+/g, ' ')).toContain(`(usual: ${input.usual})`);
    }
  });

  it('carries a written doubt through, and takes a bare figure as exact', async () => {
    const bare = await reckoned('toggle --half-span 10_in --rise 1_in');
    const doubtful = await reckoned('toggle --half-span 10_in --rise 1_±_0.02_in');
    const line = (said: Said): number => said.lines?.find((each) => each.words === 'ratio')?.quantity?.uncertainty ?? Number.NaN;
    expect(line(bare)).toBe(0);
    // ± 0.02 is twice the standard uncertainty; the ratio goes as 1/rise, so 1 % of 5.
    expect(line(doubtful)).toBeCloseTo(0.05, 4);
  });

  it('warns beside the figure, and gives no figure outside its table', async () => {
    const tight = await reckoned('spring --wire 1/2_in --inside-diameter 2_1/2_in --coils 10 --free-length 6.7_in --installed-length 6_in --shortest-length 5.1_in');
    expect(tight.warnings?.join(' ')).toMatch(/less than 15 % of the travel/);
    const heard = await typed(['reckon', 'key', '--diameter', '20 in']);
    expect(heard.exit).toBe(20);
    expect(heard.out).toMatch(/No figure: .*over 5\/16 to 6 1\/2 in/);
    const thick = await reckoned('wire-strength --wire 1_in --inside-diameter 4_in');
    expect(thick).toMatchObject({ state: 'outside-validity' });
  });

  it.each([
    [['spring', '--wire', '3 kg'], /--wire: kg measures a weight[\s\S]*--inside-diameter is missing; inside diameter of the coils, such as/],
    [['sprng'], /did you mean spring/],
    [['fit', '--size', '1 in', '--hole', 'Q9'], /a letter and a grade[\s\S]*Q9/],
    [['belt-length', '--small', '10 in', '--large', '10 in', '--centres', '3 in'], /pulleys would touch/],
    [['journal', '--diameter', '0 in', '--clearance', '1 thou', '--shims', '1 thou'], /./],
    [['noise', '--level', 'loud'], /--level: /],
    [['converter', '--motor', '2 hp', '--starting', 'gently'], /one of easy, flywheel, hard: gently/],
  ])('says of %j what is wrong and exits with 2', async (words, message) => {
    const heard = await typed(['reckon', ...words]);
    expect(heard.exit).toBe(2);
    expect(heard.err).toMatch(message);
    expect(heard.err).not.toMatch(/\n\s+at |programm?er/);
  });
});

/** Ordinary input by kind, and by name where the kind alone will not do. */
const ORDINARY: Readonly<Record<string, string>> = {
  length: '2 in', mass: '60 lb', force: '300 lbf', rotation: '320 rpm', power: '2 hp', pressure: '100 MPa', stiffness: '400 lbf/in', temperature: '1000 °C', count: '8', energy: '150 J', voltage: '230 V', level: '95 dB', velocity: '4 m/s', angle: '40 deg', time: '1 h', ratio: '0.3', frequency: '60 Hz',
  'spring.wire': '7/16 in', 'spring.inside-diameter': '2 1/4 in', 'spring.free-length': '6 1/2 in', 'spring.installed-length': '5 7/8 in', 'spring.shortest-length': '5 in',
  'leaf-spring.thickness': '5/16 in', 'leaf-spring.span': '28 in', 'spring-buckling.free-length': '12 in', 'journal.clearance': '4 thou', 'journal.shims': '20 thou', 'wire-strength.wire': '0.3 in', 'wire-strength.inside-diameter': '2 in',
  'oil-film.length': '3 in', 'oil-film.clearance': '3 thou', 'belt.large': '14 in', 'belt.centres': '50 in', 'belt.small': '4 in', 'belt.speed': '1140 rpm', 'belt-length.centres': '50 in',
  'pulley.motor-speed': '1140 rpm', 'pulley.driven': '14 in', 'crank.rod': '14 in', 'toggle.rise': '1/2 in', 'taper-key.gap': '5 thou', 'upset.height': '3 in', 'upset.new-height': '2 in', 'blow.new-height': '1 in', 'drop.stop': '2 mm',
  'cooling.to': '800 °C', 'cooling.thickness': '1/2 in', 'flow-stress.temperature': '1000 °C', 'motor-speed.speed': '1740 rpm', 'anvil-ratio.anvil': '600 lb', 'foundation.anvil': '1800 lb', 'foundation.block': '6000 lb', 'foundation.pad-stiffness': '200000 lbf/in', 'foundation.ground-stiffness': '500000 lbf/in', 'capacitor.reactive': '1 kW',
};
