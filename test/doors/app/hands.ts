import type { Locator, Page } from 'playwright-core';

/** How somebody works the page: with a thumb, or with the keys alone. */
export interface Hands {
  /** Presses a button or follows a link. */
  press(what: Locator): Promise<void>;
  /** Takes one of several choices. */
  choose(what: Locator): Promise<void>;
  /** Writes into a field what it shall hold. */
  write(what: Locator, text: string): Promise<void>;
}

export function thumb(page: Page): Hands {
  return {
    async press(what) {
      await assertReachable(what);
      await what.tap();
    },
    choose: (what) => what.tap(),
    async write(what, text) {
      await what.tap();
      await what.fill(text);
      await page.waitForTimeout(20);
    },
  };
}

/** Keys alone: Tab, or Shift and Tab, to it, see that the focus shows, then Enter, arrows or letters. */
export function keys(page: Page): Hands {
  /** Where it lies from where the focus is: here, after it, or before it. */
  const whereIs = (what: Locator): Promise<'here' | 'after' | 'before'> =>
    what.evaluate((element) => {
      const now = document.activeElement;
      if (element === now) return 'here';
      return now !== null && now !== document.body && (now.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_PRECEDING) !== 0 ? 'before' : 'after';
    });
  const tabTo = async (what: Locator): Promise<void> => {
    await what.waitFor();
    for (let step = 0; step < 500; step += 1) {
      const place = await whereIs(what);
      if (place === 'here') return assertFocusShows(page, what);
      await page.keyboard.press(place === 'after' ? 'Tab' : 'Shift+Tab');
    }
    throw new Error(`Tab does not lead to ${String(what)}`);
  };
  return {
    async press(what) {
      await tabTo(what);
      await page.keyboard.press('Enter');
    },
    async choose(what) {
      const group = await what.getAttribute('name');
      for (let step = 0; step < 500 && (await page.evaluate(() => document.activeElement?.getAttribute('name'))) !== group; step += 1) await page.keyboard.press('Tab');
      for (let step = 0; step < 20 && !(await what.isChecked()); step += 1) await page.keyboard.press(step === 0 ? 'Space' : 'ArrowDown');
    },
    async write(what, text) {
      await tabTo(what);
      await page.keyboard.press('Control+A');
      await page.keyboard.type(text);
    },
  };
}

/** A target for a gloved thumb is 48 px high at least, or a link in a line of text. */
async function assertReachable(what: Locator): Promise<void> {
  await what.waitFor();
  const box = await what.boundingBox();
  if (box === null || box.height < 47.5) throw new Error(`a target for a thumb must be 48 px high; it is ${box?.height ?? 0} px: ${String(what)}`);
}

async function assertFocusShows(page: Page, what: Locator): Promise<void> {
  const shows = await what.evaluate((element) => {
    const style = getComputedStyle(element);
    return style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2;
  });
  if (!shows) throw new Error(`the focus does not show on ${String(what)} at ${page.url()}`);
}
