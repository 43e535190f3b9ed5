import type { Quantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { Known } from '../survey/index.ts';
import type { Value } from '../value.ts';

/** What a setting should be: a figure or a range, with what it rests on. */
export interface SettingTarget {
  readonly from?: Quantity;
  readonly to?: Quantity;
  /** `as-made` of this hammer, `worked-out` from its readings, or `usual` of class or trade. */
  readonly basis: 'as-made' | 'worked-out' | 'usual';
  readonly sentence: string;
  readonly sources: readonly string[];
}

/** One line of the sheet, in the order in which the settings are made. */
export interface SettingLine {
  readonly number: number;
  readonly id: string;
  readonly title: string;
  readonly because: string;
  readonly how: string;
  /** As found, the value or look behind it, and whether it counts as set. */
  readonly asFound?: { readonly key: string; readonly quantity?: Quantity; readonly words: string };
  readonly target?: SettingTarget;
  /** How near is near enough, either way. */
  readonly tolerance?: Quantity;
  readonly state: 'set' | 'off' | 'not-known' | 'look';
  /** Which way and how far it has to go, from what was found to the nearer end of the target; signed, SI. */
  readonly change?: Quantity;
  /** Readings that would give a target or show it as found. */
  readonly missing: readonly string[];
  readonly source: string;
}

export interface SettingInputs {
  readonly known: Known;
  readonly values: Readonly<Record<string, Value>>;
  /** Thickness of the work that the gap is set for; the usual gap of the class where left out. */
  readonly work?: Quantity;
  /** Ids of jobs that are still to be done, which say what dies there will be; dies are wanted as made where left out. */
  readonly jobs?: ReadonlySet<string>;
  /** Units of the sentences; `inch` where left out. */
  readonly system?: PrintSystem;
}
