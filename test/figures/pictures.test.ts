import { describe, expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { cardHtml, reportHtml } from '../../src/print/index.ts';
import { elevation, limitsCard, reportTree, type ElevationView } from '../../src/views/index.ts';
import { INVENTED } from './invented-pictures.ts';
import { comparedWithKept } from './picture-file.ts';

const VIEWS: readonly ElevationView[] = ['front', 'side', 'both'];
/** What a picture never holds. */
const BROKEN = /NaN|undefined|Infinity|\[object|null/;
const hold = (name: string, text: string): void => {
  expect(text).not.toMatch(BROKEN);
  const { kept, now } = comparedWithKept(name, text);
  expect(now === kept, `${name} is drawn otherwise than the committed one; look at both (the new one lies beside it), then TUPWISE_REDRAW=1 npx vitest run test/figures`).toBe(true);
};

describe.each([...INVENTED])('%s', (name, picture) => {
  test.each(VIEWS)('its elevation, %s', (view) => hold(`${name}/elevation-${view}.svg`, elevation(picture, { view })));
  test('its elevation on a phone', () => hold(`${name}/elevation-phone.svg`, elevation(picture, { view: 'front', balloons: false, lettering: 'phone', touch: true })));
  test('its limits card', () => hold(`${name}/card.html`, cardHtml(limitsCard(picture))));
  test('the first page of its report', () => hold(`${name}/report-first-page.txt`, firstPage(reportHtml(reportTree(picture, knowledge)))));
});

/** The words of the report up to the first new page, a line for each paragraph, row and heading. */
function firstPage(html: string): string {
  const body = html.slice(html.indexOf('<main'), html.includes('<div class="new-page">') ? html.indexOf('<div class="new-page">') : undefined);
  const lines = body.replace(/<svg[\s\S]*?<\/svg>/g, '').replace(/<\/(p|li|tr|h\d|caption|section)>/g, '\n').replace(/<\/t[dh]>/g, ' | ').replace(/<[^>]+>/g, '');
  return lines.replace(/&#(\d+);/g, (_whole, code: string) => String.fromCharCode(Number(code))).split('\n').map((line) => line.trim()).filter((line) => line !== '').join('\n');
}
