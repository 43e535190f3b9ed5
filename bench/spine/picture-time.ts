import { picture } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { fullHammer } from './full-hammer.ts';

const WARM = 40;

export interface PictureTime {
  readonly entries: number;
  /** Medians, ms. */
  readonly picture: number;
  readonly reference: number;
}

/** The whole picture of a full hammer from its log, in turn with a reference that every engine has: the same log through JSON and back. */
export function pictureTime(count: number, rounds: number): PictureTime {
  const log = fullHammer(count);
  const times: number[] = [];
  const references: number[] = [];
  let findings = 0;
  for (let round = 0; round < rounds + WARM; round += 1) {
    const start = performance.now();
    findings += picture(log, knowledge, '2026-01-01T00:00:00Z', 1)?.findings.length ?? 0;
    const middle = performance.now();
    const copy: unknown = JSON.parse(JSON.stringify(log));
    const end = performance.now();
    if (!Array.isArray(copy)) throw new Error('the log came back from JSON as something else');
    if (round >= WARM) {
      times.push(middle - start);
      references.push(end - middle);
    }
  }
  if (findings === 0) throw new Error('the picture of the full hammer has no findings');
  return { entries: log.length, picture: median(times), reference: median(references) };
}

export const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
