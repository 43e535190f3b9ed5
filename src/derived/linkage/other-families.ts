import { leafRate, leafStress, type LeafPack } from '../../methods/elements/index.ts';
import { workOut, type Ledger } from '../ledger.ts';

/** Young's modulus of spring steel, Pa (Bhandari, Design of Machine Elements, chapter 10 worked examples). */
const YOUNG = 207e9;
/** Bending stress that old leaf packs are held to, Pa: 1500 MPa tensile strength over 2.5 (ibid., example 10.25). */
const ALLOWED_BENDING = 600e6;

/** The bow: stress in its leaves at the deflection read, against what a leaf stands, and its rate. */
export function workOutBow(ledger: Ledger): void {
  const common = { families: ['bow-spring'] as const, whyNot: 'this hammer has no bow', sources: ['bhandari-springs'] };
  const pack = ['bow-spring.span', 'bow-spring.leaf-width', 'bow-spring.leaf-thickness', 'bow-spring.leaves'] as const;
  workOut(ledger, {
    ...common, key: 'bow.rate', title: 'rate of the bow, at its ends together', dimension: 'stiffness', formula: 'leaf pack, ends simply held, load in the middle', inputs: pack,
    work: (span, width, thickness, leaves) => bowRate(span!, width!, thickness!, leaves!),
  });
  workOut(ledger, {
    ...common, key: 'bow.load', title: 'load at the deflection read', dimension: 'force', formula: 'rate x deflection', inputs: ['bow.rate', 'bow-spring.deflection'], work: (rate, deflection) => rate! * deflection!,
  });
  workOut(ledger, {
    ...common, key: 'bow.stress', title: 'bending stress in the leaves', dimension: 'pressure', formula: '18 P L / (b t² (3 nf + 2 ng)), P at each end, L half the span, one full leaf', inputs: ['bow.load', ...pack],
    work: (load, span, width, thickness, leaves) => bowStress(load!, span!, width!, thickness!, leaves!),
  });
  workOut(ledger, {
    ...common, key: 'bow.stress-share', title: 'bending stress against what a leaf stands', dimension: 'ratio', formula: 'stress / 600 MPa', inputs: ['bow.stress'], work: (stress) => stress! / ALLOWED_BENDING,
  });
}

const packOf = (span: number, width: number, thickness: number, leaves: number): LeafPack => ({ elasticModulus: YOUNG, reach: span / 2, width, thickness, fullLeaves: Math.min(1, leaves), graduatedLeaves: Math.max(0, leaves - 1) });

const bowRate = (span: number, width: number, thickness: number, leaves: number): number => leafRate(packOf(span, width, thickness, leaves));
const bowStress = (load: number, span: number, width: number, thickness: number, leaves: number): number => leafStress(packOf(span, width, thickness, leaves), load / 2).full;

/** The helve: how the pivot divides the beam, and how much of the pivot's play reaches the die. */
export function workOutHelve(ledger: Ledger): void {
  const common = { families: ['helve'] as const, whyNot: 'this hammer has no helve', sources: ['rigid-body-mechanics'] };
  workOut(ledger, {
    ...common, key: 'helve.arm-ratio', title: 'front of the helve to its rear', dimension: 'ratio', formula: 'pivot to die / pivot to rod', inputs: ['helve.front-length', 'helve.rear-length'],
    work: (front, rear) => front! / rear!,
  });
  workOut(ledger, {
    ...common, key: 'helve.die-play', title: 'play of the pivot as it reaches the die', dimension: 'length', formula: 'pivot play x (1 + front / rear)', inputs: ['helve.pivot-play', 'helve.arm-ratio'],
    work: (play, ratio) => play! * (1 + ratio!),
  });
}
