// Measures a full report with 30 photographs of 12 million pixels on the bundled command line: seconds, peak memory of the process by
// /usr/bin/time, size, and what two readers say of it. Then, in this process, the same without photographs and the limits card.
// Run: npx tsx bench/papers/run.ts [a4|letter] [folder for the papers]
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { picture } from '../../src/derived/index.ts';
import { makeEntryId, readSurveyFile, writeSurveyFile, type Entry } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { cardPdf, reportPdf, wholeReport, type Paper } from '../../src/print/index.ts';
import { limitsCard } from '../../src/views/index.ts';

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

/** Photographs made by ffmpeg from a test pattern with grain, so that each has the size of a real one; their fingerprints in order. */
function makePhotographs(folder: string): readonly string[] {
  mkdirSync(folder);
  return Array.from({ length: COUNT }, (_, index) => {
    const file = join(folder, `${index}.jpg`);
    const made = spawnSync('ffmpeg', ['-v', 'error', '-f', 'lavfi', '-i', 'testsrc2=size=4000x3000:rate=1:duration=1', '-vf', `hue=h=${index * 12},noise=alls=12:allf=t`, '-frames:v', '1', '-q:v', '3', '-y', file]);
    if (made.status !== 0) throw new Error('this bench makes its photographs with ffmpeg, which is not on this machine');
    return createHash('sha256').update(readFileSync(file)).digest('hex');
  });
}

const example = new URL('../../examples/sallowfield-40-sunken-seat.yaml', import.meta.url);
const survey = readSurveyFile(readFileSync(example, 'utf8'));
const hammer = survey.entries[0]?.hammer ?? '';
const shots = makePhotographs(join(scratch, 'photographs')).map((sha256, index) => ({
  id: makeEntryId(Date.parse('2026-05-12T10:00:00Z') + index, new Uint8Array(10)), hammer, at: '2026-05-12T10:00:00Z', by: 'Bram Oake', kind: 'photograph',
  body: { sha256, mediaType: 'image/jpeg', words: `test pattern ${index + 1} with grain`, part: PARTS[index % PARTS.length] },
}) as Entry);
writeFileSync(join(scratch, 'survey.yaml'), writeSurveyFile([...survey.entries, ...shots]));

// Inside node_modules, where the bundle finds its packages and nothing else looks.
const bundle = fileURLToPath(new URL('../../node_modules/.cache/bench-papers', import.meta.url));
const built = run('npx', 'vite', 'build', '-c', 'vite.node.config.ts', '--outDir', bundle);
if (!built.includes('built in')) throw new Error(`the command line could not be built: ${built}`);
const timed = run('/usr/bin/time', '-v', process.execPath, join(bundle, 'tupwise.mjs'), 'report', join(scratch, 'survey.yaml'), '-o', join(out, 'report.pdf'), '--photographs', join(scratch, 'photographs'), '--paper', paper);
const [, wall = timed] = /wall clock.*: ([0-9:.]+)$/mu.exec(timed) ?? [];
const [, peak = '0'] = /Maximum resident set size \(kbytes\): (\d+)/u.exec(timed) ?? [];
const report = readFileSync(join(out, 'report.pdf'));
say(`report, ${COUNT} photographs, ${paper}`, `${wall} wall clock, ${(report.length / 1e6).toFixed(1)} MB`);
say('peak memory of the command line', `${Math.round(Number(peak) / 1024)} MB resident (300 allowed)`);

const found = picture(survey.entries, knowledge, '2026-11-26T00:00:00Z', 1, 'inch');
if (found === undefined) throw new Error('the example enrols no hammer');
const again = performance.now();
const plain = await reportPdf(wholeReport(found, knowledge), { paper });
say('the same without photographs', `${((performance.now() - again) / 1000).toFixed(2)} s, ${(plain.length / 1e6).toFixed(2)} MB`);
const third = performance.now();
const card = await cardPdf(limitsCard(found), { paper, address: 'https://hammer.invalid/SF-40' });
say('limits card', `${((performance.now() - third) / 1000).toFixed(2)} s, ${(card.length / 1e3).toFixed(0)} kB`);
const file = join(out, 'report.pdf');
say('qpdf --check', run('qpdf', '--check', file).includes('No syntax or stream encoding errors') ? 'clean' : run('qpdf', '--check', file));
say('pdfinfo', run('pdfinfo', file).split('\n').filter((line) => /Tagged|Pages|Page size|Error|Warning/u.test(line)).map((line) => line.replace(/\s+/gu, ' ')).join('; '));
say('pdfimages, JPEG carried whole', String(run('pdfimages', '-list', file).split('\n').filter((line) => / jpeg /u.test(line)).length));
say('pdftotext, words', String(run('pdftotext', file, '-').split(/\s+/u).length));
rmSync(scratch, { recursive: true, force: true });
