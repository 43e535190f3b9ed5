// Measures a full report with 30 photographs of 12 million pixels: seconds, peak memory, size, and what two readers say of it.
// Run: npx tsx bench/papers/run.ts [a4|letter] [folder for the papers]
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { picture } from '../../src/derived/index.ts';
import { makeEntryId, readSurveyFile, type Entry } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { cardPdf, reportPdf, type Paper } from '../../src/print/index.ts';
import { elevation, limitsCard, reportTree } from '../../src/views/index.ts';

const COUNT = 30;
const PARTS = ['frame', 'seat', 'upper-die', 'lower-die', 'ram', 'main-bearings'];
const paper: Paper = process.argv[2] === 'letter' ? 'letter' : 'a4';
const scratch = mkdtempSync(join(tmpdir(), 'tupwise-bench-'));
const out = process.argv[3] ?? scratch;
mkdirSync(out, { recursive: true });

const say = (label: string, text: string): void => console.log(`${label.padEnd(34)} ${text}`);
const run = (program: string, ...args: readonly string[]): string => {
  const done = spawnSync(program, args, { encoding: 'utf8', maxBuffer: 64e6 });
  return done.error === undefined ? `${done.stdout}${done.stderr}` : `${program} is not on this machine`;
};

/** Photographs made by ffmpeg from a test pattern with grain, so that each has the size of a real one. */
function makePhotographs(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (let index = 0; index < COUNT; index += 1) {
    const file = join(scratch, `${index}.jpg`);
    const made = spawnSync('ffmpeg', ['-v', 'error', '-f', 'lavfi', '-i', 'testsrc2=size=4000x3000:rate=1:duration=1', '-vf', `hue=h=${index * 12},noise=alls=12:allf=t`, '-frames:v', '1', '-q:v', '3', '-y', file]);
    if (made.status !== 0) throw new Error('this bench makes its photographs with ffmpeg, which is not on this machine');
    // Stands for the hash of the contents, which this process must not have read: its memory is measured.
    files.set(createHash('sha256').update(file).digest('hex'), file);
  }
  return files;
}

const survey = readSurveyFile(readFileSync(new URL('../../examples/sallowfield-40-sunken-seat.yaml', import.meta.url), 'utf8'));
const hammer = survey.entries[0]?.hammer ?? '';
const photographs = makePhotographs();
const shots: readonly Entry[] = [...photographs.keys()].map((sha256, index) => ({
  id: makeEntryId(Date.parse('2026-05-12T10:00:00Z') + index, new Uint8Array(10)), hammer, at: '2026-05-12T10:00:00Z', by: 'Bram Oake', kind: 'photograph',
  body: { sha256, mediaType: 'image/jpeg', words: `test pattern ${index + 1} with grain`, part: PARTS[index % PARTS.length] },
}));
const found = picture([...survey.entries, ...shots], knowledge, '2026-11-26T00:00:00Z', 1, 'inch');
if (found === undefined) throw new Error('the example enrols no hammer');
const tree = reportTree(found, knowledge, { elevation: elevation(found) });

say('memory before', `${Math.round(process.resourceUsage().maxRSS / 1024)} MB`);
const start = performance.now();
const report = await reportPdf(tree, { paper, photographs: async (sha256) => {
  const file = photographs.get(sha256);
  return file === undefined ? undefined : { bytes: await readFile(file), mediaType: 'image/jpeg' };
} });
say(`report, ${COUNT} photographs, ${paper}`, `${((performance.now() - start) / 1000).toFixed(2)} s, ${(report.length / 1e6).toFixed(1)} MB`);
say('peak memory of the process', `${Math.round(process.resourceUsage().maxRSS / 1024)} MB`);
const again = performance.now();
const plain = await reportPdf(tree, { paper });
say('the same without photographs', `${((performance.now() - again) / 1000).toFixed(2)} s, ${(plain.length / 1e6).toFixed(2)} MB`);
const third = performance.now();
const card = await cardPdf(limitsCard(found), { paper, address: 'https://hammer.invalid/SF-40' });
say('limits card', `${((performance.now() - third) / 1000).toFixed(2)} s, ${(card.length / 1e3).toFixed(0)} kB`);
const file = join(out, 'report.pdf');
writeFileSync(file, report);
say('qpdf --check', run('qpdf', '--check', file).includes('No syntax or stream encoding errors') ? 'clean' : run('qpdf', '--check', file));
say('pdfinfo', run('pdfinfo', file).split('\n').filter((line) => /Tagged|Pages|Page size|Error|Warning/u.test(line)).map((line) => line.replace(/\s+/gu, ' ')).join('; '));
say('pdfimages, JPEG carried whole', String(run('pdfimages', '-list', file).split('\n').filter((line) => / jpeg /u.test(line)).length));
say('pdftotext, words', String(run('pdftotext', file, '-').split(/\s+/u).length));
rmSync(scratch, { recursive: true, force: true });
