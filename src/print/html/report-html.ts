import { CONDITION_WORDS, type Block, type Condition, type ReportTree, type TitleBlock } from '../../views/index.ts';
import { SHEET_STYLE } from './sheet-style.ts';

export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A report as one self-contained HTML page that prints on letter and A4. */
export function reportHtml(tree: ReportTree, options: { readonly fontFace?: string } = {}): string {
  const body = tree.blocks.map(blockHtml).join('\n');
  return page(tree.title, `<main class="sheet">${body}</main>${titleBlockHtml(tree.titleBlock)}`, options.fontFace);
}

/** Text as it may stand in a style sheet's string. */
const cssText = (text: string): string => text.replace(/[^A-Za-z0-9 .,-]/g, (sign) => `\\${(sign.codePointAt(0) ?? 32).toString(16)} `);

/** Wraps a body into a page with the sheet style; loose printed pages say whose they are and which. */
export function page(title: string, body: string, fontFace = ''): string {
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>${escapeHtml(title)}</title><style>${fontFace}${SHEET_STYLE}@page{@bottom-right{content:"${cssText(title.split(':')[0] ?? title)}, page " counter(page) " of " counter(pages);font:9pt "Atkinson Hyperlegible",sans-serif}}</style></head><body>${body}</body></html>`;
}

/** The mark of a condition: a swatch drawn as on the elevation, always with its word beside it. */
export const markHtml = (condition: Condition): string => `<span class="mark ${condition}" aria-hidden="true"></span><span class="mark-word">${CONDITION_WORDS[condition]}</span>`;

export function titleBlockHtml(block: TitleBlock): string {
  const cells: readonly (readonly [string, string])[] = [
    ['Hammer', block.tag], ['Class', block.hammerClass], ['Sheet', block.sheet], ['Last look', block.date], ['Paper made', block.made], ['By', block.by], ['Verdict', block.verdict], ['Log', block.log],
  ];
  return `<footer class="title-block">${block.invented ? '<div class="invented"><span>Note</span><b>Invented hammer</b></div>' : ''}${cells.map(([label, text]) => `<div><span>${label}</span><b>${escapeHtml(text)}</b></div>`).join('')}</footer>`;
}

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}>${escapeHtml(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p class="${block.tone ?? 'plain'}">${escapeHtml(block.text)}</p>`;
    case 'verdict':
      return `<section class="verdict ${block.condition}"><p class="words"><span class="mark ${block.condition}" aria-hidden="true"></span>${escapeHtml(block.words)}</p><p>${escapeHtml(block.sentence)}</p><p class="small">${escapeHtml(block.sureWords)}</p></section>`;
    case 'answer':
      return `<section class="answer${block.estimate ? ' estimate' : ''}"><p class="words">${escapeHtml(block.words)}</p><p>${escapeHtml(block.sentence)}</p><p class="small">${block.estimate ? '<b>Estimate.</b> ' : ''}${escapeHtml(block.rests)}</p></section>`;
    case 'list': {
      const tag = block.ordered ? 'ol' : 'ul';
      return `<${tag}>${block.items.map((item) => `<li>${escapeHtml(item)}</li>`).join('')}</${tag}>`;
    }
    case 'facts':
      return `<table class="facts"><tbody>${block.rows.map(([label, text]) => `<tr><th scope="row">${escapeHtml(label)}</th><td>${escapeHtml(text)}</td></tr>`).join('')}</tbody></table>`;
    case 'table':
      return block.rows.length === 0 ? '' : `<table class="rows${block.dense === true ? ' dense' : ''}"><caption>${escapeHtml(block.caption)}</caption><thead><tr>${block.columns.map((column) => `<th scope="col">${escapeHtml(column)}</th>`).join('')}</tr></thead><tbody>${block.rows.map((row) => `<tr>${row.cells.map((cell, index) => `<td data-column="${escapeHtml(block.columns[index] ?? '')}">${index === 0 && row.condition !== undefined ? `<span class="mark ${row.condition}" role="img" aria-label="${CONDITION_WORDS[row.condition]}"></span>` : ''}${escapeHtml(cell)}</td>`).join('')}</tr>`).join('')}</tbody></table>`;
    case 'figure':
      return `<figure role="img" aria-label="${escapeHtml(block.words)}">${block.svg}<figcaption>${escapeHtml(block.caption)}</figcaption></figure>`;
    case 'photograph':
      return `<p class="small">${escapeHtml(block.caption)}</p>`;
    case 'caution':
      return `<p class="caution"><b>Caution.</b> ${escapeHtml(block.text)}${block.source === '' ? '' : ` <span class="small">(${escapeHtml(block.source)})</span>`}</p>`;
    case 'new-page':
      return '<div class="new-page"></div>';
  }
}
