import { LINKAGE_FAMILIES } from '../../hammer/index.ts';
import { DIMENSIONS, type Quantity } from '../../methods/quantity/index.ts';
import { numberFrom, oneOf, optional, recordOf, shaped, text, type Check } from '../codec/check.ts';
import type { WrittenQuantity } from '../entry.ts';
import { problemOf } from '../problem.ts';

const FAR = 1e15;

const interval: Check<readonly [number, number]> = {
  run: (value, field, problems) => {
    const right = Array.isArray(value) && value.length === 2 && value.every((bound) => typeof bound === 'number' && Number.isFinite(bound)) && value[0] <= value[1];
    if (!right) problems.push(problemOf(field, value, 'the interval cannot be used', 'two finite numbers, the lesser first'));
  },
};

/** A quantity in SI with its doubt. */
export const quantity: Check<Quantity> = recordOf<Quantity>({
  dimension: oneOf(DIMENSIONS),
  value: numberFrom(-FAR, FAR, 'a finite number in SI'),
  uncertainty: numberFrom(0, FAR, 'a standard uncertainty in SI, zero or more'),
  interval: optional(interval),
});

/** A quantity together with the text that the person gave. */
export const writtenQuantity: Check<WrittenQuantity> = recordOf<WrittenQuantity>({ quantity, asWritten: text('the text as the person wrote it') });

/** `part.place`, `part.look`, a criterion or a job: dotted trade words. */
export const dottedName: Check<string> = shaped(/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)*$/, 'dotted trade words such as upper-die.height');

/** A place on a part: `front`, `front-left`. */
export const placeOnPart: Check<string> = shaped(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'a place on the part such as front or front-left');

export const sha256Text: Check<string> = shaped(/^[0-9a-f]{64}$/, 'a SHA-256 in 64 lower-case hexadecimal figures');

export const mediaType: Check<string> = shaped(/^[a-z]+\/[a-z0-9.+-]+$/, 'a media type such as image/jpeg');

export const family = oneOf(LINKAGE_FAMILIES);
