import { helicalRate, solidLength, wahlFactor, helicalStress } from '../../methods/elements/index.ts';
import { workOut, type Ledger } from '../ledger.ts';

/** Shear modulus of oil-hardened and hot-wound spring steel, Pa (EN 10270-2 value 79.5 GPa, from memory). */
const SHEAR_MODULUS = 79.5e9;
const DEAD_COILS = 2;
const SOURCES = ['en-13906-1', 'bhandari-springs'];
const FAMILY = ['coil-and-toggle'] as const;
const WHY_NOT = 'this hammer has no coil spring';

/**
 * The toggle spring: rate, solid length, travel left, set against as made, preload, stress with curvature factor.
 * Ends are taken as closed and ground, two coils dead, unless the reading of active coils says otherwise.
 */
export function workOutCoilSpring(ledger: Ledger): void {
  const common = { sources: SOURCES, families: FAMILY, whyNot: WHY_NOT };
  const wire = 'coil-spring.wire';
  const coils = 'coil-spring.coils';
  workOut(ledger, { ...common, key: 'spring.mean-diameter', title: 'mean coil diameter', dimension: 'length', formula: 'inside diameter + wire', inputs: ['coil-spring.inside-diameter', wire], work: (inside, thickness) => inside! + thickness! });
  workOut(ledger, {
    ...common, key: 'spring.index', title: 'spring index', dimension: 'ratio', formula: 'mean coil diameter / wire', inputs: ['spring.mean-diameter', wire],
    work: (mean, thickness) => (mean! / thickness! > 1.5 ? mean! / thickness! : 'wire is too thick for the coil: check both readings'),
  });
  workOut(ledger, {
    ...common, key: 'spring.rate', title: 'spring rate', dimension: 'stiffness', formula: 'G d⁴ / (8 D³ n), n = coils - 2 dead',
    inputs: [wire, 'spring.mean-diameter', coils],
    work: (thickness, mean, count) => (count! > DEAD_COILS + 0.5 ? helicalRate(SHEAR_MODULUS, thickness!, mean!, count! - DEAD_COILS) : 'a spring of so few coils is outside the formula'),
  });
  workOut(ledger, { ...common, key: 'spring.solid-length', title: 'solid length', dimension: 'length', formula: 'coils x wire, ends ground', inputs: [wire, coils], work: (thickness, count) => solidLength(thickness!, count!, 'cold-ground') });
  workOut(ledger, {
    ...common, key: 'spring.travel', title: 'travel from free to solid', dimension: 'length', formula: 'free length - solid length', inputs: ['coil-spring.free-length', 'spring.solid-length'],
    work: (free, solid) => (free! > solid! ? free! - solid! : 'free length is not above the solid length: check wire, coils and length'),
  });
  workOut(ledger, {
    ...common, key: 'spring.travel-left-share', title: 'travel left before the coils touch', dimension: 'ratio', formula: '(shortest length running - solid length) / (free length - solid length)',
    inputs: ['coil-spring.shortest-length', 'spring.solid-length', 'spring.travel'], work: (shortest, solid, travel) => (shortest! - solid!) / travel!,
  });
  workOut(ledger, {
    ...common, key: 'spring.set-share', title: 'length lost for good', dimension: 'ratio', formula: '(free length as made - free length now) / as made',
    inputs: ['coil-spring.free-length#as-made', 'coil-spring.free-length'], work: (made, now) => (made! - now!) / made!,
  });
  workOut(ledger, {
    ...common, key: 'spring.preload', title: 'preload by the nut', dimension: 'force', formula: 'rate x (free length - installed length)',
    inputs: ['spring.rate', 'coil-spring.free-length', 'coil-spring.installed-length'],
    work: (rate, free, installed) => (installed! <= free! ? rate! * (free! - installed!) : 'installed length is above the free length: one of the two is wrong'),
  });
  workOut(ledger, {
    ...common, key: 'spring.stress-solid', title: 'stress if it ever goes solid', dimension: 'pressure', formula: 'Wahl factor x 8 F D / (pi d³) at solid',
    inputs: ['spring.rate', 'spring.travel', 'spring.mean-diameter', wire],
    work: (rate, travel, mean, thickness) => helicalStress(rate! * travel!, mean!, thickness!, wahlFactor(mean! / thickness!)),
  });
  workOut(ledger, {
    ...common, key: 'spring.stress-share', title: 'stress at solid against what oil-tempered wire stands', dimension: 'ratio', formula: 'stress at solid / (0.56 x tensile strength for this wire)',
    sources: [...SOURCES, 'spring-wire-strength'], inputs: ['spring.stress-solid', wire],
    work: (stress, thickness) => stress! / (0.56 * oilTemperedStrength(thickness!)),
  });
}

/** Tensile strength of oil-tempered wire, Pa, Sut = 1855 / d^0.187 MPa with d in mm (Shigley, 7th ed. and later, Table 10-4, from memory). */
const oilTemperedStrength = (wire: number): number => (1855e6 / Math.pow(wire * 1000, 0.187));
