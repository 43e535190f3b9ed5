import type { Check } from '../codec/check.ts';
import type { EntryBodies, EntryKind } from '../entry.ts';
import { asMade } from './as-made.ts';
import { correction } from './correction.ts';
import { enrol } from './enrol.ts';
import { hours } from './hours.ts';
import { jobProgress } from './job-progress.ts';
import { override } from './override.ts';
import { photograph } from './photograph.ts';
import { price } from './price.ts';
import { reading } from './reading.ts';
import { recording } from './recording.ts';
import { setting } from './setting.ts';
import { sighting } from './sighting.ts';
import { statement } from './statement.ts';

/** The check of each kind's body, newest version. */
export const KIND_CHECKS: { readonly [K in EntryKind]: Check<EntryBodies[K]> } = {
  enrol,
  'as-made': asMade,
  reading,
  sighting,
  statement,
  recording,
  photograph,
  setting,
  price,
  'job-progress': jobProgress,
  hours,
  override,
  correction,
};

export const ENTRY_KINDS = Object.keys(KIND_CHECKS) as readonly EntryKind[];
