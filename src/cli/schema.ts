import type { Command } from 'commander';
import { surveyFileSchema } from '../entries/index.ts';
import { EXIT, type Door } from './door.ts';
import { writeText } from './write-text.ts';

/** The schema as the file in `examples` holds it. */
export const schemaText = (): string => `${JSON.stringify(surveyFileSchema(), null, 1)}\n`;

/** `schema`: the JSON Schema of survey files, for editors. */
export const schemaCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  program.command('schema')
    .description('write the JSON Schema of survey files, with which an editor completes parts, places, looks and answers')
    .option('-o, --output <file>', 'file to write; standard output where it is left out')
    .option('--json', 'the same: it is JSON')
    .action(async (options: { readonly output?: string }) => {
      await writeText(options.output, schemaText(), door);
      ended(EXIT.fine);
    });
};
