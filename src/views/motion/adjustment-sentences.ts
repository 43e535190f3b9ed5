import type { Picture } from '../../derived/index.ts';
import { turnsFor, type Adjustment } from '../../derived/motion/index.ts';
import { capital } from './motion-sentences.ts';
import { changeWords, shownSetting, turnsWords, type ShopSetting } from './shop-settings.ts';
import { shownEnergy, shownLength } from './shown.ts';

/** How much further nut and rod can be turned, m, where the thread left was read. */
export function storedLimits(picture: Picture): { readonly nut?: number; readonly rod?: number } {
  const known = (key: string): number | undefined => {
    const outcome = picture.values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity.value : undefined;
  };
  const nut = known('spring-bolt.thread-left');
  const rod = known('connecting-rod.thread-left');
  return { ...(nut === undefined ? {} : { nut }), ...(rod === undefined ? {} : { rod }) };
}

/** The smallest change of each setting alone that makes the beat clean, easiest first, and whether the thread allows it. */
export function adjustmentSentences(picture: Picture, settings: readonly ShopSetting[], adjustments: readonly Adjustment[]): readonly string[] {
  const left = storedLimits(picture);
  return adjustments.flatMap((adjustment) => {
    const setting = settings.find((one) => one.name === adjustment.setting);
    if (setting === undefined) return [];
    const from = setting.toShop(adjustment.from);
    const to = setting.toShop(adjustment.to);
    const room = setting.name === 'preCompression' && adjustment.change > 0 ? left.nut : setting.name === 'rodLength' && adjustment.change > 0 ? left.rod : undefined;
    const short = room !== undefined && Math.abs(adjustment.change) > room;
    const turns = short && setting.turn !== undefined ? `, ${turnsWords(turnsFor(room, Math.abs(setting.turn)))},` : '';
    const allowed = short ? ` The thread does not allow it: ${shownLength(room, picture.system)}${turns} is left.${setting.name === 'preCompression' ? ' The spring is due, not the nut.' : ''}` : '';
    return [`${capital(setting.words)}: ${changeWords(setting, from, to, picture.system)}, from ${shownSetting(setting, from, picture.system)} to ${shownSetting(setting, to, picture.system)}, makes it clean at ${shownEnergy(adjustment.after.energy, picture.system)} a blow.${allowed}`];
  });
}
