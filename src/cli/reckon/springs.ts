import {
  activeCoils, buckling, forceAtStress, helicalRate, helicalStress, leafDeflection, leafRate, leafStress, leastCoilGaps, orderHelicalSpring, permissibleSolidStress, SEATING, solidLength, springIndex,
  surgeFrequency, wahlFactor, wireStrength, type CoilEnds, type Seating, type WireKind, type WireTable,
} from '../../methods/elements/index.ts';
import { answer, figure, outside, saying, warnIf, type Reckoning } from './reckoning.ts';

const ENDS = ['cold-ground', 'cold-unground', 'hot-ground', 'hot-unground', 'plain', 'plain-ground', 'squared'] as const;
const KINDS = ['music', 'oil-tempered', 'hard-drawn', 'chrome-vanadium', 'chrome-silicon'] as const;
const STEEL_DENSITY = 7850;
const INCH = 0.0254;
/** Sizes in which spring wire and bar can be had: sixteenths and thirty-seconds of an inch. */
const WIRES = Array.from({ length: 32 }, (_, index) => ((index + 1) / 32) * INCH);

const SPRING: Reckoning = {
  name: 'spring', title: 'Coil spring of round wire: rate, stress and what is left of its travel',
  formula: 'k = G d⁴ / (8 D³ n); τ = K 8 F D / (π d³) with Wahl\'s K = (4C − 1)/(4C − 4) + 0.615/C',
  source: 'EN 13906-1:2013; A. M. Wahl, Mechanical Springs; Bhandari, Design of Machine Elements, ch. 10',
  validity: 'round wire, index 4 to 20, pitch angle below about 7.5 degrees, all coils alike',
  inputs: [
    { name: 'wire', kind: 'length', words: 'diameter of the wire' },
    { name: 'inside-diameter', kind: 'length', words: 'inside diameter of the coils' },
    { name: 'coils', kind: 'count', words: 'all coils, the dead ones too' },
    { name: 'free-length', kind: 'length', words: 'length out of the hammer' },
    { name: 'installed-length', kind: 'length', words: 'length as set' },
    { name: 'shortest-length', kind: 'length', words: 'shortest length seen at full tread' },
    { name: 'ends', kind: 'choice', words: 'how the ends are made', choices: ENDS, usual: 'cold-ground' },
    { name: 'shear-modulus', kind: 'pressure', words: 'shear modulus of the wire', usual: '79.5 GPa' },
    { name: 'tensile-strength', kind: 'pressure', words: 'tensile strength of the wire', usual: '1380 MPa' },
  ],
  run: (given) => {
    const wire = given.of('wire');
    const mean = given.of('inside-diameter') + wire;
    const ends = given.choice('ends') as CoilEnds;
    const active = activeCoils(given.of('coils'), ends);
    if (!(active > 0)) return outside(`these ends leave no working coil; more coils than that are wanted: ${given.of('coils')}`);
    const index = springIndex(mean, wire);
    const factor = wahlFactor(index);
    const rate = helicalRate(given.of('shear-modulus'), wire, mean, active);
    const solid = solidLength(wire, given.of('coils'), ends);
    const free = given.of('free-length');
    const shortest = given.of('shortest-length');
    const stressAt = (length: number): number => helicalStress(rate * Math.max(0, free - length), mean, wire, factor);
    const permissible = permissibleSolidStress(given.of('tensile-strength'));
    const left = (shortest - solid) / (free - solid);
    const gap = leastCoilGaps(wire, mean, active, ends.startsWith('hot') ? 'hot' : 'cold', true);
    return answer(
      [
        figure('index', 'ratio', index), figure('working coils', 'count', active), figure('rate', 'stiffness', rate), figure('solid length', 'length', solid),
        figure('preload as set', 'force', rate * (free - given.of('installed-length'))), figure('load at the shortest length', 'force', rate * (free - shortest)),
        figure('stress at the shortest length', 'pressure', stressAt(shortest)), figure('stress when solid', 'pressure', stressAt(solid)), figure('stress that the wire stands when solid', 'pressure', permissible),
        figure('share of the travel left', 'ratio', left), figure('least sum of gaps to keep', 'length', gap), figure('surge of the coils', 'frequency', surgeFrequency(wire, mean, active, given.of('shear-modulus'), STEEL_DENSITY)),
      ],
      warnIf(index < 4 || index > 20, `the index lies outside what the formula is good for; 4 to 20 is allowed: ${index.toFixed(2)}`),
      warnIf(left < 0.15, `less than 15 % of the travel is left; the coils come close to touching: ${(100 * left).toFixed(0)} %`),
      warnIf(stressAt(solid) > permissible, 'solid, the wire is loaded beyond what it stands'),
    );
  },
};

const ORDER: Reckoning = {
  name: 'spring-order', title: 'Coil spring to order: wire, coils and lengths for a load and a rate',
  formula: 'd = √(8 F C K / (π τ)), rounded up to a size that can be had; n = G d⁴ / (8 D³ k); L0 = solid + F/k + gaps',
  source: 'Bhandari, Design of Machine Elements, ex. 10.1 and others; EN 13906-1:2013 for the ends',
  validity: 'round wire in steps of 1/32 in up to 1 in, index 4 to 20',
  inputs: [
    { name: 'load', kind: 'force', words: 'greatest load' },
    { name: 'rate', kind: 'stiffness', words: 'rate wanted' },
    { name: 'index', kind: 'ratio', words: 'index to aim at', usual: '6' },
    { name: 'stress', kind: 'pressure', words: 'shear stress allowed', usual: '600 MPa' },
    { name: 'gap', kind: 'length', words: 'gap to keep between coils at the greatest load', usual: '0.5 mm' },
    { name: 'ends', kind: 'choice', words: 'how the ends are made', choices: ENDS, usual: 'cold-ground' },
    { name: 'shear-modulus', kind: 'pressure', words: 'shear modulus of the wire', usual: '79.5 GPa' },
  ],
  run: (given) => {
    const order = orderHelicalSpring({
      load: given.of('load'), rate: given.of('rate'), index: given.of('index'), stress: given.of('stress'), shearModulus: given.of('shear-modulus'), ends: given.choice('ends') as CoilEnds, gap: given.of('gap'), wires: WIRES,
    });
    if (order.state !== 'known') return outside(order.because);
    return answer([
      figure('least wire for the stress', 'length', order.leastWire), figure('wire to order', 'length', order.wire), figure('inside diameter', 'length', order.meanDiameter - order.wire), figure('outside diameter', 'length', order.meanDiameter + order.wire),
      figure('working coils', 'count', order.activeCoils), figure('all coils', 'count', order.totalCoils), figure('free length', 'length', order.freeLength), figure('solid length', 'length', order.solidLength),
      figure('pitch', 'length', order.pitch), figure('rate as rounded', 'stiffness', order.rate), figure('deflection at the load', 'length', order.deflection),
    ]);
  },
};

const LEAF: Reckoning = {
  name: 'leaf-spring', title: 'Bow or leaf spring: rate, deflection and stress at the clip',
  formula: 'δ = 12 P L³ / (E b t³ (3 nf + 2 ng)); σ = 18 P L / (b t² (3 nf + 2 ng)) in the full leaves',
  source: 'Bhandari, Design of Machine Elements, ch. 10', validity: 'leaves of equal thickness, not nipped, small deflection, no friction between them',
  inputs: [
    { name: 'thickness', kind: 'length', words: 'thickness of one leaf' }, { name: 'width', kind: 'length', words: 'width of one leaf' },
    { name: 'span', kind: 'length', words: 'eye to eye' }, { name: 'leaves', kind: 'count', words: 'all leaves' }, { name: 'full-leaves', kind: 'count', words: 'leaves that reach the eyes', usual: '1' },
    { name: 'load', kind: 'force', words: 'load at the middle' }, { name: 'elastic-modulus', kind: 'pressure', words: 'elastic modulus', usual: '207 GPa' },
  ],
  run: (given) => {
    const full = given.of('full-leaves');
    const pack = { fullLeaves: full, graduatedLeaves: given.of('leaves') - full, reach: given.of('span') / 2, width: given.of('width'), thickness: given.of('thickness'), elasticModulus: given.of('elastic-modulus') };
    const atEye = given.of('load') / 2;
    const stress = leafStress(pack, atEye);
    return answer([
      figure('rate', 'stiffness', leafRate(pack)), figure('deflection', 'length', leafDeflection(pack, atEye)), figure('stress in the full leaves', 'pressure', stress.full),
      figure('stress in the graduated leaves', 'pressure', stress.graduated), figure('stress if all shared alike', 'pressure', stress.shared),
    ]);
  },
};

const WIRE: Reckoning = {
  name: 'wire-strength', title: 'Tensile strength of spring wire, and the load that it stands in a coil',
  formula: 'Sut = A / dᵐ; τ = 0.56 Sut; F = τ π d³ / (8 D K)', source: 'Shigley, Mechanical Engineering Design, table 10-4 (late) and early editions (early); EN 13906-1:2013 for 0.56',
  validity: 'within the range printed with the late table; the early one prints none', inputs: [
    { name: 'wire', kind: 'length', words: 'diameter of the wire' }, { name: 'inside-diameter', kind: 'length', words: 'inside diameter of the coils' },
    { name: 'kind', kind: 'choice', words: 'kind of wire', choices: KINDS, usual: 'oil-tempered' }, { name: 'table', kind: 'choice', words: 'which published table', choices: ['late', 'early'], usual: 'late' },
  ],
  run: (given) => {
    const wire = given.of('wire');
    const strength = wireStrength(given.choice('table') as WireTable, given.choice('kind') as WireKind, wire);
    if (strength.state !== 'known') return outside(`the table ends there; ${(1000 * strength.from).toFixed(1)} to ${(1000 * strength.to).toFixed(1)} mm of wire is allowed: ${(1000 * wire).toFixed(2)} mm`);
    const mean = given.of('inside-diameter') + wire;
    const permissible = permissibleSolidStress(strength.tensileStrength);
    return answer(
      [figure('tensile strength', 'pressure', strength.tensileStrength), figure('shear stress allowed when solid', 'pressure', permissible), figure('load at that stress', 'force', forceAtStress(permissible, mean, wire, wahlFactor(springIndex(mean, wire))))],
      warnIf(!strength.rangePrinted, 'no range of wire is printed with this table; the two tables differ by up to a fifth'),
    );
  },
};

const BUCKLING: Reckoning = {
  name: 'spring-buckling', title: 'Whether a coil spring can bow out sideways', formula: 's_K = L0 · 0.5/(1 − G/E) · [1 − √(1 − (1 − G/E)/(0.5 + G/E) · (π D/(ν L0))²)]',
  source: 'EN 13906-1:2013', validity: 'a spring standing free; one on a bolt or in a box is held and only rubs', inputs: [
    { name: 'free-length', kind: 'length', words: 'free length' }, { name: 'mean-diameter', kind: 'length', words: 'mean diameter of the coils' },
    { name: 'seating', kind: 'choice', words: 'how the ends are held', choices: Object.keys(SEATING), usual: 'fixed-fixed' },
    { name: 'shear-modulus', kind: 'pressure', words: 'shear modulus', usual: '79.5 GPa' }, { name: 'elastic-modulus', kind: 'pressure', words: 'elastic modulus', usual: '206 GPa' },
  ],
  run: (given) => {
    const found = buckling(given.of('free-length'), given.of('mean-diameter'), given.choice('seating') as Seating, given.of('shear-modulus'), given.of('elastic-modulus'));
    return answer([
      found.state === 'can-buckle' ? figure('buckles when pressed by', 'length', found.deflection) : saying('buckling', 'cannot buckle at any deflection'),
      figure('longest free length that never buckles', 'length', found.criticalLength),
    ]);
  },
};

export const SPRING_RECKONINGS: readonly Reckoning[] = [SPRING, ORDER, LEAF, WIRE, BUCKLING];
