import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { HOME, type SourceFile } from './source-file.ts';

/** What is wrong with the numbered invariants of ARCHITECTURE.md: a number out of turn, none that holds one, a test that is not there. */
export function invariantProblems(text: string, there: (path: string) => boolean = (path) => existsSync(join(HOME, path))): string[] {
  const invariants = text.split(/^(?=\*\*I\d+\.)/m).filter((part) => /^\*\*I\d+\./.test(part));
  if (invariants.length === 0) return ['there is no invariant'];
  return invariants.flatMap((invariant, index) => {
    const name = /^\*\*(I\d+)\./.exec(invariant)![1]!;
    const holders = [...(/^Held by: (.+)$/m.exec(invariant)?.[1] ?? '').matchAll(/`([^`]+)`/g)].map((match) => match[1]!);
    const problems = holders
      .filter((path) => !/^test\/.+\.test\.ts$/.test(path) || !there(path))
      .map((path) => `${name}: is held by a test that is not there: ${path}`);
    if (holders.length === 0) problems.push(`${name}: names no test that holds it`);
    if (name !== `I${index + 1}`) problems.push(`${name}: stands in the place of I${index + 1}`);
    return problems;
  });
}

/** Where this program's own papers and the world's are mixed up: words that mean nothing to somebody who has only this folder. */
const FORBIDDEN_PHRASES: readonly RegExp[] = [
  new RegExp(`\\btran${'script'}s?\\b`, 'i'),
  new RegExp(`\\bpractition${'er'}s?\\b`, 'i'),
  new RegExp(`\\bthe iss${'ue'}\\b|\\biss${'ue'} #?\\d+`, 'i'),
  new RegExp(`\\.\\./sha${'red'}/[a-z]+\\.md|/wo${'rk'}/(main|sha${'red'})|DESI${'GN'}\\.md`),
  new RegExp(`\\b(trade|checks|motion|sound|stack|styles|face)\\.m${'d'}\\b`),
];

/** Phrases that must not stand in any file of the project. */
export function phraseProblems(files: readonly SourceFile[]): string[] {
  return files.flatMap(({ path, text }) =>
    text.split('\n').flatMap((line, index) =>
      FORBIDDEN_PHRASES.flatMap((phrase) => {
        const found = phrase.exec(line);
        return found ? [`${path}:${index + 1}: "${found[0]}" points outside the project`] : [];
      }),
    ),
  );
}

interface PackageList {
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

/** Packages whose version is not one version, and those that no decision gives a reason for. */
export function packageProblems(list: PackageList, decisions: string): string[] {
  return Object.entries({ ...list.dependencies, ...list.devDependencies }).flatMap(([name, version]) => [
    ...(/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version) ? [] : [`${name}: is not pinned; allowed is one exact version: ${version}`]),
    ...(decisions.includes(`\`${name}\``) ? [] : [`${name}: no decision in docs/decisions gives its reason`]),
  ]);
}
