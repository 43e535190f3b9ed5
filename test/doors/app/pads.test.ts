import fc from 'fast-check';
import { expect, test } from 'vitest';
import { composeFraction } from '../../../src/app/pieces/compose-fraction.ts';
import { onTheRule } from '../../../src/app/pieces/on-the-rule.ts';
import { padFor } from '../../../src/app/pieces/pad-for.ts';
import { pressDigit } from '../../../src/app/pieces/press-digit.ts';
import { partsFor, placeOf } from '../../../src/hammer/index.ts';
import { readQuantity } from '../../../src/methods/quantity/index.ts';

test.each([
  ['main-bearings.clearance', 'feeler', 'thou'], ['ram-guide.play-side', 'dial-indicator', 'thou'], ['main-shaft.diameter', 'micrometer', 'in'], ['upper-die.height', 'caliper', 'in'],
  ['upper-die.height', 'rule', 'rule'], ['frame.height', 'tape', 'rule'], ['upper-die.edge-radius', 'radius-gauge', 'rule'], ['ram.mass', 'scale', 'none'],
] as const)('%s read with a %s is written with: %s', (place, tool, pad) => {
  expect(padFor(placeOf(place)!.place, tool, 'inch')).toBe(pad);
  if (pad !== 'none') expect(padFor(placeOf(place)!.place, tool, 'metric')).toBe('mm');
});

test('no tool that reads thou is ever offered eighths', () => {
  for (const family of ['coil-and-toggle', 'bow-spring', 'helve'] as const)
    for (const part of partsFor(family)) for (const place of part.places) for (const tool of place.tools) if (['feeler', 'micrometer', 'dial-indicator', 'caliper', 'depth-gauge', 'plastic-thread-gauge'].includes(tool)) expect(padFor(place, tool, 'inch'), `${place.id} ${tool}`).not.toBe('rule');
});

test('what is written key by key is always a decimal that reads, or nothing', () => {
  const keys = fc.array(fc.constantFrom('0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '⌫'), { maxLength: 9 });
  fc.assert(fc.property(keys, fc.constantFrom('in', 'thou', 'mm'), (pressed, unit) => {
    const text = pressed.reduce((held, key) => pressDigit(held, key, unit), '');
    if (text === '') return;
    expect(text).toMatch(/^\d+\.?\d* (in|thou|mm)$|^\.\d* /);
    if (/\d/.test(text)) expect(readQuantity(text, { dimension: 'length' }).ok, text).toBe(true);
  }));
});

test('the rule stands where the text does, and only where a mark is', () => {
  expect(onTheRule('1 7/8')).toEqual({ whole: 1, mark: 28 });
  expect(onTheRule('47.625 mm')).toEqual({ whole: 1, mark: 28 });
  expect(onTheRule('2 in')).toEqual({ whole: 2, mark: 0 });
  for (const text of ['', '1.9 in', '12 thou', 'about two', '-1 in']) expect(onTheRule(text), text).toBeUndefined();
  for (let mark = 0; mark < 32; mark += 1) expect(onTheRule(composeFraction(3, mark))).toEqual({ whole: 3, mark });
});

test('a touch on a digit begins again where a fraction stood', () => {
  expect(pressDigit('2 3/4 in', '7', 'thou')).toBe('7 thou');
  expect(pressDigit('12 thou', '.', 'thou')).toBe('12. thou');
  expect(pressDigit('12. thou', '5', 'thou')).toBe('12.5 thou');
  expect(pressDigit('7 thou', '⌫', 'thou')).toBe('');
});
