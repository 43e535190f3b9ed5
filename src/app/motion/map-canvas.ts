import { BEAT_CLASSES, type MotionMap } from '../../derived/motion/index.ts';
import { BEAT_WORDS, HATCHES, mapLetters } from '../../views/motion/index.ts';

/** Marks on a map, each as shares of its width and height, heights upwards. */
export interface MapMarks {
  readonly found: readonly [x: number, y: number];
  readonly proposed: readonly [x: number, y: number] | undefined;
  readonly here: readonly [x: number, y: number] | undefined;
}

const TILE = 8;

/** Paints a map as it stands: hatching and letters as in the legend, unfinished fields left blank. */
export function paintMap(canvas: HTMLCanvasElement, map: MotionMap, marks: MapMarks): void {
  const pen = canvas.getContext('2d');
  if (pen === null) return;
  const scale = Math.max(1, Math.min(3, Math.round(devicePixelRatio)));
  const side = canvas.clientWidth === 0 ? 360 : canvas.clientWidth;
  if (canvas.width !== side * scale) {
    canvas.width = side * scale;
    canvas.height = side * scale;
  }
  const style = getComputedStyle(canvas);
  const colour = (name: string): string => style.getPropertyValue(`--${name}`).trim();
  pen.setTransform(scale, 0, 0, scale, 0, 0);
  pen.fillStyle = colour('paper');
  pen.fillRect(0, 0, side, side);
  const cell = side / map.size;
  const fields = new Map<number, Path2D>();
  const either = new Path2D();
  for (let row = 0; row < map.size; row += 1)
    for (let column = 0; column < map.size; column += 1) {
      const i = row * map.size + column;
      const code = map.code[i] ?? 255;
      if (code === 255) continue;
      let path = fields.get(code);
      if (path === undefined) fields.set(code, (path = new Path2D()));
      path.rect(column * cell, side - (row + 1) * cell, cell + 0.5, cell + 0.5);
      if ((map.either[i] ?? 0) !== 0) either.rect(column * cell, side - (row + 1) * cell, cell + 0.5, cell + 0.5);
    }
  for (const [code, path] of fields) {
    const beatClass = BEAT_CLASSES[code];
    if (beatClass === undefined || beatClass === 'clean') continue;
    const words = BEAT_WORDS[beatClass];
    const pattern = pen.createPattern(hatchTile(words.hatch, colour(words.ink), colour('paper')), 'repeat');
    if (pattern === null) continue;
    pen.fillStyle = pattern;
    pen.fill(path);
  }
  const ruled = pen.createPattern(eitherTile(colour('pencil'), colour('paper')), 'repeat');
  if (ruled !== null) {
    pen.fillStyle = ruled;
    pen.fill(either);
  }
  pen.font = '700 15px "Atkinson Hyperlegible", system-ui, sans-serif';
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  for (const { x, y, letter } of mapLetters(map)) {
    pen.fillStyle = colour('paper');
    pen.beginPath();
    pen.arc(x * side, (1 - y) * side, 11, 0, 7);
    pen.fill();
    pen.fillStyle = colour('ink');
    pen.fillText(letter, x * side, (1 - y) * side + 1);
  }
  cross(pen, side, marks.found, colour('ink'), colour('paper'));
  if (marks.proposed !== undefined) ringAt(pen, side, marks.proposed, colour('pencil'), colour('paper'));
  if (marks.here !== undefined) {
    pen.strokeStyle = colour('chalk');
    pen.lineWidth = 2;
    pen.strokeRect(marks.here[0] * side - Math.max(cell, 10) / 2, (1 - marks.here[1]) * side - Math.max(cell, 10) / 2, Math.max(cell, 10), Math.max(cell, 10));
  }
}

function cross(pen: CanvasRenderingContext2D, side: number, [x, y]: readonly [number, number], ink: string, paper: string): void {
  for (const [width, colour] of [[6, paper], [2.5, ink]] as const) {
    pen.strokeStyle = colour;
    pen.lineWidth = width;
    pen.beginPath();
    pen.moveTo(x * side - 12, (1 - y) * side);
    pen.lineTo(x * side + 12, (1 - y) * side);
    pen.moveTo(x * side, (1 - y) * side - 12);
    pen.lineTo(x * side, (1 - y) * side + 12);
    pen.stroke();
  }
}

function ringAt(pen: CanvasRenderingContext2D, side: number, [x, y]: readonly [number, number], ink: string, paper: string): void {
  for (const [width, colour] of [[7, paper], [3, ink]] as const) {
    pen.strokeStyle = colour;
    pen.lineWidth = width;
    pen.beginPath();
    pen.arc(x * side, (1 - y) * side, 9, 0, 7);
    pen.stroke();
  }
}

function tile(size: number, paint: (pen: CanvasRenderingContext2D) => void): HTMLCanvasElement {
  const made = document.createElement('canvas');
  made.width = size;
  made.height = size;
  const pen = made.getContext('2d');
  if (pen !== null) paint(pen);
  return made;
}

export function hatchTile(name: keyof typeof HATCHES, ink: string, paper: string): HTMLCanvasElement {
  const hatch = HATCHES[name];
  return tile(TILE, (pen) => {
    pen.fillStyle = hatch.solid ? ink : paper;
    pen.fillRect(0, 0, TILE, TILE);
    pen.strokeStyle = ink;
    pen.lineWidth = 1.2;
    for (const [x1, y1, x2, y2] of hatch.lines) {
      pen.beginPath();
      pen.moveTo(x1, y1);
      pen.lineTo(x2, y2);
      pen.stroke();
    }
    pen.fillStyle = ink;
    for (const [x, y, radius] of hatch.dots) {
      pen.beginPath();
      pen.arc(x, y, radius, 0, 7);
      pen.fill();
    }
  });
}

export const eitherTile = (ink: string, paper: string): HTMLCanvasElement =>
  tile(10, (pen) => {
    pen.fillStyle = paper;
    pen.fillRect(0, 3, 10, 4);
    pen.fillStyle = ink;
    pen.fillRect(0, 4, 10, 2);
  });
