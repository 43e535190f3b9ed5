import { Command, CommanderError } from 'commander';
import about from '../../package.json' with { type: 'json' };
import { checkCommand } from './check.ts';
import { BadInput, EXIT, EXIT_WORDS, type Door } from './door.ts';
import { handoverCommand } from './handover.ts';
import { judgeCommand } from './judge.ts';
import { listenCommand } from './listen.ts';
import { makeCommand } from './make.ts';
import { motionCommand } from './motion.ts';
import { newCommand } from './new.ts';
import { cardCommand, drawCommand, reportCommand } from './papers.ts';
import { outlookCommands } from './outlook.ts';
import { planCommand } from './plan.ts';
import { reckonCommand } from './reckon/reckon.ts';
import { schemaCommand } from './schema.ts';
import { serveCommand } from './serve.ts';
import { upkeepCommand } from './upkeep.ts';
import { whyCommand } from './why.ts';
import { workCommand } from './work.ts';
import { yardCommand } from './yard.ts';

const COMMANDS = [newCommand, judgeCommand, reportCommand, cardCommand, drawCommand, workCommand, planCommand, makeCommand, upkeepCommand, outlookCommands, handoverCommand, motionCommand, listenCommand, whyCommand, checkCommand, yardCommand, reckonCommand, schemaCommand, serveCommand];

/** Failures of the yard's folder and database whose message is already a sentence. */
const SAID_IN_WORDS: readonly string[] = ['FolderInUse', 'NewerSchema'];

/**
 * Runs the command line.
 * @param words what was typed after the program's name
 * @returns the exit code; never throws
 */
export async function run(words: readonly string[], door: Door): Promise<number> {
  let exit: number = EXIT.fine;
  const program = new Command('tupwise');
  program
    .description('What one old belt-driven forging hammer may do today, what it needs, in what order, and whether it is right again.\nA FILE is a survey file; - reads it from standard input.')
    .version(about.version, '--version', 'print the version')
    .addHelpText('after', `\n${EXIT_WORDS}`)
    .showSuggestionAfterError()
    .exitOverride()
    .configureOutput({ writeOut: door.out, writeErr: door.err });
  for (const add of COMMANDS) add(program, door, (code) => { exit = code; });
  try {
    await program.parseAsync(words, { from: 'user' });
    return exit;
  } catch (failure) {
    if (failure instanceof CommanderError) return failure.exitCode === 0 ? EXIT.fine : EXIT.badInput;
    if (failure instanceof BadInput) {
      door.err(`${failure.message}\n`);
      return EXIT.badInput;
    }
    if (failure instanceof Error && SAID_IN_WORDS.includes(failure.name)) {
      door.err(`${failure.message}\n`);
      return EXIT.failed;
    }
    door.err(`the program failed, and that is its own fault: ${failure instanceof Error ? failure.message : String(failure)}\n`);
    return EXIT.failed;
  }
}
