import type { Command } from 'commander';
import type { Picture } from '../derived/index.ts';
import { emptyMap, layPatch, mapSettings, motionTrials, motionWithDoubt, runHammer, settingOf, smallestAdjustments, specOfSurvey, weighAssumed, withSetting, BEAT_CLASSES, type MotionMap, type MotionRan, type MotionSpec, type SurveySpec } from '../derived/motion/index.ts';
import { adjustmentSentences, auditTable, besideReadings, capital, changeWords, mapPicture, mapLegend, motionCsv, motionDrawing, motionSentences, movingLengths, readAndAssumed, readSetting, restsOn, seenOnHammer, shopSettings, shownSetting, trialSentences, type ShopSetting } from '../views/motion/index.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { inventedLine, listUnder, table } from './words.ts';
import { writeText } from './write-text.ts';

interface MotionOptions extends SurveyOptions {
  readonly set?: readonly string[];
  readonly svg?: string;
  readonly csv?: string;
  readonly map?: string;
  readonly size?: string;
  readonly audit?: boolean;
}

interface Changed {
  readonly setting: ShopSetting;
  readonly value: number;
}

/** `motion FILE`: how the hammer moves, what it sounds like, and what a change of setting would do. */
export const motionCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('motion <file>'))
    .description('run the hammer as it is: blow energy, rate, second sounds, clearances, forces, and what each adjustment would do; settings are tried with --set nut="6 7/8 in"')
    .option('--set <name=value...>', 'try a setting: nut, gap, rod, throw, speed, treadle, work, stack-loss, sag, play')
    .option('--svg <file>', 'write the drawing: the linkage and its traces, or the map where one is asked for')
    .option('--csv <file>', 'write the trace of the last turns, or the map, as comma separated values')
    .option('--map <x,y>', 'map two settings, such as speed,nut')
    .option('--size <number>', 'fields a side of the map, 2 to 128', '32')
    .option('--audit', 'print where the energy went')
    .action(async (file: string, options: MotionOptions) => {
      ended(await withSurvey(file, options, door, async ({ picture }) => {
        const made = await motionOf(picture, options, door);
        return { text: () => made.text, json: () => made.json, exit: made.exit };
      }));
    });
};

async function motionOf(picture: Picture, options: MotionOptions, door: Door): Promise<{ readonly text: string; readonly json: unknown; readonly exit: number }> {
  const { identity } = picture.known;
  const { system } = picture;
  const survey = specOfSurvey(picture.values, identity.family, identity.ramClass.quantity.value);
  const settings = shopSettings(picture, survey);
  const changed = changes(settings, options.set ?? [], picture);
  const lay = (spec: MotionSpec): MotionSpec => changed.reduce((made, { setting, value }) => withSetting(made, setting.name, setting.toModel(value)), spec);
  const spec = lay(survey.spec);
  const ask = options.map === undefined ? undefined : mapAsked(options, settings);
  const result = runHammer(spec, { assumed: survey.assumed, traceSeconds: (5 * 2 * Math.PI) / spec.driveSpeed });
  const ran = result.outcome === 'ran' ? result : undefined;
  const doubt = ran === undefined ? undefined : motionWithDoubt(survey, { seed: picture.provenance.seed }, lay);
  const sentences = motionSentences(result, spec, system, doubt, seenOnHammer(picture));
  const trials = ran === undefined ? [] : trialSentences(ran, spec, motionTrials(spec, leavesOf(picture)), system);
  const adjustments = ran === undefined || ran.beatClass === 'clean' ? [] : adjustmentSentences(picture, settings, smallestAdjustments(spec, reaches(settings), { duration: 4, relative: 1e-4 }));
  const beside = ran === undefined || changed.length > 0 ? [] : besideReadings(picture, survey, ran, doubt);
  const known = readAndAssumed(survey.used, survey.assumed);
  const basis = restsOn(survey, identity.family, ran === undefined ? undefined : weighAssumed(survey));
  const map = ask === undefined ? undefined : workedMap(spec, ask);
  await write(options, door, { picture, spec, ran, map, ask });
  const text = [
    `${identity.tag}: how it moves${changed.length === 0 ? ', as found' : `, tried with ${changed.map(({ setting, value }) => `${setting.words.toLowerCase()} ${shownSetting(setting, value, system)} (${changeWords(setting, setting.found, value, system)})`).join('; ')}`}\n`, inventedLine(identity.invented), picture.duty.verdict === 'stand-down' ? `\n${picture.duty.sentence} Nothing here lets it run; it says how it would.\n` : '', '\n',
    ...sentences.filter((one) => one.kind === 'headline' || one.kind === 'refused').map((one) => `${one.words}\n`),
    ran === undefined ? '' : `\n${basis.words}${basis.next === undefined ? '' : ` ${basis.next.words} Measure: ${basis.next.name} [${basis.next.place}].`}\n`,
    listUnder('Second sounds', sentences.filter((one) => one.kind === 'sound').map((one) => one.words)),
    listUnder('Warnings', sentences.filter((one) => one.kind === 'warning').map((one) => one.words)),
    listUnder('Figures', sentences.filter((one) => one.kind === 'figure').map((one) => one.words)),
    listUnder('Beside what was read', beside.map((row) => `${capital(row.what)}: reckoned ${row.reckoned}; ${row.how} ${row.seen}.${row.words === '' ? ' They agree.' : ` ${row.words}`}`)),
    listUnder('What a change would do, one at a time', trials),
    listUnder('Smallest adjustment that makes it clean', adjustments),
    map === undefined || ask === undefined ? '' : mapText(map, ask),
    options.audit === true && ran !== undefined ? `\nEnergy over the whole run\n${table(auditTable(ran.audit).map((row) => [`  ${row.words}`, `${row.joules.toFixed(1)} J`, `${(row.share * 100).toFixed(4)} %`]))}\n` : '',
    listUnder('Worth knowing', sentences.filter((one) => one.kind === 'note').map((one) => one.words)),
    listUnder('What this rests on', [known.read, known.assumed, ...survey.atOdds.map((one) => `At odds${one.from === '' ? '' : `, ${one.from}`}: ${one.sentence}.`)]),
    '\nA reckoning of a simplified hammer, held against no real one; the tape decides.\n',
  ].join('');
  return { text, json: jsonOf(survey, spec, result, { sentences, trials, adjustments, beside, doubt, map, changed }), exit: ran === undefined ? EXIT.badInput : EXIT.fine };
}

function changes(settings: readonly ShopSetting[], texts: readonly string[], picture: Picture): readonly Changed[] {
  return texts.map((text) => {
    const [name = '', ...rest] = text.split('=');
    const setting = settingNamed(settings, name.trim());
    if (rest.length === 0) throw new BadInput(`a setting is tried by name and value, such as ${setting.id}="${shownSetting(setting, setting.found, picture.system)}": ${text}`);
    const read = readSetting(rest.join('=').trim(), setting, picture.system);
    if ('problem' in read) throw new BadInput(`${setting.words}: ${read.problem.message}; ${read.problem.expected}: ${read.problem.value}`);
    return { setting, value: read.value };
  });
}

function settingNamed(settings: readonly ShopSetting[], name: string): ShopSetting {
  const setting = settings.find((one) => one.id === name || one.name === name);
  if (setting === undefined) throw new BadInput(`this hammer has no such setting; one of ${settings.map((one) => one.id).join(', ')}: ${name}`);
  return setting;
}

interface MapAsked {
  readonly x: ShopSetting;
  readonly y: ShopSetting;
  readonly size: number;
}

function mapAsked(options: MotionOptions, settings: readonly ShopSetting[]): MapAsked {
  const [x = '', y = '', ...rest] = (options.map ?? '').split(',').map((one) => one.trim());
  if (rest.length > 0 || y === '' || x === y) throw new BadInput(`a map has two different settings, such as speed,nut: ${options.map ?? ''}`);
  const size = /^\d{1,3}$/.test(options.size ?? '') ? Number(options.size) : Number.NaN;
  if (!(size >= 2 && size <= 128)) throw new BadInput(`the map cannot have that many fields; a whole number from 2 to 128: ${options.size ?? ''}`);
  return { x: settingNamed(settings, x), y: settingNamed(settings, y), size };
}

function workedMap(spec: MotionSpec, { x, y, size }: MapAsked): MotionMap {
  const axis = (one: ShopSetting) => ({ setting: one.name, from: one.toModel(one.low), to: one.toModel(one.high) });
  const map = emptyMap(axis(x), axis(y), size);
  for (const patch of mapSettings(spec, map.x, map.y, size, { either: true, duration: 5 })) layPatch(map, patch);
  return map;
}

function mapText(map: MotionMap, { x, y }: MapAsked): string {
  const legend = mapLegend(map);
  return listUnder(`Map of ${x.words.toLowerCase()} and ${y.words.toLowerCase()}, ${map.size} by ${map.size}`, [...legend.rows.map((row) => `${row.words.letter} ${row.words.words}: ${Math.round(row.share * 100)} %`), ...(legend.either > 0 ? [`can do either: ${Math.round(legend.either * 100)} %`] : [])]);
}

/** Leaves of a bow as counted, so that the loss of one can be tried. */
const leavesOf = (picture: Picture): number | undefined => {
  const outcome = picture.values['bow-spring.leaves']?.outcome;
  return outcome?.state === 'known' ? outcome.quantity.value : undefined;
};

const reaches = (settings: readonly ShopSetting[]) =>
  settings.filter((one) => ['preCompression', 'restGap', 'rodLength', 'throw', 'driveSpeed'].includes(one.name)).map((one) => {
    const ends = [one.toModel(one.low), one.toModel(one.high)];
    return { setting: one.name, low: Math.min(...ends), high: Math.max(...ends) };
  });

async function write(options: MotionOptions, door: Door, made: { readonly picture: Picture; readonly spec: MotionSpec; readonly ran: MotionRan | undefined; readonly map: MotionMap | undefined; readonly ask: MapAsked | undefined }): Promise<void> {
  const { picture, ran, map, ask } = made;
  const { system } = picture;
  const mapped = map !== undefined && ask !== undefined;
  if (options.svg !== undefined && mapped) await writeText(options.svg, mapPicture(map, { system, x: ask.x, y: ask.y }), door);
  else if (options.svg !== undefined && ran !== undefined) await writeText(options.svg, motionDrawing(`${picture.known.identity.tag}: how it moves`, made.spec, movingLengths(picture), ran, system, seenOnHammer(picture)), door);
  if (options.csv !== undefined && mapped) await writeText(options.csv, mapCsv(map, ask), door);
  else if (options.csv !== undefined && ran !== undefined) await writeText(options.csv, motionCsv(ran), door);
}

function mapCsv(map: MotionMap, { x, y }: MapAsked): string {
  const unit = (one: ShopSetting): string => (one.dimension === 'length' ? 'm' : one.dimension === 'rotation' ? 'turns a second' : '1');
  const at = (one: ShopSetting, axis: MotionMap['x'], index: number): number => Number(one.toShop(axis.from + ((axis.to - axis.from) * index) / (map.size - 1)).toPrecision(8));
  const lines = Array.from({ length: map.size * map.size }, (_, i) => {
    const column = i % map.size;
    return [at(x, map.x, column), at(y, map.y, Math.floor(i / map.size)), BEAT_CLASSES[map.code[i]!] ?? '', BEAT_CLASSES[map.either[i]! - 1] ?? '', Number(map.energy[i]!.toPrecision(5)), Number(map.level[i]!.toPrecision(4)), Number(map.delay[i]!.toPrecision(4))].join(',');
  });
  return `${x.id} ${unit(x)},${y.id} ${unit(y)},beat,or,energy J,second sound dB,delay s\n${lines.join('\n')}\n`;
}

function jsonOf(survey: SurveySpec, spec: MotionSpec, result: ReturnType<typeof runHammer>, more: { readonly sentences: unknown; readonly trials: unknown; readonly adjustments: unknown; readonly beside: unknown; readonly doubt: unknown; readonly map: MotionMap | undefined; readonly changed: readonly Changed[] }): unknown {
  const { trace: _trace, ...answer } = result.outcome === 'ran' ? result : { ...result, trace: undefined };
  const { map } = more;
  return {
    motion: answer, doubt: more.doubt, sentences: more.sentences, trials: more.trials, adjustments: more.adjustments, beside: more.beside,
    tried: more.changed.map(({ setting, value }) => ({ setting: setting.id, value, found: setting.found, model: setting.toModel(value) })),
    spec, read: survey.used, assumed: survey.assumed, atOdds: survey.atOdds, now: { restGap: settingOf(spec, 'restGap') },
    ...(map === undefined ? {} : { map: { size: map.size, x: map.x, y: map.y, classes: BEAT_CLASSES, code: [...map.code], either: [...map.either], energy: [...map.energy].map((one) => Number(one.toPrecision(5))) } }),
  };
}
