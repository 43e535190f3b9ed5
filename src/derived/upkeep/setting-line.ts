import type { Quantity } from '../../methods/quantity/index.ts';
import type { Finding } from '../condition/index.ts';
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
  /** The reading as found belongs to a part that an open job replaces: how far it is off says nothing. */
  readonly anew?: true;
  /** An open job grinds the face: the height is read once that is done. */
  readonly ground?: true;
  /** What brings it there; said only where it is to be set. */
  readonly by?: string;
  readonly sources: readonly string[];
}

/** A target where there is one, and the readings that are missing. */
export interface Targeted {
  readonly target?: SettingTarget;
  readonly missing: readonly string[];
}

/** One line of the sheet, in the order in which the settings are made. */
export interface SettingLine {
  readonly number: number;
  readonly id: string;
  readonly title: string;
  readonly because: string;
  readonly how: string;
  /** What only the running hammer shows of it; done last of all. */
  readonly running?: string;
  /** As found, the value or look behind it, and whether it counts as set. */
  readonly asFound?: { readonly key: string; readonly quantity?: Quantity; readonly words: string };
  readonly target?: SettingTarget;
  /** How near is near enough, either way. */
  readonly tolerance?: Quantity;
  /** `good`: outside of what is usual, and the report calls it good all the same. `held`: what is wanted must wait for what `held` names. */
  readonly state: 'set' | 'good' | 'held' | 'off' | 'not-known' | 'look';
  /** As it will be once the open jobs are done, with everything else left as it stands; only where they change it. */
  readonly afterJobs?: Quantity;
  /** What has to be done or minded before it is set, one sentence each; the open jobs ask for it. */
  readonly first?: readonly string[];
  /** What stands in the way of the change, one sentence each; absent where nothing does. */
  readonly held?: readonly string[];
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
  /** What the judgement found: a setting is left where it is called good, and none is asked for against a limit. Left out, nothing is held. */
  readonly findings?: readonly Finding[];
  /** Units of the sentences; `inch` where left out. */
  readonly system?: PrintSystem;
}
