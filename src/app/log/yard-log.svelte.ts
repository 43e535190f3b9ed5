import { forJudging } from '../../knowledge/index.ts';
import { picture, type Picture, type PrintSystem } from '../../derived/index.ts';
import { decodeEntries, makeEntryId, mergeLogs, type Entry, type EntryBodies, type EntryKind, type Problem } from '../../entries/index.ts';
import { who } from '../pieces/who.svelte.ts';
import { keepYard, readKeptYard } from './kept-yard.ts';
import { fetchSince, sendEntries } from './wire.ts';
import { keepWaiting, readWaiting } from './waiting.ts';

/** How the page stands with its server. */
export type Standing = 'opening' | 'in-step' | 'apart';

/** What is said where somebody is asked for a name and goes back. */
export const TURNED_BACK: Problem = { field: 'name', value: '', message: 'It was not entered; a name, or an entry without one', expected: 'a name, or an entry without one' };

const SEED = 1;
const UNITS = 'tupwise.units';

interface Held {
  readonly of: readonly Entry[];
  readonly system: PrintSystem;
  readonly picture: Picture | undefined;
}

/**
 * The log of all hammers of the yard as this page knows it. Entries are shown at once and sent on; what could not be sent
 * waits on this device and is sent again later, so nothing that was typed is lost.
 */
class YardLog {
  entries = $state.raw<readonly Entry[]>([]);
  waiting = $state.raw<readonly Entry[]>([]);
  /** What the server says against entries that wait, where it refuses them. */
  refused = $state('');
  standing = $state<Standing>('opening');
  system = $state<PrintSystem>(localStorage.getItem(UNITS) === 'metric' ? 'metric' : 'inch');
  #cursor = '0';
  #catching: Promise<void> | undefined;
  #again = false;
  /** True once the server has told everything that it has. */
  #toldAll = false;
  readonly #pictures = new Map<string, Held>();

  /** Reads what this device holds, then what the server has, and goes on looking. */
  async open(): Promise<void> {
    this.waiting = readWaiting();
    const told = this.catchUp();
    const kept = decodeEntries(await readKeptYard()).entries;
    if (!this.#toldAll) this.entries = mergeLogs(kept, this.waiting).entries;
    await told;
    setInterval(() => void this.catchUp(), 5000);
    addEventListener('online', () => void this.catchUp());
  }

  /** Sends what waits and fetches what is new; one at a time, and once more where it was asked for meanwhile. */
  catchUp(): Promise<void> {
    this.#again = this.#catching !== undefined;
    this.#catching ??= this.#catchUpOnce().finally(() => {
      this.#catching = undefined;
      if (this.#again) void this.catchUp();
    });
    return this.#catching;
  }

  async #catchUpOnce(): Promise<void> {
    try {
      await this.#send();
      const news = await fetchSince(this.#cursor);
      this.#cursor = news.cursor;
      const told = decodeEntries(news.entries).entries;
      this.#toldAll ||= news.whole;
      if (news.whole) this.entries = mergeLogs(told, this.waiting).entries;
      else if (told.length > 0) this.#take(told);
      if (news.whole || told.length > 0) void keepYard(told, news.whole);
      this.standing = 'in-step';
    } catch {
      this.standing = 'apart';
    }
  }

  /** Sends what waits together; where that is refused, one by one, so that one bad entry does not hold up the rest. */
  async #send(): Promise<void> {
    const sent = this.waiting;
    if (sent.length === 0) return;
    const problems = await sendEntries(sent);
    if (problems.length === 0) {
      this.refused = '';
      return this.#taken(sent);
    }
    let against = '';
    for (const entry of sent) {
      const [problem] = sent.length === 1 ? problems : await sendEntries([entry]);
      if (problem === undefined) this.#taken([entry]);
      else against = problem.message;
    }
    this.refused = against;
  }

  #taken(sent: readonly Entry[]): void {
    this.#setWaiting(this.waiting.filter((entry) => !sent.includes(entry)));
  }

  /** Makes an entry of what somebody entered, shows it at once and sends it. Asks for a name first where there is none. */
  async enter<K extends EntryKind>(hammer: string, kind: K, body: EntryBodies[K], by: string): Promise<readonly Problem[]> {
    if (by === '' && !(await who.known())) return [TURNED_BACK];
    return this.keep(this.draft(hammer, kind, body, by === '' ? who.name : by));
  }

  /** Takes an entry into the log, shows it and sends it on. @returns what is wrong with it; nothing is kept then */
  async keep(entry: Entry): Promise<readonly Problem[]> {
    const checked = decodeEntries([entry]);
    if (checked.problems.length > 0) return checked.problems;
    this.#setWaiting([...this.waiting, entry]);
    this.#take([entry]);
    void this.catchUp();
    return [];
  }

  /** An entry that is not in the log yet, for showing what it would change. An enrol entry names itself as its hammer. */
  draft<K extends EntryKind>(hammer: string | undefined, kind: K, body: EntryBodies[K], by: string): Entry {
    const now = Date.now();
    const id = makeEntryId(now, crypto.getRandomValues(new Uint8Array(10)));
    return { id, hammer: hammer ?? id, at: new Date(now).toISOString(), by: by === '' ? 'not named' : by, kind, body };
  }

  /** Inch to metric and back; kept on this device. */
  turnUnits(): void {
    this.system = this.system === 'inch' ? 'metric' : 'inch';
    localStorage.setItem(UNITS, this.system);
  }

  hammers(): readonly string[] {
    return this.entries.filter((entry) => entry.kind === 'enrol').map((entry) => entry.hammer);
  }

  of(hammer: string): readonly Entry[] {
    return this.entries.filter((entry) => entry.hammer === hammer);
  }

  /** The picture of one hammer; worked out once for each state of its log. */
  picture(hammer: string): Picture | undefined {
    const { system } = this;
    const mine = this.of(hammer);
    const held = this.#pictures.get(hammer);
    if (held !== undefined && held.system === system && held.of.length === mine.length && held.of.every((entry, index) => entry.id === mine[index]?.id)) return held.picture;
    const found = picture(mine, forJudging, later(), SEED, system);
    this.#pictures.set(hammer, { of: mine, system, picture: found });
    return found;
  }

  /** What the picture would be with one more entry. */
  pictureWith(hammer: string, entry: Entry): Picture | undefined {
    return picture([...this.of(hammer), entry], forJudging, later(), SEED, this.system);
  }

  #take(news: readonly Entry[]): void {
    this.entries = mergeLogs(this.entries, news).entries;
  }

  #setWaiting(entries: readonly Entry[]): void {
    this.waiting = entries;
    keepWaiting(entries);
  }
}

/** The end of today, and at least a minute ahead: a visit without an hour counts as noon, and a device's clock may be a little fast. */
function later(): string {
  const soon = new Date(Date.now() + 60_000).toISOString();
  return `${soon.slice(0, 10)}T23:59:59Z`;
}

export const yard = new YardLog();
