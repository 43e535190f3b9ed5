import { ensureBrowser } from './browser.mjs';
import { ensureBuilt } from './build.mjs';
import { ensureDependencies } from './dependencies.mjs';
import { oneAtATime } from './one-at-a-time.mjs';
import { reasonIn, say, Sentence } from './plain-words.mjs';

/**
 * Sets up what is missing, in words; on failure says why and sets the exit code.
 * @param {string | undefined} purpose `start` or `test`; a test needs a browser too
 */
export async function prepare(purpose) {
  try {
    await oneAtATime(async () => {
      await ensureDependencies();
      await ensureBuilt();
      if (purpose === 'test') await ensureBrowser();
    });
  } catch (failure) {
    if (failure instanceof Sentence) say(failure.message);
    else say(`setting up failed. ${reasonIn(failure instanceof Error ? (failure.stack ?? failure.message) : String(failure))}`);
    process.exitCode = 1;
  }
}
