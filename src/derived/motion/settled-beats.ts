import { BEAT } from './beat-log.ts';
import type { BeatLog } from './beat-log.ts';
import type { BeatClass, SecondSound } from './beat-class.ts';

/** dB below the blow at which a second sound is no longer counted. */
export const FAINTEST = -20;
/** s within which two beats are heard as one; common practice in room acoustics, no source. */
export const FUSED = 0.008;
/** Share of the blows a second sound must go with to be a property of the setting. */
const OFTEN = 0.5;
/** Relative difference of neighbouring blows that makes a gallop or an irregular beat. */
const UNEVEN = 0.04;

/** The beats of the settled part of a run, by turn. */
export interface SettledBeats {
  readonly beatClass: BeatClass;
  /** turns looked at */
  readonly turns: number;
  /** turns among them without a blow */
  readonly missed: number;
  /** J, mean over the blows; 0 where there is none */
  readonly energy: number;
  /** J, least and most */
  readonly energyLow: number;
  readonly energyHigh: number;
  /** m/s, mean */
  readonly impactSpeed: number;
  /** rad from top dead centre, mean */
  readonly blowAngle: number;
  /** J lost in the work and frame at the blow, mean */
  readonly lost: number;
  /** turns a second */
  readonly rate: number;
  readonly secondSounds: readonly SecondSound[];
  /** relative difference of even and odd intervals between blows; 0 where even */
  readonly unevenness: number;
  /** the log's places of the main blows, for marking them */
  readonly blows: readonly number[];
}

const none = { energy: 0, energyLow: 0, energyHigh: 0, impactSpeed: 0, blowAngle: 0, lost: 0, secondSounds: [], unevenness: 0, blows: [] };
const KINDS = ['die-re-strike', 'joint-knock', 'upper-stop-knock'] as const;

/**
 * Reads the log of a run: what sort of beat it settled to, and with what figures.
 * @param log of the run
 * @param ledge true where what the die meets is the fixed ledge and not the work
 * @param most turns to look at, from the end; no more than the later half of the run is used
 */
export function settledBeats(log: BeatLog, ledge: boolean, most = 16): SettledBeats {
  const last = log.turns - 1;
  const first = Math.max(last - most, log.turns >> 1);
  const turns = last - first;
  if (turns < 4) return { ...none, beatClass: 'stalled', turns: Math.max(0, turns), missed: 0, rate: 0 };
  const rate = turns / (log.top[last]! - log.top[first]!);
  let place = 0;
  while (place < log.count && log.time[place]! < log.top[first]!) place++;

  // The loudest meeting of the dies in each turn is its blow.
  const blows: number[] = [];
  let missed = 0;
  let joints = 0;
  let at = place;
  for (let turn = first; turn < last; turn++) {
    let best = -1;
    for (; at < log.count && log.time[at]! < log.top[turn + 1]!; at++) {
      if (log.kind[at] === BEAT.joint) joints++;
      if (log.kind[at] === BEAT.die && log.speed[at]! > 0.2 && (best < 0 || log.speed[at]! > log.speed[best]!)) best = at;
    }
    if (best < 0) missed++;
    else blows.push(best);
  }
  const beatsEnd = at;
  if (blows.length === 0)
    return { ...none, beatClass: joints > turns / 2 ? 'linkage-takes-the-blow' : 'no-blow', turns, missed, rate };

  const mean = (v: ArrayLike<number>, which: (n: number) => boolean = () => true): number => {
    let sum = 0;
    let count = 0;
    blows.forEach((b, n) => {
      if (!which(n)) return;
      sum += v[b]!;
      count++;
    });
    return count === 0 ? 0 : sum / count;
  };
  const energy = mean(log.energy);
  let energyLow = Infinity;
  let energyHigh = 0;
  for (const b of blows) {
    energyLow = Math.min(energyLow, log.energy[b]!);
    energyHigh = Math.max(energyHigh, log.energy[b]!);
  }
  const secondSounds = seconds(log, blows, place, beatsEnd, 1 / rate);
  const even = mean(log.energy, (n) => n % 2 === 0);
  const odd = mean(log.energy, (n) => n % 2 === 1);
  const apart = Math.abs(even - odd) / energy;
  const spread = (energyHigh - energyLow) / energy;
  let unevenness = 0;
  if (missed === 0 && blows.length > 4) {
    let evenSum = 0;
    let oddSum = 0;
    const pairs = (blows.length - 1) >> 1;
    for (let n = 0; n < pairs; n++) {
      evenSum += log.time[blows[2 * n + 1]!]! - log.time[blows[2 * n]!]!;
      oddSum += log.time[blows[2 * n + 2]!]! - log.time[blows[2 * n + 1]!]!;
    }
    unevenness = Math.abs(evenSum - oddSum) / pairs / (1 / rate);
  }
  const loudest = secondSounds[0];
  const beatClass: BeatClass = ledge
    ? 'linkage-takes-the-blow'
    : missed > 0
      ? 'misses'
      : spread > UNEVEN && apart < 0.6 * spread
        ? 'irregular'
        : apart > UNEVEN
          ? 'gallop'
          : loudest !== undefined
            ? loudest.kind
            : fused(log, blows, place, beatsEnd) >= OFTEN
              ? 'linkage-takes-the-blow'
              : 'clean';
  return {
    beatClass, turns, missed, energy, energyLow, energyHigh,
    impactSpeed: mean(log.speed), blowAngle: mean(log.angle), lost: mean(log.lost), rate, secondSounds, unevenness, blows,
  };
}

/** Share of the blows at which the linkage meets its guide in the same moment. */
function fused(log: BeatLog, blows: readonly number[], from: number, to: number): number {
  let share = 0;
  for (const blow of blows)
    for (let i = from; i < to; i++)
      if (log.kind[i] === BEAT.joint && Math.abs(log.time[i]! - log.time[blow]!) < FUSED) {
        share++;
        break;
      }
  return share / blows.length;
}

/** The loudest sound of each kind before and after the blows, where it goes with most of them, loudest first. */
function seconds(log: BeatLog, blows: readonly number[], from: number, to: number, period: number): SecondSound[] {
  const found: SecondSound[] = [];
  const main = new Set(blows);
  KINDS.forEach((kind, code) => {
    // A sound belongs to the blow it follows within two thirds of a turn, or leads by a third.
    for (const [earliest, latest] of [[-0.36 * period, -FUSED], [FUSED, 0.64 * period]] as const) {
      let share = 0;
      let delay = 0;
      let square = 0;
      for (const blow of blows) {
        let best = -1;
        for (let i = from; i < to; i++) {
          if (main.has(i) || log.kind[i] !== code) continue;
          const after = log.time[i]! - log.time[blow]!;
          if (after < earliest || after >= latest) continue;
          if (best < 0 || log.speed[i]! > log.speed[best]!) best = i;
        }
        if (best < 0) continue;
        const ratio = (log.speed[best]! / log.speed[blow]!) ** 2;
        if (10 * Math.log10(ratio) < FAINTEST) continue;
        share++;
        square += ratio;
        delay += log.time[best]! - log.time[blow]!;
      }
      if (share / blows.length >= OFTEN)
        found.push({ kind, delay: delay / share, level: 10 * Math.log10(square / share), share: share / blows.length });
    }
  });
  return found.sort((a, b) => b.level - a.level);
}
