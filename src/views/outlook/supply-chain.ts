import type { Picture } from '../../derived/index.ts';
import { overloadAtOdds, type PowerInput } from '../../derived/power/index.ts';
import { brokenLines, figureText } from '../drawing/figure-text.ts';
import { DRAWING_STYLE } from '../drawing/hatch.ts';
import { box, coordinate, escapeText, group, line, type Svg } from '../drawing/svg.ts';
import { platePower } from './plate-power.ts';

interface Link {
  readonly name: string;
  readonly found: string;
  /** `black` must be put right before it runs; `dotted` was not looked at. */
  readonly drawn: 'plain' | 'dotted' | 'black';
}

/** Supply, isolator, starter, converter where there is one, motor and belt, each with what was found. */
export function supplyChain(picture: Picture, input: PowerInput, width: 'sheet' | 'phone'): { readonly svg: Svg; readonly words: string } {
  const links = linksOf(picture, input);
  const phone = width === 'phone';
  const size = 12.5;
  const [W, h, gap] = phone ? [350, 58, 16] : [640, 92, 18];
  const wide = phone ? 300 : (W - 12 - gap * (links.length - 1)) / links.length;
  const shapes = links.map((link, index) => {
    const [x, y] = phone ? [25, 8 + index * (h + gap)] : [6 + index * (wide + gap), 8];
    const black = link.drawn === 'black';
    const lines = brokenLines(link.found, size, wide - 14).slice(0, phone ? 2 : 4);
    const className = black ? 'white' : 'note';
    const arrow = index === 0 ? '' : phone ? line([x + wide / 2, y - gap], [x + wide / 2, y], 'edge') : line([x - gap, y + h / 2], [x, y + h / 2], 'edge');
    return arrow + group({ class: link.drawn === 'dotted' ? 'not-checked' : 'sound' }, box(x, y, wide, h, 'edge', black ? 'var(--ink,#16181d)' : 'var(--paper,#f6f3ea)'))
      + `<text class="${className}" x="${coordinate(x + 7)}" y="${coordinate(y + size * 1.4)}" font-size="${size * 1.06}" font-weight="700">${escapeText(link.name)}</text>`
      + lines.map((text, row) => figureText([x + 7, y + size * (2.75 + row * 1.25)], text, size, 'start', className)).join('');
  }).join('');
  const height = phone ? links.length * (h + gap) : h + 16;
  const words = links.map((link) => `${link.name}: ${link.found}`).join('; ');
  return { words: `${words}.`, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${W} ${height}" role="img" aria-label="${escapeText(words)}"><style>${DRAWING_STYLE}</style>${shapes}</svg>` };
}

function linksOf(picture: Picture, input: PowerInput): readonly Link[] {
  const { system } = picture;
  const said = (answer: string | undefined): string => (answer === undefined || answer === 'not-known' ? 'not looked at' : answer.replaceAll('-', ' '));
  const motor = [input.power === undefined ? undefined : platePower(input.power, system), input.plateCurrent === undefined ? undefined : `${input.plateCurrent} A`].filter((one) => one !== undefined).join(', ');
  const supply = [input.voltage === undefined ? undefined : `${input.voltage.toFixed(0)} V`, input.phase === 'not-known' ? undefined : { single: 'one phase', three: 'three phases', 'three-from-converter': 'one phase, three made', 'direct-current': 'direct current' }[input.phase]].filter((one) => one !== undefined).join(', ');
  const [drawn, full] = [Math.max(0, ...input.runningCurrents), input.plateCurrent ?? Number.POSITIVE_INFINITY];
  const of = (name: string, found: string, wrong: boolean): Link => ({ name, found, drawn: wrong ? 'black' : found === 'not looked at' || found === 'not read' ? 'dotted' : 'plain' });
  const starter = [input.noVolt === undefined || input.noVolt === 'not-known' ? undefined : input.noVolt === 'restarts' ? 'starts again by itself' : 'stays off', input.overload === undefined || input.overload === 'not-known' ? undefined : `overload ${said(input.overload)}${overloadAtOdds(input) ? ', and the motor draws more than that lets through' : ''}`, input.liveParts === 'exposed' ? 'live parts open' : undefined].filter((one) => one !== undefined).join('; ');
  return [
    of('Supply', supply === '' ? 'not read' : supply, false),
    of('Isolator', said(input.isolation), input.isolation === 'none'),
    of('Starter', starter === '' ? 'not looked at' : starter, input.noVolt === 'restarts' || input.liveParts === 'exposed' || input.overload === 'none' || input.overload === 'wrong' || overloadAtOdds(input)),
    ...(input.converter === 'none' || (input.converter === 'not-known' && input.phase !== 'three-from-converter') ? [] : [of('Converter', `${said(input.converter)}${input.converterPower === undefined ? '' : `, ${platePower(input.converterPower, system)}`}`, false)]),
    of('Motor', motor === '' ? 'not read' : drawn > full ? `${motor}; draws ${Number(drawn.toPrecision(3))} A` : motor, drawn > full),
    of('Belt', input.beltPower === undefined ? 'not read' : `carries ${platePower(input.beltPower, system)}`, false),
  ];
}
