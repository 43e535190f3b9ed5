import { expect, test } from 'vitest';
import { type Picture } from '../../src/derived/index.ts';
import { makeBelt, partsToMake } from '../../src/derived/making/index.ts';
import { buyBlocks } from '../../src/views/work/making-blocks.ts';
import { LogOf } from '../cases/log-of.ts';
import { FIVE } from '../print/every-paper.ts';
import { pictureOf as onPaper } from '../print/paper-cases.ts';
import { pictureOf } from './worn-hammer.ts';

const beam = (): Picture => onPaper(FIVE.find(({ name }) => name.startsWith('tannerwick'))?.entries ?? [], 'inch');
const line = (picture: Picture, start: string): string => buyBlocks(picture).flatMap((block) => (block.kind === 'table' ? block.rows.flatMap((row) => (row.cells[0]?.startsWith(start) === true ? [row.cells[0]] : [])) : [])).join(' ');

test('a motor is ordered with the speed and the supply of the one that is there, and with the pulley on which the rate hangs', () => {
  const said = line(beam(), 'motor, 5 hp at the least');
  // The plate: 1425 rpm, 230 V, single phase; the pulley that was read: 4.7 in.
  expect(said).toContain(': 1425 rpm, 230 V, single phase, as the old one has it');
  expect(said).toContain('with a pulley of 4.7 in where the belt runs');
  expect(said).toContain('4.7 in x 1425 rpm / its own speed');
});

test('what its plate says is asked for where nobody read it', () => {
  // A motor of 1/2 hp on a hammer of 150 lb is limited, and nothing else is known of it.
  const bare = pictureOf(new LogOf('150 lb', 'helve').read('motor.power', '1/2 hp'));
  expect(bare.worksheet.jobs.map((one) => one.job)).toContain('motor.renew');
  const said = line(bare, 'motor, ');
  expect(said).toContain('first read speed, voltage, phases off the plate of the old one');
  expect(said).not.toMatch(/pulley of|rpm/u);
});

test('a belt is ordered by the sizes of its drawing, and one that is wider asks for the faces that nobody read', () => {
  const picture = beam();
  const said = line(picture, 'flat belt');
  const belt = partsToMake(picture).find((one) => one.kind === 'belt');
  const of = (name: string): number => (belt?.state === 'to-make' ? belt.dimensions.find((one) => one.name === name)?.quantity.value ?? Number.NaN : Number.NaN) / 0.0254;
  // Round both: 2 x 96 in, half of either rim, and what the lean adds; and 3.14 times the thickness, as the drawing has it.
  expect(of('length')).toBeCloseTo(2 * 96 + (Math.PI * (30 + 4.7)) / 2 + (30 - 4.7) ** 2 / (4 * 96) + Math.PI * 0.2, 0);
  expect(of('width')).toBe(3.75);
  expect(said).toContain('rubber and canvas, flat, 3 3/4 in wide, 0.2 in thick');
  expect(said).toMatch(new RegExp(`${of('length').toFixed(1)} in round both pulleys, and more for the way over the idler`, 'u'));
  expect(said).toMatch(/first measure the face of the motor’s pulley and that of the idler/u);
  // As wide as the old one it lies on faces that have carried it.
  const alone = makeBelt(picture.values, picture.known);
  expect(alone.state === 'to-make' ? alone.dimensions.find((one) => one.name === 'width')?.quantity.value : undefined).toBeCloseTo(3 * 0.0254, 9);
});
