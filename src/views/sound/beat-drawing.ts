import type { BeatHeard, BeatResult } from '../../derived/sound/index.ts';
import { brokenLines } from '../drawing/figure-text.ts';
import { coordinate, escapeText, textAt, type Svg } from '../drawing/svg.ts';
import type { SoundSentence } from './beat-sentences.ts';
import { foldedPicture } from './folded-picture.ts';
import { shownTime } from './shown.ts';
import type { SoundView } from './sound-view.ts';
import { strokeStrip } from './stroke-strip.ts';

const WIDTH = 760;
const WAVE = 90;

export interface BeatDrawingOptions {
  readonly title: string;
  readonly sentences: readonly SoundSentence[];
  /** the recording made small; drawn on top where given */
  readonly view?: SoundView;
  readonly before?: BeatHeard;
}

/** One still drawing for paper: the wave, the blows, the folded turn, and what it tells in words. A beat that cannot be told has its wave and its words. */
export function beatDrawing(result: BeatResult, { title, sentences, view, before }: BeatDrawingOptions): Svg {
  let y = 40;
  let body = textAt([12, 26], title, { size: 18 });
  if (view !== undefined) {
    body += `<path d="${waveOutline(view, 58, y, WIDTH - 68, WAVE)}" fill="var(--ink,#16181d)"/>${textAt([58, y + WAVE + 12], `the recording, ${shownTime(view.to - view.from)}`, { size: 12.5 })}`;
    y += WAVE + 24;
  }
  for (const picture of result.state === 'heard' ? [strokeStrip(result, WIDTH), foldedPicture(result, { width: WIDTH, before })] : []) {
    const height = Number(/viewBox="0 0 [\d.]+ ([\d.]+)"/.exec(picture)?.[1] ?? 0);
    body += picture.replace('<svg ', `<svg x="0" y="${coordinate(y)}" width="${WIDTH}" height="${coordinate(height)}" `);
    y += height + 8;
  }
  y += 14;
  for (const { kind, words } of sentences)
    for (const [index, row] of brokenLines(words, 13.5, WIDTH - 40).entries()) {
      body += textAt([index === 0 ? 12 : 24, y], row, { size: 13.5, className: kind === 'headline' ? 'headline' : kind === 'second' || kind === 'warning' ? 'limit-note' : 'note' });
      y += 18;
    }
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${coordinate(y + 6)}" role="img" aria-label="${escapeText(title)}"><style>svg text{font-family:"Atkinson Hyperlegible",system-ui,sans-serif;fill:var(--ink,#16181d)}svg .headline{font-weight:700}svg .limit-note{fill:var(--chalk,#b3261e)}</style><rect width="100%" height="100%" fill="var(--paper,#f6f3ea)"/>${body}</svg>`;
}

/** The wave between its least and greatest samples as one closed outline, its loudest at the edge. */
export function waveOutline(view: SoundView, left: number, top: number, width: number, height: number): string {
  let loudest = 1e-6;
  for (let i = 0; i < view.columns; i++) loudest = Math.max(loudest, view.high[i]!, -view.low[i]!);
  const x = (i: number): string => coordinate(left + (width * (i + 0.5)) / view.columns);
  const y = (value: number): string => coordinate(top + (height / 2) * (1 - value / loudest));
  const upper = Array.from(view.high, (value, i) => `${i === 0 ? 'M' : 'L'}${x(i)} ${y(value)}`);
  const lower = Array.from(view.low, (value, i) => `L${x(i)} ${coordinate(Number(y(value)) + 0.6)}`).reverse();
  return `${upper.join('')}${lower.join('')}Z`;
}
