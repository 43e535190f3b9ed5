import { soundView, type SoundView } from '../../views/sound/index.ts';
import type { DecodedSound } from '../../sound-files/browser/index.ts';

/** Heights of the board's parts, CSS px: wave, spectrogram, and the row with the marks' grips, which a finger must hit. */
export const WAVE = 120;
export const SPECTRUM = 104;
export const GRIPS = 48;
export const BOARD = WAVE + SPECTRUM + GRIPS;
const ROWS = 72;

export interface BoardMarks {
  readonly times: readonly number[];
  /** marks that a person put or moved */
  readonly own: ReadonlySet<number>;
  readonly selected: number | undefined;
  readonly missed: readonly number[];
  /** s from the blow of the second sound, where there is one */
  readonly second: number | undefined;
  readonly cursor: number | undefined;
}

interface Inks {
  readonly ink: string;
  readonly paper: string;
  readonly chalk: string;
  readonly pencil: string;
}

export function inksOf(element: Element): Inks {
  const style = getComputedStyle(element);
  const of = (name: string): string => style.getPropertyValue(name).trim();
  return { ink: of('--ink'), paper: of('--paper'), chalk: of('--chalk'), pencil: of('--pencil') };
}

/** Draws a stretch of the recording with its marks. @param width CSS px */
export function drawBoard(canvas: HTMLCanvasElement, view: SoundView, marks: BoardMarks, width: number): void {
  const fine = Math.min(3, devicePixelRatio || 1);
  canvas.width = Math.round(width * fine);
  canvas.height = Math.round(BOARD * fine);
  const context = canvas.getContext('2d');
  if (context === null) return;
  const inks = inksOf(canvas);
  context.scale(fine, fine);
  context.fillStyle = inks.paper;
  context.fillRect(0, 0, width, BOARD);
  drawWave(context, view, width, inks);
  drawSpectrum(context, view, width, inks);
  drawMarks(context, view, marks, width, inks);
}

export const viewOf = (sound: DecodedSound, from: number, to: number, width: number): SoundView => soundView(sound.samples, sound.rate, from, to, Math.max(60, Math.min(1600, Math.round(width * 1.5))), ROWS);

function drawWave(context: CanvasRenderingContext2D, view: SoundView, width: number, inks: Inks): void {
  let loudest = 1e-4;
  for (let i = 0; i < view.columns; i += 1) loudest = Math.max(loudest, view.high[i] ?? 0, -(view.low[i] ?? 0));
  context.fillStyle = inks.ink;
  const step = width / view.columns;
  for (let i = 0; i < view.columns; i += 1) {
    const top = (WAVE / 2) * (1 - (view.high[i] ?? 0) / loudest);
    const bottom = (WAVE / 2) * (1 - (view.low[i] ?? 0) / loudest);
    context.fillRect(i * step, top, Math.max(0.7, step), Math.max(0.8, bottom - top));
  }
}

function drawSpectrum(context: CanvasRenderingContext2D, view: SoundView, width: number, inks: Inks): void {
  const [red, green, blue] = rgbOf(inks.ink);
  const image = new ImageData(view.columns, view.rows);
  for (let row = 0; row < view.rows; row += 1)
    for (let column = 0; column < view.columns; column += 1) {
      const loud = (view.loud[row * view.columns + column] ?? 0) / 255;
      const at = 4 * ((view.rows - 1 - row) * view.columns + column);
      image.data[at] = red;
      image.data[at + 1] = green;
      image.data[at + 2] = blue;
      image.data[at + 3] = Math.round(255 * Math.max(0, (loud - 0.25) / 0.75) ** 1.6);
    }
  const aside = document.createElement('canvas');
  aside.width = view.columns;
  aside.height = view.rows;
  aside.getContext('2d')?.putImageData(image, 0, 0);
  context.imageSmoothingEnabled = true;
  context.drawImage(aside, 0, WAVE + 4, width, SPECTRUM - 4);
  context.fillStyle = inks.ink;
  context.fillRect(0, WAVE + 1, width, 1);
  context.fillRect(0, WAVE + SPECTRUM, width, 1);
  context.font = '12px "Atkinson Hyperlegible", sans-serif';
  for (const frequency of [200, 1000, 5000]) {
    if (frequency > view.highest) continue;
    const share = Math.log(frequency / view.lowest) / Math.log(view.highest / view.lowest);
    const y = WAVE + SPECTRUM - share * (SPECTRUM - 4);
    label(context, frequency >= 1000 ? `${frequency / 1000} kHz` : `${frequency} Hz`, 3, y + 4, inks);
  }
}

function drawMarks(context: CanvasRenderingContext2D, view: SoundView, marks: BoardMarks, width: number, inks: Inks): void {
  const x = (time: number): number => (width * (time - view.from)) / (view.to - view.from);
  const seen = marks.times.flatMap((time, index) => (time >= view.from && time <= view.to ? [{ time, index }] : []));
  const roomy = seen.length * 14 < width;
  for (const { time, index } of seen) {
    const chosen = index === marks.selected;
    const at = x(time);
    context.strokeStyle = chosen || marks.own.has(time) ? inks.pencil : inks.ink;
    context.fillStyle = context.strokeStyle;
    context.lineWidth = chosen ? 3 : 1;
    const top = roomy ? 0 : WAVE + SPECTRUM;
    stroke(context, at, top, WAVE + SPECTRUM + (roomy ? 6 : 18));
    if (roomy) {
      const size = chosen ? 11 : 8;
      context.beginPath();
      context.moveTo(at, WAVE + SPECTRUM + 4);
      context.lineTo(at - size, WAVE + SPECTRUM + 4 + 1.7 * size);
      context.lineTo(at + size, WAVE + SPECTRUM + 4 + 1.7 * size);
      context.closePath();
      context.fill();
    }
    if (roomy && marks.second !== undefined) {
      context.strokeStyle = inks.chalk;
      context.lineWidth = 1.5;
      context.setLineDash([4, 4]);
      stroke(context, x(time + marks.second), 0, WAVE + SPECTRUM + 10);
      context.setLineDash([]);
    }
  }
  context.strokeStyle = inks.chalk;
  context.lineWidth = 2;
  for (const time of marks.missed) {
    if (time < view.from || time > view.to) continue;
    context.beginPath();
    context.arc(x(time), WAVE + SPECTRUM + 14, 6, 0, 2 * Math.PI);
    context.stroke();
  }
  if (marks.cursor !== undefined && marks.cursor >= view.from && marks.cursor <= view.to) {
    context.strokeStyle = inks.pencil;
    context.lineWidth = 2;
    context.setLineDash([8, 5]);
    stroke(context, x(marks.cursor), 0, BOARD);
    context.setLineDash([]);
  }
  // Times along the foot, as many as stand apart.
  const step = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60].find((one) => (width * one) / (view.to - view.from) > 58) ?? 120;
  for (let k = Math.ceil(view.from / step); k * step < view.to; k += 1) {
    const at = x(k * step);
    if (at > width - 30) break;
    label(context, `${Number((k * step).toFixed(2))} s`, Math.max(2, at - 8), BOARD - 5, inks);
  }
}

function stroke(context: CanvasRenderingContext2D, x: number, top: number, bottom: number): void {
  context.beginPath();
  context.moveTo(x, top);
  context.lineTo(x, bottom);
  context.stroke();
}

/** Letters with paper round them, so that what lies under does not cross them out. */
function label(context: CanvasRenderingContext2D, words: string, x: number, y: number, inks: Inks): void {
  context.font = '12px "Atkinson Hyperlegible", sans-serif';
  context.lineWidth = 4;
  context.strokeStyle = inks.paper;
  context.fillStyle = inks.ink;
  context.strokeText(words, x, y);
  context.fillText(words, x, y);
}

function rgbOf(colour: string): readonly [number, number, number] {
  const found = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  return found === null ? [20, 24, 30] : [1, 2, 3].map((i) => Number.parseInt(found[i] ?? '0', 16)) as [number, number, number];
}
