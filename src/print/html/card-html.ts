import type { LimitsCard } from '../../views/index.ts';
import { escapeHtml, page, titleBlockHtml } from './report-html.ts';

/** So many limits stand large on one printed page. */
const MOST_LARGE = 8;

/** The limits card as one page to hang beside the hammer. `qr` is an SVG that leads to the hammer's page, where there is one. */
export function cardHtml(card: LimitsCard, options: { readonly fontFace?: string; readonly qr?: string } = {}): string {
  const list = (items: readonly string[]): string => `<ul>${items.map((item) => `<li>${escapeHtml(item)}</li>`).join('')}</ul>`;
  // As on paper: where there are many, the habits stand smaller in two columns under what bounds the blow.
  const many = card.limits.length > MOST_LARGE && card.habits.length > 0;
  const large = many ? card.limits.filter((one) => !card.habits.includes(one)) : card.limits;
  const body = `<main class="card"><p class="tag">${escapeHtml(card.tag)}</p><section class="verdict ${card.condition}"><p class="words">${escapeHtml(card.verdict)}</p></section>${list(large)}${many ? `<div class="habits">${list(card.habits)}</div>` : ''}<div class="always">${list(card.always)}</div>${options.qr === undefined ? '' : `<div class="qr">${options.qr}</div>`}</main>${titleBlockHtml(card.titleBlock)}`;
  return page(`${card.tag}: limits card`, body, options.fontFace);
}
