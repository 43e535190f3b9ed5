import type { LimitsCard } from '../../views/index.ts';
import { escapeHtml, page, titleBlockHtml } from './report-html.ts';

/** The limits card as one page to hang beside the hammer. `qr` is an SVG that leads to the hammer's page, where there is one. */
export function cardHtml(card: LimitsCard, options: { readonly fontFace?: string; readonly qr?: string } = {}): string {
  const list = (items: readonly string[]): string => `<ul>${items.map((item) => `<li>${escapeHtml(item)}</li>`).join('')}</ul>`;
  const body = `<main class="card"><p class="tag">${escapeHtml(card.tag)}</p><section class="verdict ${card.condition}"><p class="words">${escapeHtml(card.verdict)}</p></section>${list(card.limits)}<div class="always">${list(card.always)}</div>${options.qr === undefined ? '' : `<div class="qr">${options.qr}</div>`}</main>${titleBlockHtml(card.titleBlock)}`;
  return page(`${card.tag}: limits card`, body, options.fontFace);
}
