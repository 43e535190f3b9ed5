import type { LimitKind } from './criterion.ts';

/**
 * What a limit takes away from use, in points, for choosing between repairs. With a figure, the share of the points grows
 * as the figure grows stricter: half of them at `half` (SI). `looser` says which way a figure is the milder.
 */
export interface LimitWeight {
  readonly kind: LimitKind;
  readonly points: number;
  readonly half?: number;
  readonly looser?: 'more' | 'less';
  readonly because: string;
}

/** Judgement, no source: what keeps a hammer from its ordinary work weighs most, what asks for care weighs least. */
export const LIMIT_WEIGHTS: readonly LimitWeight[] = [
  { kind: 'light-work-only', points: 30, because: 'most of what the hammer is kept for is forbidden' },
  { kind: 'greatest-tread', points: 25, half: 0.5, looser: 'more', because: 'the full blow is gone' },
  { kind: 'greatest-bar', points: 15, half: 0.05, looser: 'more', because: 'larger stock has to go elsewhere' },
  { kind: 'least-work-thickness', points: 15, half: 0.0254, looser: 'less', because: 'thin work is forbidden' },
  { kind: 'greatest-work-thickness', points: 15, half: 0.05, looser: 'more', because: 'thick work is forbidden' },
  { kind: 'no-hand-held-tools', points: 15, because: 'cutting, punching and fullering stop' },
  { kind: 'longest-run', points: 12, half: 1800, looser: 'more', because: 'work stops by the clock' },
  { kind: 'flat-dies-only', points: 10, because: 'shaped work stops' },
  { kind: 'greatest-speed', points: 10, half: 5, looser: 'more', because: 'fewer blows in a heat' },
  { kind: 'guard-first', points: 8, because: 'nothing runs until the guard is on' },
  { kind: 'oil-way-first', points: 8, because: 'nothing runs until the oil way is open' },
  { kind: 'guard-kept', points: 1, because: 'it is good practice in any case' },
  { kind: 'second-person', points: 8, because: 'nobody can work alone' },
  { kind: 'no-bystanders', points: 6, because: 'no demonstration and no teaching' },
  { kind: 'named-operator', points: 5, because: 'others may not use it' },
  { kind: 'not-unattended', points: 4, because: 'the motor is stopped at every pause' },
  { kind: 'check-keys-every', points: 4, half: 1800, looser: 'more', because: 'work stops for the keys' },
  { kind: 'oil-every', points: 3, half: 1800, looser: 'more', because: 'work stops for the oil can' },
  { kind: 'double-hearing-protection', points: 1, because: 'it is good practice in any case' },
];
