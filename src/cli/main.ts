#!/usr/bin/env node
import { run } from './run.ts';

const standardInput = async (): Promise<string> => {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
};

// A reader that has seen enough closes the pipe; that is no failure.
process.stdout.on('error', (failure: NodeJS.ErrnoException) => {
  if (failure.code === 'EPIPE') process.exit(0);
  throw failure;
});

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  // Back to the beginning of the line, what stood there wiped away.
  ...(process.stderr.isTTY && process.stdout.isTTY ? { passing: (text: string) => void process.stderr.write(`\r\u001B[K${text}`) } : {}),
  standardInput,
  now: () => new Date().toISOString(),
});
