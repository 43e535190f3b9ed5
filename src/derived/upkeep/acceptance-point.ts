import type { Finding } from '../condition/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { Known } from '../survey/index.ts';
import type { Value } from '../value.ts';

/** One point of the trial: red, amber and green with the reason; amber is good enough and to be watched, not done is none of them. */
export interface AcceptancePoint {
  readonly id: string;
  readonly title: string;
  readonly state: 'green' | 'amber' | 'red' | 'not-done';
  readonly reason: string;
  /** Reading or look behind it, as a person reads it. */
  readonly shown: string;
  /** What has to be entered where it was not done. */
  readonly missing: readonly string[];
  readonly source: string;
}

/** What the motion of a hammer lets expect of a full blow, J: nine likenesses in ten lie between, half below the middle. */
export interface ExpectedBlow {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface AcceptanceInputs {
  readonly known: Known;
  readonly values: Readonly<Record<string, Value>>;
  readonly findings: readonly Finding[];
  /** Instant from which readings and looks count; the last finished job where left out. */
  readonly since?: string;
  /** Units of the sentences; `inch` where left out. */
  readonly system?: PrintSystem;
  /** What the motion of this hammer lets expect of a full blow; without it the strike test is read back and not compared. */
  readonly expected?: ExpectedBlow;
  /** For what is drawn by chance in reading the strike test back; 1 where left out. */
  readonly seed?: number;
}
