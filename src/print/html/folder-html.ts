import type { TitleBlock } from '../../views/index.ts';
import { escapeHtml, page, titleBlockHtml } from './report-html.ts';

/** One paper in a folder, in all the forms that it is there in. */
export interface FolderPaper {
  readonly title: string;
  readonly words: string;
  /** Links beside each other, the one to open first in front. */
  readonly files: readonly { readonly name: string; readonly words: string }[];
  /** A drawing shown in its place, as SVG of our own making. */
  readonly svg?: string;
}

export interface FolderPage {
  readonly title: string;
  readonly titleBlock: TitleBlock;
  /** Verdict in words and its sentence, so that nobody has to open a paper for it. */
  readonly verdict: { readonly words: string; readonly sentence: string; readonly condition: string };
  readonly groups: readonly { readonly title: string; readonly papers: readonly FolderPaper[] }[];
  /** What somebody needs to compute the folder again. */
  readonly facts: readonly (readonly [label: string, text: string])[];
}

const STYLE = '.papers{list-style:none;padding:0;margin:.4rem 0}.papers li{border-bottom:var(--thin);padding:.5rem 0;break-inside:avoid}.papers b{font-size:1.05rem}.papers a{display:inline-block;padding:.35rem 0;margin-right:1.2rem}.papers p{margin:.1rem 0}.papers .drawn svg{max-width:100%;height:auto;max-height:22rem;border:var(--thin)}.hash{overflow-wrap:anywhere}';

/** The first page of a folder of papers: what the hammer may do, then a link to every file, then how to compute it again. */
export function folderHtml({ title, titleBlock, verdict, groups, facts }: FolderPage, options: { readonly fontFace?: string } = {}): string {
  const link = ({ name, words }: FolderPaper['files'][number]): string => `<a href="${escapeHtml(name.split('/').map(encodeURIComponent).join('/'))}">${escapeHtml(words)}</a>`;
  const paper = (one: FolderPaper): string => `<li><b>${escapeHtml(one.title)}</b><p>${escapeHtml(one.words)}</p>${one.svg === undefined ? '' : `<div class="drawn">${one.svg}</div>`}<p>${one.files.map(link).join('')}</p></li>`;
  const body = [
    `<main class="sheet"><h1>${escapeHtml(title)}</h1>`,
    titleBlock.invented ? '<p class="small">Invented hammer, maker, place and people: made up to show the program at work.</p>' : '',
    `<section class="verdict ${escapeHtml(verdict.condition)}"><p class="words"><span class="mark ${escapeHtml(verdict.condition)}" aria-hidden="true"></span>${escapeHtml(verdict.words)}</p><p>${escapeHtml(verdict.sentence)}</p></section>`,
    ...groups.map((group) => `<h2>${escapeHtml(group.title)}</h2><ul class="papers">${group.papers.map(paper).join('')}</ul>`),
    `<h2>To compute it again</h2><table class="facts hash"><tbody>${facts.map(([label, text]) => `<tr><th scope="row">${escapeHtml(label)}</th><td>${escapeHtml(text)}</td></tr>`).join('')}</tbody></table></main>`,
  ].join('\n');
  return page(title, `<style>${STYLE}</style>${body}${titleBlockHtml(titleBlock)}`, options.fontFace);
}
