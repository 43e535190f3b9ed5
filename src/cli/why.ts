import type { Command } from 'commander';
import { explain, type Explanation, type Picture } from '../derived/index.ts';
import { nearestName } from '../entries/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';

/** `why FILE KEY`: a finding or a value, explained down to readings and sources. */
export const whyCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('why <file> [key]'))
    .description('explain a finding (guide.play-side@top), a consequence (stack.loss) or a reading (lower-die.height) down to readings and sources; without a key, list the keys')
    .action(async (file: string, key: string | undefined, options: SurveyOptions) => {
      ended(await withSurvey(file, options, door, ({ input, picture }) => {
        if (key === undefined) return { text: () => keysOf(picture).join('\n'), json: () => ({ keys: keysOf(picture) }), exit: EXIT.fine };
        const explanation = explain(picture, knowledge, input.entries, key);
        if (explanation === undefined) throw new BadInput(`nothing of that name is known of this hammer; ${nearWords(key, picture)}: ${key}`);
        return { text: () => explanationText(explanation), json: () => ({ explanation }), exit: EXIT.fine };
      }));
    });
};

const keysOf = (picture: Picture): readonly string[] => {
  const findings = picture.findings.map((finding) => (finding.at === undefined ? finding.criterion : `${finding.criterion}@${finding.at}`));
  return [...new Set([...findings, ...Object.keys(picture.values), ...Object.keys(picture.known.looks)])].sort();
};

function nearWords(key: string, picture: Picture): string {
  const near = nearestName(key, keysOf(picture));
  return near === undefined ? 'a key that the command lists without one' : `did you mean ${near}`;
}

/** The tree with its branches pushed in. */
export function explanationText(explanation: Explanation, depth = 0): string {
  const pad = '  '.repeat(depth);
  const lines = [
    `${pad}${explanation.title} [${explanation.key}]: ${explanation.shown}`,
    ...(explanation.standing === '' ? [] : [`${pad}  how we know: ${explanation.standing}`]),
    ...(explanation.formula === undefined ? [] : [`${pad}  rule: ${explanation.formula}`]),
    ...(explanation.words === undefined ? [] : [`${pad}  ${explanation.words}`]),
    ...explanation.sources.map((source) => `${pad}  source: ${source.title}${source.where === '' ? '' : `, ${source.where}`} (${source.standing})`),
  ];
  return [...lines, ...explanation.children.map((child) => explanationText(child, depth + 1))].join('\n');
}
