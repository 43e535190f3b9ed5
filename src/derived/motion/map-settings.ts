import { BEAT_CLASSES } from './beat-class.ts';
import type { BeatLog } from './beat-log.ts';
import { mapCell } from './map-cell.ts';
import type { CellSettings, MapCell } from './map-cell.ts';
import type { MotionSpec } from './motion-spec.ts';
import { logFor } from './run-hammer.ts';
import { withSetting } from './setting.ts';
import type { SettingName } from './setting.ts';

/** One side of a map. */
export interface MapAxis {
  readonly setting: SettingName;
  /** SI, value at the first cell's middle and at the last's */
  readonly from: number;
  readonly to: number;
}

/** One cell worked out, and the square it stands for until finer ones come. */
export interface MapPatch {
  /** place in the order; give the next one back as `resumeAt` to go on later */
  readonly place: number;
  readonly column: number;
  readonly row: number;
  /** cells, the side of the square that may be filled with this answer for now */
  readonly span: number;
  readonly cell: MapCell;
}

/** How the map is worked through. */
export interface MapOptions extends CellSettings {
  /** this worker's share: cells whose place in the order leaves `share` when divided by `shares` */
  readonly share?: number;
  readonly shares?: number;
  /** go on from this place in the order */
  readonly resumeAt?: number;
}

/** Value at a cell of an axis. */
export function axisValue(axis: MapAxis, index: number, size: number): number {
  return size === 1 ? axis.from : axis.from + ((axis.to - axis.from) * index) / (size - 1);
}

/**
 * The cells from coarse to fine: first every sixteenth in both directions, then every eighth that is still missing, and so on.
 * @param size cells a side, 1 to 1024
 * @returns row * size + column, each once
 */
export function mapOrder(size: number): { readonly order: Uint32Array; readonly span: Uint16Array } {
  if (!(Number.isInteger(size) && size >= 1 && size <= 1024)) throw new Error(`a map has 1 to 1024 cells a side: ${size}`);
  const order = new Uint32Array(size * size);
  const span = new Uint16Array(size * size);
  let count = 0;
  let coarsest = 1;
  while (coarsest * 2 <= 16 && coarsest * 4 <= size) coarsest *= 2;
  for (let stride = coarsest; stride >= 1; stride >>= 1)
    for (let row = 0; row < size; row += stride)
      for (let column = 0; column < size; column += stride) {
        if (stride < coarsest && row % (2 * stride) === 0 && column % (2 * stride) === 0) continue;
        order[count] = row * size + column;
        span[count++] = stride;
      }
  return { order, span };
}

/** The specification at one cell. */
export function specAt(base: MotionSpec, x: MapAxis, y: MapAxis, column: number, row: number, size: number): MotionSpec {
  return withSetting(withSetting(base, x.setting, axisValue(x, column, size)), y.setting, axisValue(y, row, size));
}

/**
 * Works out a map of two settings, coarse to fine, one cell at each asking.
 *
 * Stopping is not asking further; going on is `resumeAt`; several workers take a share each. A cell does not depend on any other, so
 * every way of working gives the same map.
 */
export function* mapSettings(base: MotionSpec, x: MapAxis, y: MapAxis, size: number, options: MapOptions = {}): Generator<MapPatch, void, void> {
  const { order, span } = mapOrder(size);
  const shares = options.shares ?? 1;
  const share = options.share ?? 0;
  const fastest = Math.max(base.driveSpeed, ...[x, y].flatMap((a) => (a.setting === 'driveSpeed' ? [a.from, a.to] : [])));
  const scratch: BeatLog = logFor(options.duration ?? 6, Math.min(Math.max(fastest, 2), 100));
  for (let place = options.resumeAt ?? 0; place < order.length; place++) {
    if (place % shares !== share) continue;
    const column = order[place]! % size;
    const row = (order[place]! - column) / size;
    yield { place, column, row, span: span[place]!, cell: mapCell(specAt(base, x, y, column, row, size), options, scratch) };
  }
}

/** A map as it fills: one code a cell, and which cells are their own answer rather than a neighbour's. */
export interface MotionMap {
  readonly size: number;
  readonly x: MapAxis;
  readonly y: MapAxis;
  readonly code: Uint8Array;
  readonly energy: Float32Array;
  readonly level: Float32Array;
  readonly delay: Float32Array;
  /** code when started slowly, plus one; 0 where it is the same or was not asked */
  readonly either: Uint8Array;
  readonly exact: Uint8Array;
}

/** An empty map: nothing computed. */
export function emptyMap(x: MapAxis, y: MapAxis, size: number): MotionMap {
  const n = size * size;
  return {
    size, x, y, code: new Uint8Array(n).fill(255), energy: new Float32Array(n), level: new Float32Array(n),
    delay: new Float32Array(n), either: new Uint8Array(n), exact: new Uint8Array(n),
  };
}

/** Lays a patch on a map, over all cells it stands for that have no answer of their own. */
export function layPatch(map: MotionMap, patch: MapPatch): void {
  const { size } = map;
  for (let row = patch.row; row < Math.min(size, patch.row + patch.span); row++)
    for (let column = patch.column; column < Math.min(size, patch.column + patch.span); column++) {
      const i = row * size + column;
      const own = row === patch.row && column === patch.column;
      if (!own && map.exact[i] === 1) continue;
      map.code[i] = patch.cell.code;
      map.energy[i] = patch.cell.energy;
      map.level[i] = patch.cell.level;
      map.delay[i] = patch.cell.delay;
      map.either[i] = patch.cell.either === undefined ? 0 : BEAT_CLASSES.indexOf(patch.cell.either) + 1;
      if (own) map.exact[i] = 1;
    }
}

/** A straight line of settings through a map, end to end. */
export function* lineOfSettings(
  base: MotionSpec, x: MapAxis, y: MapAxis, count: number, options: CellSettings = {},
): Generator<{ readonly at: number; readonly x: number; readonly y: number; readonly cell: MapCell }, void, void> {
  for (let i = 0; i < count; i++) {
    const spec = specAt(base, x, y, i, i, count);
    yield { at: count === 1 ? 0 : i / (count - 1), x: axisValue(x, i, count), y: axisValue(y, i, count), cell: mapCell(spec, options) };
  }
}
