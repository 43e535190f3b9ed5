/** Paper that a drawing is set on, upright, mm. */
export type PaperName = 'A4' | 'letter';

export interface Paper {
  readonly name: PaperName;
  readonly width: number;
  readonly height: number;
}

export const PAPERS: Readonly<Record<PaperName, Paper>> = { A4: { name: 'A4', width: 210, height: 297 }, letter: { name: 'letter', width: 215.9, height: 279.4 } };

/** Frame: a broader edge on the left, for filing (ISO 5457). */
export const EDGE = { left: 20, right: 10, top: 10, bottom: 10 } as const;

/** Scales of ISO 5455 that a shop uses, largest first; 1 : 2.5 lies between its steps, for a die that just misses half size. */
export const SCALES: readonly (readonly [drawing: number, part: number])[] = [[5, 1], [2, 1], [1, 1], [1, 2], [1, 2.5], [1, 5], [1, 10], [1, 20], [1, 50]];

/** Line weights of ISO 128, group 0.5: outlines 0.5 mm, all else 0.25. Prints in black; the chalk red is for what must be done first. */
export const SHEET_STYLE = [
  'svg .edge{fill:none;stroke:var(--ink,#16181d);stroke-width:.5;stroke-linejoin:round;stroke-linecap:round}',
  'svg .thin{fill:none;stroke:var(--ink,#16181d);stroke-width:.25}',
  'svg .centre{fill:none;stroke:var(--ink,#16181d);stroke-width:.25;stroke-dasharray:6 1 .6 1}',
  'svg .hidden{fill:none;stroke:var(--ink,#16181d);stroke-width:.25;stroke-dasharray:2 1}',
  'svg .solid{fill:var(--ink,#16181d)}svg .sheet{fill:var(--paper,#fff)}svg .frame{fill:none;stroke:var(--ink,#16181d);stroke-width:.5}',
  'svg text{font-family:"Atkinson Hyperlegible",system-ui,sans-serif;fill:var(--ink,#16181d);font-variant-numeric:tabular-nums}',
  'svg .strong{font-weight:700}svg .limit-note{fill:var(--chalk,#b3261e);font-weight:700}',
].join('');
