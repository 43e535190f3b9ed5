import { expect } from 'vitest';
import { PAPER_SIZES, type Paper } from '../../src/print/index.ts';
import { readPdf } from './read-pdf.ts';

/** Everything that both readers can say of a tagged PDF; gives the number of pages. */
export function checkStructure(pdf: Uint8Array, paper: Paper, title: string): number {
  expect(readPdf(pdf, 'qpdf', '--check', '{}')).toContain('No syntax or stream encoding errors');
  const info = readPdf(pdf, 'pdfinfo', '{}');
  expect(info).toMatch(/Tagged: +yes/u);
  expect(info.replaceAll('\u200b', '')).toContain(title);
  const [, across, up] = /Page size: +([0-9.]+) x ([0-9.]+)/u.exec(info) ?? [];
  const { width, height } = PAPER_SIZES[paper];
  expect([Number(across), Number(up)].sort((a, b) => a - b).map(Math.round)).toEqual([width, height].map((side) => Math.round((side / 25.4) * 72)));
  for (const font of readPdf(pdf, 'pdffonts', '{}').trim().split('\n').slice(2)) expect(font).toMatch(/ yes yes yes +\d+ +\d+$/u);
  checkTags(pdf);
  return Number(/Pages: +(\d+)/u.exec(info)?.[1]);
}

interface TagNode { readonly role: string; readonly alt: string | undefined }

/** Reads the objects themselves: language, marks, title shown, heading order, an alternative text on every figure, heads in every table. */
function checkTags(pdf: Uint8Array): void {
  const objects = Object.values((JSON.parse(readPdf(pdf, 'qpdf', '--json=2', '--json-key=qpdf', '{}')) as { qpdf: [unknown, Record<string, { value?: Record<string, unknown> }>] }).qpdf[1]).map((one) => one.value).filter((one) => typeof one === 'object' && one !== null);
  const catalog = objects.find((one) => one['/Type'] === '/Catalog') ?? {};
  expect(catalog['/Lang']).toMatch(/^u:en/u);
  expect(catalog['/MarkInfo']).toMatchObject({ '/Marked': true });
  expect(catalog['/StructTreeRoot']).toBeDefined();
  expect(catalog['/ViewerPreferences']).toMatchObject({ '/DisplayDocTitle': true });
  const nodes: readonly TagNode[] = objects.filter((one) => '/S' in one && '/P' in one && '/K' in one).map((one) => ({ role: String(one['/S']), alt: one['/Alt'] as string | undefined }));
  const levels = nodes.flatMap(({ role }) => /^\/H([1-6])$/u.exec(role)?.[1] ?? []).map(Number);
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  expect(new Set(levels).has(3) && !new Set(levels).has(2)).toBe(false);
  for (const figure of nodes.filter(({ role }) => role === '/Figure')) expect(figure.alt ?? '').not.toBe('');
  const tables = nodes.filter(({ role }) => role === '/Table').length;
  if (tables > 0) expect(nodes.filter(({ role }) => role === '/TH').length).toBeGreaterThanOrEqual(tables * 2);
}
