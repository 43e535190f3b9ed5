import { SPLIT_PINS } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import type { FigureReader } from './figure.ts';
import { shopNumber } from './shop-figures.ts';
import type { PrintSystem } from '../print-system.ts';

/** How the straps of one end of a bow sit on the pin of its eye. */
export interface StrapPlace {
  readonly place: 'both-sides' | 'one-side' | 'forked';
  /** False where nobody looked: chosen by what the pin has room for. */
  readonly seen: boolean;
  readonly each: 1 | 2;
  /** One strap with its plates, along the pin, m. */
  readonly pack: number;
  readonly eye: number | undefined;
  /** Between the split pins, m. */
  readonly room: number | undefined;
  /** Thickest washer that goes in at each end, m; undefined where none does, or where it is not known. */
  readonly washer: number | undefined;
  /** How far the middle of the pull lies off the middle of the eye, m; 0 where it is even. */
  readonly off: number;
}

const INCH = 0.0254;
/** Flat washers, the thickest first, m: from memory. */
const WASHERS: Readonly<Record<PrintSystem, readonly number[]>> = { inch: [INCH / 8, (3 * INCH) / 32, INCH / 16, INCH / 32], metric: [0.003, 0.0025, 0.002, 0.0015, 0.001] };

/**
 * Two straps to an eye where its pin has room for them with their plates, one on each side, so that the pull is even; else one beside it,
 * unless somebody has looked.
 * @param pin diameter of the eye's pin, m
 */
export function strapPlace(reader: FigureReader, known: Known, pin: number | undefined, system: PrintSystem): StrapPlace | undefined {
  const thick = reader.find('bow-spring.strap-thickness')?.quantity.value;
  if (thick === undefined) return undefined;
  const both = (place: string): number[] => ['left', 'right'].flatMap((end) => reader.find(`bow-spring.${place}@${end}`)?.quantity.value ?? []);
  const eye = both('eye-width').length === 0 ? undefined : Math.max(...both('eye-width'));
  const split = pin === undefined ? undefined : SPLIT_PINS.rows.find((row) => pin <= row.upTo + 1e-9);
  const room = split === undefined || both('pin-length').length === 0 ? undefined : Math.min(...both('pin-length')) - 2 * split.fromEnd - split.hole;
  const pack = thick + 2 * shopNumber('strap-plate');
  const answer = known.looks['bow-spring.strap-place']?.answer as StrapPlace['place'] | undefined;
  const place = answer ?? (eye !== undefined && room !== undefined && eye + 2 * pack <= room ? 'both-sides' : 'one-side');
  const each = place === 'both-sides' ? 2 : 1;
  const stack = eye === undefined ? undefined : place === 'forked' ? eye : eye + each * pack;
  const washer = stack === undefined || room === undefined ? undefined : WASHERS[system].find((one) => stack + 2 * one <= room + 1e-9);
  return { place, seen: answer !== undefined, each, pack, eye, room, washer, off: place === 'one-side' && eye !== undefined ? (eye + pack) / 2 : 0 };
}
