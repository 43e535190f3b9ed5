import type { TitleBlock } from '../../views/index.ts';
import { escapeHtml, page, titleBlockHtml } from './report-html.ts';

/** One paper in a folder, in all the forms that it is there in. */
export interface FolderPaper {
  readonly title: string;
  readonly words: string;
  /** Links beside each other, the one to open first in front. */
  readonly files: readonly { readonly name: string; readonly words: string }[];
  /** File of a drawing in the folder, shown in its place. */
  readonly drawing?: string;
}

export interface FolderPage {
  readonly title: string;
  readonly titleBlock: TitleBlock;
  /** Verdict in words and its sentence, so that nobody has to open a paper for it. */
  readonly verdict: { readonly words: string; readonly sentence: string; readonly condition: string; readonly overdue?: string };
  /** File of the drawing at the head of the page, and what it shows. */
  readonly drawing: { readonly name: string; readonly words: string };
  readonly groups: readonly { readonly title: string; readonly papers: readonly FolderPaper[] }[];
  /** What somebody needs to compute the folder again. */
  readonly facts: readonly (readonly [label: string, text: string])[];
}

const STYLE = '.papers{list-style:none;padding:0;margin:.4rem 0}.papers li{border-bottom:var(--thin);padding:.5rem 0;break-inside:avoid}.papers b{font-size:1.05rem}.papers a{display:inline-block;padding:.35rem 0;margin-right:1.2rem}.papers p{margin:.1rem 0}.papers a{color:inherit}.papers img{max-width:100%;max-height:17rem;border:var(--thin);background:#fff;margin:.4rem 0}.head{display:block;max-width:100%;max-height:26rem;margin:.8rem auto}.hash{overflow-wrap:anywhere}';

/** The first page of a folder of papers: what the hammer may do, then a link to every file, then how to compute it again. */
export function folderHtml({ title, titleBlock, verdict, drawing, groups, facts }: FolderPage, options: { readonly fontFace?: string } = {}): string {
  const address = (name: string): string => escapeHtml(name.split('/').map(encodeURIComponent).join('/'));
  const link = ({ name, words }: FolderPaper['files'][number]): string => `<a href="${address(name)}">${escapeHtml(words)}</a>`;
  const paper = (one: FolderPaper): string => `<li><b>${escapeHtml(one.title)}</b><p>${escapeHtml(one.words)}</p>${one.drawing === undefined ? '' : `<img src="${address(one.drawing)}" alt="Drawing: ${escapeHtml(one.title)}" loading="lazy">`}<p>${one.files.map(link).join('')}</p></li>`;
  const body = [
    `<main class="sheet"><h1>${escapeHtml(title)}</h1>`,
    titleBlock.invented ? '<p class="small">Invented hammer, maker, place and people: made up to show the program at work.</p>' : '',
    `<section class="verdict ${escapeHtml(verdict.condition)}"><p class="words"><span class="mark ${escapeHtml(verdict.condition)}" aria-hidden="true"></span>${escapeHtml(verdict.words)}</p><p>${escapeHtml(verdict.sentence)}</p>${verdict.overdue === undefined ? '' : `<p>${escapeHtml(verdict.overdue)}</p>`}</section>`,
    `<img class="head" src="${address(drawing.name)}" alt="${escapeHtml(drawing.words)}">`,
    ...groups.map((group) => `<h2>${escapeHtml(group.title)}</h2><ul class="papers">${group.papers.map(paper).join('')}</ul>`),
    `<h2>To compute it again</h2><table class="facts hash"><tbody>${facts.map(([label, text]) => `<tr><th scope="row">${escapeHtml(label)}</th><td>${escapeHtml(text)}</td></tr>`).join('')}</tbody></table></main>`,
  ].join('\n');
  return page(title, `<style>${STYLE}</style>${body}${titleBlockHtml(titleBlock)}`, options.fontFace);
}
