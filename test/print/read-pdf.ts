import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether an independent reader is on this machine; tests that need it say so and are passed over. */
export function hasReader(...programs: readonly string[]): boolean {
  const missing = programs.filter((program) => spawnSync(program, ['--version'], { stdio: 'ignore' }).error !== undefined);
  if (missing.length > 0) console.log(`passed over: ${missing.join(', ')} not on this machine`);
  return missing.length === 0;
}

/** Runs a reader on a PDF and gives what it printed; `{}` in the arguments is the file. A complaint of the reader is an error. */
export function readPdf(pdf: Uint8Array, program: string, ...args: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'tupwise-paper-'));
  try {
    const file = join(folder, 'paper.pdf');
    writeFileSync(file, pdf);
    const run = spawnSync(program, args.map((one) => (one === '{}' ? file : one)), { encoding: 'utf8', maxBuffer: 64e6 });
    if (run.status !== 0 || run.stderr !== '') throw new Error(`${program} complains (${run.status}): ${run.stderr}${run.stdout.slice(0, 500)}`);
    return run.stdout;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Text of a PDF in reading order, without places where a long word may break. */
export const textOf = (pdf: Uint8Array, ...args: readonly string[]): string => readPdf(pdf, 'pdftotext', ...args, '{}', '-').replaceAll('\u200b', '');

/** A page as grey values, for looking at it by sums. */
export function greyPage(pdf: Uint8Array, page: number, dotsPerInch: number): { readonly width: number; readonly height: number; readonly at: (x: number, y: number) => number } {
  const folder = mkdtempSync(join(tmpdir(), 'tupwise-paper-'));
  try {
    const file = join(folder, 'paper.pdf');
    writeFileSync(file, pdf);
    const pgm = execFileSync('pdftoppm', ['-gray', '-r', String(dotsPerInch), '-f', String(page), '-l', String(page), file], { maxBuffer: 64e6 });
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/u.exec(pgm.toString('latin1', 0, 40));
    if (head === null) throw new Error('pdftoppm gave no grey page');
    const width = Number(head[1]);
    return { width, height: Number(head[2]), at: (x, y) => pgm[head[0].length + Math.round(y) * width + Math.round(x)] ?? 255 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
