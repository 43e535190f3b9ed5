import { EUROPEAN_SHEAR_MODULUS, helicalRate, helicalStress, permissibleSolidStress, solidLength, springIndex, wahlFactor, wireStrength, activeCoils, deadCoils } from '../../methods/elements/index.ts';
import type { Known } from '../survey/index.ts';
import { workOut, type Ledger } from '../ledger.ts';
import { coilEndsOf } from './coil-ends.ts';

/** Hammer springs are oil-hardened or hot wound. */
const SHEAR_MODULUS = EUROPEAN_SHEAR_MODULUS['oil-hardened'];
const SOURCES = ['en-13906-1', 'bhandari-springs'];
const FAMILY = ['coil-and-toggle'] as const;
const WHY_NOT = 'this hammer has no coil spring';

/** Two published tables of what the same wire stands; both are worked out wherever one of them is judged by. */
const TABLES = [
  { table: 'early', key: 'spring.stress-share', words: 'older table' },
  { table: 'late', key: 'spring.stress-share-newer', words: 'newer table' },
] as const;

/**
 * The toggle spring: rate, solid length, travel left, set against as made, preload, stress with curvature factor.
 * Where nobody looked at the ends they are taken as closed and ground, and the formula says so.
 */
export function workOutCoilSpring(ledger: Ledger, known: Known): void {
  const { ends, answer } = coilEndsOf(known.looks);
  const endsWords = answer === '' ? 'ends taken as closed and ground' : `ends ${answer.replaceAll('-', ' ')}`;
  const common = { sources: SOURCES, families: FAMILY, whyNot: WHY_NOT };
  const wire = 'coil-spring.wire';
  const coils = 'coil-spring.coils';
  workOut(ledger, { ...common, key: 'spring.mean-diameter', title: 'mean coil diameter', dimension: 'length', formula: 'inside diameter + wire', inputs: ['coil-spring.inside-diameter', wire], work: (inside, thickness) => inside! + thickness! });
  workOut(ledger, { ...common, key: 'spring.index', title: 'spring index', dimension: 'ratio', formula: 'mean coil diameter / wire', inputs: ['spring.mean-diameter', wire], work: (mean, thickness) => springIndex(mean!, thickness!) });
  workOut(ledger, {
    ...common, key: 'spring.rate', title: 'spring rate', dimension: 'stiffness', formula: `G d⁴ / (8 D³ n), n = coils - ${deadCoils(ends)} dead; ${endsWords}`,
    inputs: [wire, 'spring.mean-diameter', coils],
    work: (thickness, mean, count) => (activeCoils(count!, ends) >= 1 ? helicalRate(SHEAR_MODULUS, thickness!, mean!, activeCoils(count!, ends)) : `fewer than one working coil; count the coils again: ${count!}`),
  });
  workOut(ledger, { ...common, key: 'spring.solid-length', title: 'solid length', dimension: 'length', formula: `coils touching; ${endsWords}`, inputs: [wire, coils], work: (thickness, count) => solidLength(thickness!, count!, ends) });
  workOut(ledger, {
    ...common, key: 'spring.travel', title: 'travel from free to solid', dimension: 'length', formula: 'free length - solid length', inputs: ['coil-spring.free-length', 'spring.solid-length'],
    work: (free, solid) => (free! > solid! ? free! - solid! : 'the free length is not above the solid length: check wire, coils and length'),
  });
  workOut(ledger, {
    ...common, key: 'spring.travel-left-share', title: 'travel left before the coils touch', dimension: 'ratio', formula: '(shortest length running - solid length) / (free length - solid length)',
    inputs: ['coil-spring.shortest-length', 'spring.solid-length', 'spring.travel'],
    work: (shortest, solid, travel) => (shortest! <= solid! + travel! ? (shortest! - solid!) / travel! : 'the shortest length running is above the free length: one of the two is wrong'),
  });
  workOut(ledger, {
    ...common, key: 'spring.set-share', title: 'length lost for good', dimension: 'ratio', formula: '(free length as made - free length now) / as made',
    inputs: ['coil-spring.free-length#as-made', 'coil-spring.free-length'], work: (made, now) => (made! - now!) / made!,
  });
  workOut(ledger, {
    ...common, key: 'spring.preload', title: 'preload by the nut', dimension: 'force', formula: 'rate x (free length - installed length)',
    inputs: ['spring.rate', 'coil-spring.free-length', 'coil-spring.installed-length'],
    work: (rate, free, installed) => (installed! <= free! ? rate! * (free! - installed!) : 'the installed length is above the free length: one of the two is wrong'),
  });
  workOut(ledger, {
    ...common, key: 'spring.stress-solid', title: 'stress if it ever goes solid', dimension: 'pressure', formula: 'Wahl factor x 8 F D / (pi d³), F at solid',
    inputs: ['spring.rate', 'spring.travel', 'spring.mean-diameter', wire],
    work: (rate, travel, mean, thickness) => helicalStress(rate! * travel!, mean!, thickness!, wahlFactor(springIndex(mean!, thickness!))),
  });
  for (const { table, key, words } of TABLES) {
    workOut(ledger, {
      ...common, key, title: `stress at solid against what oil-tempered wire stands, ${words}`, dimension: 'ratio', formula: `stress at solid / (0.56 x tensile strength of this wire by the ${words})`,
      sources: [...SOURCES, 'spring-wire-strength'], inputs: ['spring.stress-solid', wire],
      work: (stress, thickness) => {
        const strength = wireStrength(table, 'oil-tempered', thickness!);
        return strength.state === 'known' ? stress! / permissibleSolidStress(strength.tensileStrength) : `the ${words} is not printed for wire this thick`;
      },
    });
  }
}
