import { BEAT_CLASSES, axisValue, type BeatClass, type MotionMap } from '../../derived/motion/index.ts';
import type { PrintSystem } from '../../derived/index.ts';
import { DRAWING_STYLE } from '../drawing/hatch.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import { BEAT_WORDS, type BeatWords } from './class-words.ts';
import { capital } from './motion-sentences.ts';
import { shownSetting, type ShopSetting } from './shop-settings.ts';

/** Strokes of one hatch in a square of 8 by 8, as lines from and to, and dots by centre and radius. */
export interface Hatch {
  readonly lines: readonly (readonly [x1: number, y1: number, x2: number, y2: number])[];
  readonly dots: readonly (readonly [x: number, y: number, radius: number])[];
  readonly solid: boolean;
}

const EMPTY = { lines: [], dots: [], solid: false } as const;
/** Patterns that differ by shape, so that the map is read without any colour. */
export const HATCHES: Readonly<Record<BeatWords['hatch'], Hatch>> = {
  plain: EMPTY,
  dots: { ...EMPTY, dots: [[2, 2, 1], [6, 6, 1]] },
  single: { ...EMPTY, lines: [[0, 8, 8, 0]] },
  back: { ...EMPTY, lines: [[0, 0, 8, 8]] },
  cross: { ...EMPTY, lines: [[0, 0, 8, 8], [0, 8, 8, 0]] },
  rings: { ...EMPTY, lines: [[0, 4, 3, 4], [2, 2, 2, 6]] },
  level: { ...EMPTY, lines: [[0, 2, 8, 2], [0, 6, 8, 6]] },
  upright: { ...EMPTY, lines: [[2, 0, 2, 8], [6, 0, 6, 8]] },
  solid: { ...EMPTY, solid: true },
  void: { ...EMPTY, dots: [[4, 4, 0.7]] },
};

/** One line of the legend. */
export interface LegendRow {
  readonly beatClass: BeatClass;
  readonly words: BeatWords;
  /** share of the map, 0 to 1 */
  readonly share: number;
}

/** The classes on a map, most frequent first, and how much of it can do either. */
export function mapLegend(map: MotionMap): { readonly rows: readonly LegendRow[]; readonly either: number; readonly done: number } {
  const counts = new Map<number, number>();
  let either = 0;
  let done = 0;
  for (let i = 0; i < map.code.length; i += 1) {
    const code = map.code[i] ?? 255;
    if (code !== 255) counts.set(code, (counts.get(code) ?? 0) + 1);
    if ((map.either[i] ?? 0) !== 0) either += 1;
    if (map.exact[i] === 1) done += 1;
  }
  const total = Math.max(1, map.code.length);
  const rows = [...counts].sort((a, b) => b[1] - a[1]).flatMap(([code, count]) => {
    const beatClass = BEAT_CLASSES[code];
    return beatClass === undefined ? [] : [{ beatClass, words: BEAT_WORDS[beatClass], share: count / total }];
  });
  return { rows, either: either / total, done: done / total };
}

export interface MapPictureOptions {
  readonly system: PrintSystem;
  readonly x: ShopSetting;
  readonly y: ShopSetting;
}

const SIDE = 480;
const LEFT = 92;
const INKS = { ink: 'var(--ink,#16181d)', chalk: 'var(--chalk,#b3261e)', pencil: 'var(--pencil,#2b62a0)' } as const;

/**
 * A map as a drawing: classes by hatching and letter with a legend, settings that can do either ruled over, the hammer as found as a cross.
 * @returns a complete SVG document
 */
export function mapPicture(map: MotionMap, options: MapPictureOptions): Svg {
  const { size } = map;
  const cell = SIDE / size;
  const legend = mapLegend(map);
  const patterns = legend.rows.map(({ beatClass, words }) => patternOf(`map-${beatClass}`, words)).join('') + '<pattern id="map-either" width="10" height="10" patternUnits="userSpaceOnUse"><path d="M0 5H10" stroke="var(--paper,#f6f3ea)" stroke-width="4"/><path d="M0 5H10" stroke="var(--pencil,#2b62a0)" stroke-width="1.6"/></pattern>';
  let body = '';
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column < size;) {
      const code = map.code[row * size + column] ?? 255;
      const either = (map.either[row * size + column] ?? 0) !== 0;
      let end = column + 1;
      while (end < size && map.code[row * size + end] === code && ((map.either[row * size + end] ?? 0) !== 0) === either) end += 1;
      const place = `x="${coordinate(LEFT + column * cell)}" y="${coordinate(20 + SIDE - (row + 1) * cell)}" width="${coordinate((end - column) * cell)}" height="${coordinate(cell)}"`;
      const beatClass = BEAT_CLASSES[code];
      if (beatClass !== undefined && beatClass !== 'clean') body += `<rect ${place} fill="url(#map-${beatClass})"/>`;
      if (either) body += `<rect ${place} fill="url(#map-either)"/>`;
      column = end;
    }
  const cross = crossAt(map, options);
  const axis = (setting: ShopSetting, value: number): string => shownSetting(setting, setting.toShop(value), options.system);
  const ends = `${textAt([LEFT, 20 + SIDE + 18], axis(options.x, map.x.from), { size: 13 })}${textAt([LEFT + SIDE, 20 + SIDE + 18], axis(options.x, map.x.to), { size: 13, anchor: 'end' })}${textAt([LEFT + SIDE / 2, 20 + SIDE + 36], options.x.words, { size: 14, anchor: 'middle' })}`
    + `${textAt([LEFT - 6, 20 + SIDE], axis(options.y, map.y.from), { size: 13, anchor: 'end' })}${textAt([LEFT - 6, 32], axis(options.y, map.y.to), { size: 13, anchor: 'end' })}${textAt([16, 20 + SIDE / 2], options.y.words, { size: 14, anchor: 'middle', turn: -90 })}`;
  let y = 20 + SIDE + 64;
  let rows = '';
  for (const { beatClass, words, share } of legend.rows) {
    rows += `<rect x="${LEFT}" y="${y - 13}" width="26" height="18" fill="${beatClass === 'clean' ? 'none' : `url(#map-${beatClass})`}" stroke="var(--ink,#16181d)"/>${textAt([LEFT + 36, y], `${words.letter}  ${capital(words.words)}, ${Math.round(share * 100)} %`, { size: 14 })}`;
    y += 24;
  }
  if (legend.either > 0) {
    rows += `<rect x="${LEFT}" y="${y - 13}" width="26" height="18" fill="url(#map-either)" stroke="var(--ink,#16181d)"/>${textAt([LEFT + 36, y], `Can do either, by how it is started, ${Math.round(legend.either * 100)} %`, { size: 14 })}`;
    y += 24;
  }
  const label = `What the hammer does over ${options.x.words.toLowerCase()} and ${options.y.words.toLowerCase()}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="motion-map" viewBox="0 0 ${LEFT + SIDE + 20} ${y}" role="img" aria-label="${escapeText(label)}"><style>${DRAWING_STYLE}</style><defs>${patterns}</defs><rect x="${LEFT}" y="20" width="${SIDE}" height="${SIDE}" fill="var(--paper,#f6f3ea)"/>${body}${letters(map, cell)}<rect x="${LEFT}" y="20" width="${SIDE}" height="${SIDE}" fill="none" stroke="var(--ink,#16181d)" stroke-width="2"/>${cross}${ends}${rows}</svg>`;
}

function patternOf(id: string, words: BeatWords): Svg {
  const hatch = HATCHES[words.hatch];
  const ink = INKS[words.ink];
  const inside = hatch.solid ? `<rect width="8" height="8" fill="${ink}"/>` : hatch.lines.map(([x1, y1, x2, y2]) => `<path d="M${x1} ${y1}L${x2} ${y2}" stroke="${ink}" stroke-width="1.1"/>`).join('') + hatch.dots.map(([x, y, r]) => `<circle cx="${x}" cy="${y}" r="${r}" fill="${ink}"/>`).join('');
  return `<pattern id="${id}" width="8" height="8" patternUnits="userSpaceOnUse"><rect width="8" height="8" fill="var(--paper,#f6f3ea)"/>${inside}</pattern>`;
}

function crossAt(map: MotionMap, { x, y }: MapPictureOptions): Svg {
  const share = (axis: MotionMap['x'], value: number): number => (value - axis.from) / (axis.to - axis.from || 1);
  const across = share(map.x, x.toModel(x.found));
  const up = share(map.y, y.toModel(y.found));
  if (!(across >= 0 && across <= 1 && up >= 0 && up <= 1)) return '';
  const cx = LEFT + across * SIDE;
  const cy = 20 + (1 - up) * SIDE;
  return `<path d="M${coordinate(cx - 11)} ${coordinate(cy)}H${coordinate(cx + 11)}M${coordinate(cx)} ${coordinate(cy - 11)}V${coordinate(cy + 11)}" stroke="var(--paper,#f6f3ea)" stroke-width="6" fill="none"/><path d="M${coordinate(cx - 11)} ${coordinate(cy)}H${coordinate(cx + 11)}M${coordinate(cx)} ${coordinate(cy - 11)}V${coordinate(cy + 11)}" stroke="var(--ink,#16181d)" stroke-width="2.4" fill="none"/>`;
}

/** Letters in the middle of large fields, on a coarse grid of places. */
export function mapLetters(map: MotionMap, parts = 6): readonly { readonly x: number; readonly y: number; readonly letter: string }[] {
  const { size } = map;
  const found: { x: number; y: number; letter: string }[] = [];
  const reach = Math.max(1, Math.floor(size / parts / 4));
  for (let py = 0; py < parts; py += 1)
    for (let px = 0; px < parts; px += 1) {
      const column = Math.floor(((px + 0.5) / parts) * size);
      const row = Math.floor(((py + 0.5) / parts) * size);
      const code = map.code[row * size + column] ?? 255;
      const beatClass = BEAT_CLASSES[code];
      if (beatClass === undefined) continue;
      let same = true;
      for (let r = row - reach; r <= row + reach; r += 1) for (let c = column - reach; c <= column + reach; c += 1) if (map.code[Math.max(0, Math.min(size - 1, r)) * size + Math.max(0, Math.min(size - 1, c))] !== code) same = false;
      if (same) found.push({ x: (column + 0.5) / size, y: (row + 0.5) / size, letter: BEAT_WORDS[beatClass].letter });
    }
  return found;
}

const letters = (map: MotionMap, _cell: number): Svg =>
  mapLetters(map).map(({ x, y, letter }) => `<circle cx="${coordinate(LEFT + x * SIDE)}" cy="${coordinate(20 + (1 - y) * SIDE)}" r="10" fill="var(--paper,#f6f3ea)"/>${textAt([LEFT + x * SIDE, 25 + (1 - y) * SIDE], letter, { size: 14, anchor: 'middle' })}`).join('');

/** What stands at one field of a map, in a sentence. */
export function cellSentence(map: MotionMap, column: number, row: number, options: MapPictureOptions): string {
  const i = row * map.size + column;
  const beatClass = BEAT_CLASSES[map.code[i] ?? 255];
  const at = `${options.x.words} ${shownSetting(options.x, options.x.toShop(axisValue(map.x, column, map.size)), options.system)}, ${options.y.words.toLowerCase()} ${shownSetting(options.y, options.y.toShop(axisValue(map.y, row, map.size)), options.system)}`;
  if (beatClass === undefined) return `${at}: not worked out yet.`;
  const other = BEAT_CLASSES[(map.either[i] ?? 0) - 1];
  return `${at}: ${BEAT_WORDS[beatClass].words}${other === undefined ? '' : `, or ${BEAT_WORDS[other].words} by how it is started`}.`;
}
