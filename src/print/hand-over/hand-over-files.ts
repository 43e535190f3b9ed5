import { partsToMake } from '../../derived/making/index.ts';
import { writeSurveyFile } from '../../entries/index.ts';
import { outlook, overdueSentence, type Duty } from '../../derived/index.ts';
import { elevation, limitsCard, OUTLOOK_TITLES, outlookSheet, sheetTree, titleBlock, VERDICT_WORDS, type OutlookId, type ReportTree } from '../../views/index.ts';
import { calendarOf, drawnParts, handOverSheet, motionOnPaper, SHEET_TITLES, type SheetGround, type SheetId } from '../../views/work/index.ts';
import { fontFace, withFont } from '../font-face.ts';
import { folderHtml, type FolderPaper } from '../html/folder-html.ts';
import { reportHtml } from '../html/report-html.ts';
import { cardPdf, reportPdfParts, type Paper, type Photographs } from '../pdf/index.ts';
import { wholeReport } from '../whole-report.ts';
import { logJson } from './log-json.ts';
import { partFiles } from './part-files.ts';

export type HandOverGround = SheetGround;

export interface HandOverOptions {
  readonly paper: Paper;
  /** Version of the program, for whoever wants to compute the folder again. */
  readonly version: string;
  readonly photographs?: Photographs;
  /** Address of the hammer's page for the code on the card. */
  readonly address?: string;
}

/** Takes one finished file. */
type Put = (name: string, content: string | Uint8Array | AsyncIterable<Uint8Array>) => Promise<void>;

const CONDITION = { fit: 'sound', 'fit-within-limits': 'limited', 'stand-down': 'stand-down', 'not-known-yet': 'not-known' } as const;

/** What is overdue, where the verdict's sentence does not say it. */
const overdueOf = ({ overdue, sentence }: Pick<Duty, 'overdue' | 'sentence'>): { overdue?: string } =>
  (overdue === undefined || overdue.length === 0 || sentence.includes('overdue') ? {} : { overdue: overdueSentence(overdue) });

/**
 * Makes every paper of a hammer, numbered in the order in which somebody reads them, and a page that leads to them, one file after the other, so that they never all lie in memory.
 * The same log, instant, seed, paper and units give the same bytes.
 * @param ground the picture, the log that it was made from and nothing later, and the knowledge
 */
export async function handOverFiles(ground: HandOverGround, options: HandOverOptions, put: Put): Promise<void> {
  const { picture, entries, knowledge } = ground;
  const { paper } = options;
  const face = await fontFace();
  const drawing = elevation(picture);
  const worked = outlook(picture, picture.provenance.seed);
  let last = 0;
  const numbered = (name: string): string => `${String((last += 1)).padStart(2, '0')}-${name}`;
  const titled = (title: string): string => `${last}. ${title}`;
  const both = async (name: string, tree: ReportTree): Promise<FolderPaper['files']> => {
    const base = numbered(name);
    await put(`${base}.pdf`, reportPdfParts(tree, { paper, ...(options.photographs === undefined ? {} : { photographs: options.photographs }) }));
    await put(`${base}.html`, reportHtml(tree, { fontFace: face }));
    return [{ name: `${base}.pdf`, words: 'PDF' }, { name: `${base}.html`, words: 'HTML' }];
  };
  const ahead = async (id: OutlookId): Promise<FolderPaper> => {
    const files = await both(OUTLOOK_FILES[id], outlookSheet(id, { picture, outlook: worked, knowledge, program: options.version }));
    return { title: titled(OUTLOOK_TITLES[id].title), words: OUTLOOK_TITLES[id].words, files };
  };
  const sheet = async (id: SheetId): Promise<FolderPaper> => {
    const files = await both(FILE_NAMES[id], handOverSheet(id, ground));
    return { title: titled(SHEET_TITLES[id].title), words: SHEET_TITLES[id].words, files };
  };
  const report = await both('report', wholeReport(picture, knowledge, { outlook: worked, program: options.version }));
  const papers: FolderPaper[] = [{ title: titled('Report'), words: 'Verdict, limits, reasons, what was not checked, findings, worksheet, readings, cautions, sources.', files: report }];
  const card = `${numbered('limits-card')}.pdf`;
  await put(card, await cardPdf(limitsCard(picture), { paper, ...(options.address === undefined ? {} : { address: options.address }) }));
  papers.push({ title: titled('Limits card'), words: 'One page to hang beside the hammer, readable at two metres.', files: [{ name: card, words: 'PDF' }] });
  const running: FolderPaper[] = [];
  for (const id of ['oiling', 'capacity'] as const) running.push(await ahead(id));
  const work: FolderPaper[] = [];
  for (const id of ['worksheet', 'settings', 'parts', 'order', 'upkeep', 'inspection', 'sale'] as const satisfies readonly SheetId[]) work.push(await sheet(id));
  await put('calendar.ics', calendarOf(picture, entries));
  work.push({ title: 'Calendar', words: 'What is due, as a calendar file that telephones and computers take in.', files: [{ name: 'calendar.ics', words: 'Calendar file' }] });
  const place: FolderPaper[] = [];
  for (const id of ['moving', 'ground', 'power'] as const) place.push(await ahead(id));
  const motion = motionOnPaper(picture, worked.motion);
  const motionFiles = [...await both('motion', sheetTree(picture, 'Motion', motion.blocks))];
  const motionTitle = titled('Motion');
  if (motion.svg !== undefined) {
    await put('motion.svg', withFont(motion.svg, face));
    motionFiles.push({ name: 'motion.svg', words: 'SVG' });
  }
  await put('elevation.svg', withFont(drawing, face));
  const drawings: FolderPaper[] = [
    { title: motionTitle, words: 'How it moves and what it sounds like, as found.', files: motionFiles },
    { title: 'Elevation', words: 'The hammer to scale from its own readings.', files: [{ name: 'elevation.svg', words: 'SVG' }] },
  ];
  const parts: FolderPaper[] = [];
  for (const part of drawnParts(partsToMake(picture))) {
    const files = await partFiles(picture, part, paper);
    for (const file of files) await put(`parts/${file.name}`, file.content);
    parts.push({ title: part.title, words: `${part.quantity} off. ${part.material}.`, drawing: `parts/${part.id}-1.svg`, files: files.map((file) => ({ name: `parts/${file.name}`, words: file.words })) });
  }
  await put('survey.yaml', writeSurveyFile(entries));
  await put('log.json', logJson(picture, entries, options.version));
  const log: FolderPaper[] = [
    { title: 'Survey file', words: 'Everything that was entered, as a text file that the command line reads again.', files: [{ name: 'survey.yaml', words: 'YAML' }] },
    { title: 'Log', words: 'Every entry as it was made, with the fingerprint of the whole.', files: [{ name: 'log.json', words: 'JSON' }] },
  ];
  const { provenance, known, duty } = picture;
  await put('index.html', folderHtml({
    title: `${known.identity.tag}: hand-over`, titleBlock: titleBlock(picture, 'Hand-over'),
    verdict: { words: VERDICT_WORDS[duty.verdict], sentence: duty.sentence, condition: CONDITION[duty.verdict], ...overdueOf(duty) },
    drawing: { name: 'elevation.svg', words: `Elevation of ${known.identity.tag} to scale` },
    groups: [{ title: 'Read first', papers }, { title: 'Before it is started', papers: running }, { title: 'Work, upkeep and sale', papers: work }, { title: 'Where it goes and stands', papers: place }, ...(parts.length === 0 ? [] : [{ title: 'Drawings of parts to make', papers: parts }]), { title: 'The hammer', papers: drawings }, { title: 'The log behind it all', papers: log }],
    facts: [['Log', `${provenance.entries} entries, SHA-256 ${provenance.logHash}`], ['Program', options.version], ['Knowledge', provenance.knowledgeVersion], ['As of', provenance.asOf], ['Seed', String(provenance.seed)], ['Units', picture.system]],
  }, { fontFace: face }));
}

/** Names of the files of the sheets, by their trade words. */
const FILE_NAMES = { worksheet: 'worksheet', settings: 'setting-sheet', parts: 'parts-to-make', order: 'order-sheet', upkeep: 'upkeep', inspection: 'inspection-record', sale: 'sale-sheet' } as const;
const OUTLOOK_FILES: Readonly<Record<OutlookId, string>> = { capacity: 'what-it-forges', oiling: 'oiling-round', power: 'power', ground: 'ground-and-neighbours', moving: 'moving-it' };
