import type { Picture, PrintSystem } from '../../derived/index.ts';
import { settingOf, type MotionSpec, type SettingName, type SurveySpec } from '../../derived/motion/index.ts';
import { formatQuantity, quantity, readQuantity, type Dimension, type Problem, type UnitName } from '../../methods/quantity/index.ts';
import { shownLength } from './shown.ts';

/** A setting as the shop sees it: its name, its unit, how far it goes, and how it is put into the simulator. */
export interface ShopSetting {
  readonly name: SettingName;
  /** short word for a command line */
  readonly id: string;
  readonly words: string;
  readonly help: string;
  readonly dimension: Dimension;
  /** SI of the shop's value (turns a second for speed): as found, and how far a slider goes */
  readonly found: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  /** true where it was read on this hammer */
  readonly read: boolean;
  /** measuring place under which it can be entered as set */
  readonly place?: string;
  /** m of the shop's value a turn of its nut or sleeve makes; negative where turning in makes it less */
  readonly turn?: number;
  readonly toModel: (shop: number) => number;
  readonly toShop: (model: number) => number;
}

const SIXTY_FOURTH = 0.0254 / 64;
const plain = (value: number): number => value;

/** The settings and wear of one hammer that can be tried, in the order in which a person would try them. */
export function shopSettings(picture: Picture, survey: SurveySpec): readonly ShopSetting[] {
  const { spec } = survey;
  const metric = picture.system === 'metric';
  const fine = metric ? 0.0005 : SIXTY_FOURTH;
  const coil = spec.suspension.kind === 'coil-toggle';
  const read = new Set(survey.used.map((one) => one.name));
  const known = (key: string): number | undefined => {
    const outcome = picture.values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity.value : undefined;
  };
  const springPitch = known('spring-bolt.thread-pitch');
  const rodPitch = known('connecting-rod.thread-pitch');
  const made = coil && read.has('suspension.preCompression') ? (known('coil-spring.free-length#as-made') ?? known('coil-spring.free-length')) : undefined;
  const rows: (ShopSetting | undefined)[] = [
    made !== undefined
      ? setting(spec, 'preCompression', { words: 'Spring nut: length of the spring', help: 'shorter is tighter', dimension: 'length', step: fine, low: (now) => now * 0.8, high: () => made * 0.99, read: true, place: 'coil-spring.installed-length', toModel: (length) => made - length, toShop: (squeeze) => made - squeeze, ...(springPitch === undefined ? {} : { turn: -springPitch }) })
      : setting(spec, 'preCompression', { words: coil ? 'Spring nut: squeeze of the spring' : spec.suspension.kind === 'bow-strap' ? 'Draw of the straps' : 'Squeeze of the cushions', help: 'more is tighter', dimension: 'length', step: fine, low: (now) => now * 0.4, high: (now) => now * 1.6, read: read.has('suspension.preCompression'), ...(coil && springPitch !== undefined ? { turn: springPitch } : {}) }),
    setting(spec, 'restGap', { words: 'Rest gap between the dies', help: 'ram hanging, bottom dead centre', dimension: 'length', step: fine, low: (now) => Math.max(0.002, now - 0.025), high: (now) => now + 0.03, read: read.has('restGap'), place: 'upper-die.rest-gap' }),
    setting(spec, 'rodLength', { words: 'Rod length', help: 'longer closes the gap', dimension: 'length', step: fine, low: (now) => now - 0.025, high: (now) => now + 0.025, read: read.has('rodLength'), place: 'connecting-rod.length', ...(rodPitch === undefined ? {} : { turn: rodPitch }) }),
    setting(spec, 'throw', { words: 'Throw of the crank', help: 'half the stroke of the carrier', dimension: 'length', step: fine, low: (now) => now * 0.6, high: (now) => now * 1.3, read: read.has('throw'), place: 'crank.throw' }),
    setting(spec, 'driveSpeed', { words: 'Speed without slip', help: 'turns of the crank', dimension: 'rotation', step: 1 / 60, low: (now) => now * 0.65, high: (now) => now * 1.3, read: read.has('driveSpeed'), toModel: (turns) => turns * 2 * Math.PI, toShop: (radians) => radians / (2 * Math.PI) }),
    setting(spec, 'treadle', { words: 'Treadle', help: 'share of the clutch let in', dimension: 'ratio', step: 0.01, low: () => 0.1, high: () => 1, read: true }),
    setting(spec, 'workThickness', { words: 'Work between the dies', help: 'thickness at the blow', dimension: 'length', step: fine, low: () => 0, high: (now) => Math.max(0.05, now * 2), read: false }),
    setting(spec, 'stackLoss', { words: 'Wear: die height lost', help: 'both dies and the seat together', dimension: 'length', step: fine, low: () => 0, high: (now) => Math.max(0.03, now + 0.015), read: read.has('stackLoss') }),
    coil ? setting(spec, 'sag', { words: 'Wear: spring length lost', help: 'free length as made less free length now', dimension: 'length', step: fine, low: () => 0, high: (now) => Math.max(0.025, now * 1.4), read: read.has('suspension.sag') }) : undefined,
    setting(spec, 'lostMotion', { words: 'Wear: play in the joints', help: 'all joints together, at the ram', dimension: 'length', step: metric ? 0.0001 : 0.000127, low: () => 0, high: (now) => Math.max(0.004, now * 1.5), read: read.has('lostMotion') }),
  ];
  return rows.filter((row) => row !== undefined);
}

const IDS: Readonly<Partial<Record<SettingName, string>>> = { preCompression: 'nut', restGap: 'gap', rodLength: 'rod', throw: 'throw', driveSpeed: 'speed', treadle: 'treadle', workThickness: 'work', stackLoss: 'stack-loss', sag: 'sag', lostMotion: 'play' };

interface Row extends Omit<ShopSetting, 'name' | 'id' | 'found' | 'low' | 'high' | 'toModel' | 'toShop'> {
  readonly low: (now: number) => number;
  readonly high: (now: number) => number;
  readonly toModel?: (shop: number) => number;
  readonly toShop?: (model: number) => number;
}

function setting(spec: MotionSpec, name: SettingName, row: Row): ShopSetting | undefined {
  const model = settingOf(spec, name);
  if (model === undefined) return undefined;
  const toShop = row.toShop ?? plain;
  const found = toShop(model);
  const { low, high, ...rest } = row;
  return { ...rest, name, id: IDS[name] ?? name, found, low: Math.min(low(found), found), high: Math.max(high(found), found), toModel: row.toModel ?? plain, toShop };
}

/** A shop value with its unit. */
export function shownSetting(setting: Pick<ShopSetting, 'dimension'>, value: number, system: PrintSystem): string {
  if (setting.dimension === 'length') return shownLength(value, system);
  if (setting.dimension === 'ratio') return `${Math.round(value * 100)} %`;
  return formatQuantity(quantity(value, setting.dimension), { system, doubt: false, resolution: setting.dimension === 'rotation' ? 1 / 60 : 0.1 });
}

const DEFAULT_UNIT: Readonly<Partial<Record<Dimension, Readonly<Record<PrintSystem, UnitName>>>>> = { length: { inch: 'in', metric: 'mm' }, rotation: { inch: 'rpm', metric: 'rpm' }, ratio: { inch: 'percent', metric: 'percent' } };

/** Bounds wide enough for anything that can be tried; what is absurd within them the simulator names. */
const BOUNDS: Readonly<Partial<Record<Dimension, readonly [number, number]>>> = { length: [0, 4], rotation: [0.2, 15], ratio: [0.01, 1] };

/** Reads what somebody typed for a setting. @returns SI shop value, or what is wrong with it */
export function readSetting(text: string, setting: ShopSetting, system: PrintSystem): { readonly value: number } | { readonly problem: Problem } {
  const unit = DEFAULT_UNIT[setting.dimension]?.[system];
  const bounds = BOUNDS[setting.dimension];
  const reading = readQuantity(text, { dimension: setting.dimension, field: setting.words, ...(unit === undefined ? {} : { defaultUnit: unit }), ...(bounds === undefined ? {} : { min: bounds[0], max: bounds[1] }) });
  return reading.ok ? { value: reading.quantity.value } : { problem: reading.problem };
}

/** How to get from one value to another at the machine: in turns where the pitch is known, and by how much. */
export function changeWords(setting: ShopSetting, from: number, to: number, system: PrintSystem): string {
  const change = to - from;
  const amount = setting.dimension === 'length' ? shownLength(Math.abs(change), system) : setting.dimension === 'rotation' ? `${Math.round(Math.abs(change) * 60)} a minute` : shownSetting(setting, Math.abs(change), system);
  if (Math.abs(change) < 1e-9) return 'as found';
  const more = setting.dimension === 'length' ? (change > 0 ? 'longer' : 'shorter') : change > 0 ? 'faster' : 'slower';
  const way = setting.name === 'preCompression' ? ((setting.toModel(to) > setting.toModel(from)) ? 'tighter' : 'slacker') : setting.name === 'rodLength' || setting.name === 'driveSpeed' ? more : change > 0 ? 'more' : 'less';
  if (setting.turn === undefined) return `${amount} ${way}`;
  return `${turnsWords(change / setting.turn)} ${way} (${amount})`;
}

/** Turns to the nearest eighth: `1 7/8 turns`. */
export function turnsWords(turns: number): string {
  const eighths = Math.round(Math.abs(turns) * 8);
  if (eighths === 0) return 'less than 1/8 turn';
  const whole = Math.floor(eighths / 8);
  const rest = eighths % 8;
  const fraction = rest === 0 ? '' : rest % 4 === 0 ? '1/2' : rest % 2 === 0 ? `${rest / 2}/4` : `${rest}/8`;
  return `${[whole === 0 ? '' : String(whole), fraction].filter((part) => part !== '').join(' ')} turn${eighths > 8 ? 's' : ''}`;
}
