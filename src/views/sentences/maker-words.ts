import type { Picture } from '../../derived/index.ts';

/** Maker, serial and year as one line, the serial said to be one, so that "none found" is not read as a place. */
export function makerWords({ maker, serial, year }: Picture['known']['identity']): string {
  return [maker, serial === undefined ? undefined : `serial ${/^none/iu.test(serial) ? `number: ${serial}` : serial}`, year].filter((one) => one !== undefined).join('; ');
}
