import { BEAT_CLASSES } from './beat-class.ts';
import type { BeatClass } from './beat-class.ts';
import { mapCell } from './map-cell.ts';
import type { CellSettings, MapCell } from './map-cell.ts';
import { axisValue } from './map-settings.ts';
import type { MotionMap } from './map-settings.ts';
import type { MotionSpec } from './motion-spec.ts';
import { settingOf, withSetting } from './setting.ts';
import type { SettingName } from './setting.ts';

const CLEAN = BEAT_CLASSES.indexOf('clean');

/** A clean setting on a map, and how far it is. */
export interface CleanOnMap {
  readonly column: number;
  readonly row: number;
  /** SI, settings there */
  readonly x: number;
  readonly y: number;
  /** SI, changes from where one stands */
  readonly changeX: number;
  readonly changeY: number;
  readonly energy: number;
}

/**
 * The nearest place on a finished map that is clean, with clean cells round it.
 * @param fromX SI, where the hammer stands on the x axis; likewise fromY
 * @param margin cells that must be clean on every side, so that a hair's breadth does not bring the trouble back
 * @param weightX cost of a whole axis length in x against one in y; 1 where both are as easy
 * @returns `undefined` where no such place is on the map
 */
export function nearestCleanOnMap(map: MotionMap, fromX: number, fromY: number, margin = 1, weightX = 1): CleanOnMap | undefined {
  const { size, x, y } = map;
  const clean = (row: number, column: number): boolean => {
    for (let r = row - margin; r <= row + margin; r++)
      for (let c = column - margin; c <= column + margin; c++) {
        if (r < 0 || c < 0 || r >= size || c >= size) continue;
        const i = r * size + c;
        if (map.code[i] !== CLEAN || map.exact[i] !== 1 || map.either[i] !== 0) return false;
      }
    return true;
  };
  let best: CleanOnMap | undefined;
  let least = Infinity;
  for (let row = 0; row < size; row++)
    for (let column = 0; column < size; column++) {
      const px = axisValue(x, column, size);
      const py = axisValue(y, row, size);
      const dx = (weightX * (px - fromX)) / (x.to - x.from || 1);
      const dy = (py - fromY) / (y.to - y.from || 1);
      const far = dx * dx + dy * dy;
      if (far >= least || !clean(row, column)) continue;
      least = far;
      best = { column, row, x: px, y: py, changeX: px - fromX, changeY: py - fromY, energy: map.energy[row * size + column]! };
    }
  return best;
}

/** One setting changed alone until the beat is clean. */
export interface Adjustment {
  readonly setting: SettingName;
  /** SI */
  readonly from: number;
  readonly to: number;
  readonly change: number;
  /** share of the range searched; the list is sorted by it */
  readonly effort: number;
  readonly before: BeatClass;
  readonly after: MapCell;
}

/** How far a setting may be turned in the search, and in how many steps. */
export interface Reach {
  readonly setting: SettingName;
  readonly low: number;
  readonly high: number;
}

/**
 * For each setting alone, the smallest change that makes the beat clean from either start, and a little beyond the edge.
 *
 * Looks outward on both sides in even steps, then halves the last step to find the edge, then goes a quarter of a step further in. It may pass
 * over a clean band narrower than a step. Never more than 2 x steps + 10 runs a setting.
 * @param steps to each side, 4 to 64
 */
export function smallestAdjustments(spec: MotionSpec, reaches: readonly Reach[], settings: CellSettings = {}, steps = 16): Adjustment[] {
  const both = { ...settings, either: true };
  const isClean = (c: MapCell): boolean => c.beatClass === 'clean' && c.either === undefined;
  const now = mapCell(spec, both);
  if (isClean(now)) return [];
  const found: Adjustment[] = [];
  for (const { setting, low, high } of reaches) {
    const from = settingOf(spec, setting);
    if (from === undefined || !(high > low)) continue;
    const stride = (high - low) / (2 * steps);
    const run = (value: number): MapCell => mapCell(withSetting(spec, setting, value), both);
    let best: Adjustment | undefined;
    for (let n = 1; n <= 2 * steps && best === undefined; n++)
      for (const side of [-1, 1]) {
        const value = from + side * n * stride;
        if (value < low || value > high) continue;
        if (!isClean(run(value))) continue;
        let outside = value - side * stride;
        let inside = value;
        for (let k = 0; k < 6; k++) {
          const middle = 0.5 * (outside + inside);
          if (isClean(run(middle))) inside = middle;
          else outside = middle;
        }
        const further = Math.min(high, Math.max(low, inside + 0.25 * side * stride));
        const there = run(further);
        const to = isClean(there) ? further : value;
        const after = isClean(there) ? there : run(value);
        const change = to - from;
        if (best === undefined || Math.abs(change) < Math.abs(best.change))
          best = { setting, from, to, change, effort: Math.abs(change) / (high - low), before: now.beatClass, after };
      }
    if (best !== undefined) found.push(best);
  }
  return found.sort((a, b) => a.effort - b.effort);
}
