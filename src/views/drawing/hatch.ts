import type { FindingGrade } from '../../derived/index.ts';

/** How the condition of a part is drawn: by outline and hatching, never by colour alone. */
export type Condition = FindingGrade | 'not-checked';

export const CONDITION_WORDS: Readonly<Record<Condition, string>> = {
  'not-checked': 'not checked', 'not-known': 'not known yet', 'does-not-apply': 'does not apply',
  sound: 'sound', watch: 'worth watching', limited: 'limited', 'stand-down': 'stand down',
};

/** Fill of an outline for each condition; the patterns stand in `hatchPatterns`. */
export function conditionFill(condition: Condition): string {
  switch (condition) {
    case 'watch':
      return 'url(#hatch-watch)';
    case 'limited':
      return 'url(#hatch-limited)';
    case 'stand-down':
      return 'var(--ink,#16181d)';
    default:
      return 'var(--paper,#f6f3ea)';
  }
}

/**
 * Pattern definitions: single hatch for worth watching, cross hatch for limited.
 * @param spacing distance between hatch lines, drawing units
 */
export function hatchPatterns(spacing: number): string {
  const stroke = `stroke="var(--ink,#16181d)" stroke-width="${(spacing * 0.14).toFixed(3)}"`;
  const paper = `<rect width="${spacing}" height="${spacing}" fill="var(--paper,#f6f3ea)"/>`;
  const single = `<path d="M0 0V${spacing}" ${stroke}/>`;
  const cross = `<path d="M0 0V${spacing}M0 0H${spacing}" ${stroke}/>`;
  return `<defs><pattern id="hatch-watch" width="${spacing}" height="${spacing}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">${paper}${single}</pattern>`
    + `<pattern id="hatch-limited" width="${(spacing * 0.62).toFixed(3)}" height="${(spacing * 0.62).toFixed(3)}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">${paper}${cross.replaceAll(String(spacing), (spacing * 0.62).toFixed(3))}</pattern></defs>`;
}

/** Style of a drawing that stands alone; inside the app the page's own variables win. */
export const DRAWING_STYLE = [
  'svg .edge{fill:var(--paper,#f6f3ea);stroke:var(--ink,#16181d);stroke-width:2.2px;vector-effect:non-scaling-stroke;stroke-linejoin:round}',
  'svg .thin{fill:none;stroke:var(--ink,#16181d);stroke-width:0.9px;vector-effect:non-scaling-stroke}',
  'svg .centre{fill:none;stroke:var(--ink,#16181d);stroke-width:0.9px;stroke-dasharray:14 3 2 3;vector-effect:non-scaling-stroke}',
  'svg .hidden{fill:none;stroke:var(--ink,#16181d);stroke-width:0.9px;stroke-dasharray:5 3;vector-effect:non-scaling-stroke}',
  'svg .ghost{fill:none;stroke:var(--ink,#16181d);stroke-width:0.9px;stroke-dasharray:7 4;vector-effect:non-scaling-stroke;opacity:.75}',
  'svg .not-checked>.edge,svg .not-known>.edge{stroke-dasharray:1.5 4;stroke-linecap:round}',
  'svg text{font-family:"Atkinson Hyperlegible",system-ui,sans-serif;fill:var(--ink,#16181d)}',
  // Paper round the letters: a line that passes under them does not cross them out.
  'svg .figure,svg .limit-note,svg .figure tspan,svg .limit-note tspan{paint-order:stroke;stroke:var(--paper,#f6f3ea);stroke-width:3.5px;vector-effect:non-scaling-stroke;stroke-linejoin:round}',
  'svg .limit-note{fill:var(--chalk,#b3261e)}svg .limit-line{stroke:var(--chalk,#b3261e);fill:none;stroke-width:1.6px;vector-effect:non-scaling-stroke}',
  'svg .white{fill:var(--paper,#f6f3ea)}',
].join('');
