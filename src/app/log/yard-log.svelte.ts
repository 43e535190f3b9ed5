import { knowledge } from '../../knowledge/index.ts';
import { picture, type Picture, type PrintSystem } from '../../derived/index.ts';
import { decodeEntries, makeEntryId, mergeLogs, type Entry, type EntryBodies, type EntryKind, type Problem } from '../../entries/index.ts';
import { fetchSince, sendEntries } from './wire.ts';
import { keepWaiting, readWaiting } from './waiting.ts';

/** How the page stands with its server. */
export type Standing = 'opening' | 'in-step' | 'apart';

const SEED = 1;

/**
 * The log of all hammers of the yard as this page knows it. Entries are shown at once and sent on; what could not be sent
 * waits on this device and is sent again later, so nothing that was typed is lost.
 */
class YardLog {
  entries = $state.raw<readonly Entry[]>([]);
  waiting = $state.raw<readonly Entry[]>([]);
  standing = $state<Standing>('opening');
  system = $state<PrintSystem>('inch');
  #cursor = '0';
  #pictures = new Map<string, { readonly of: readonly Entry[]; readonly system: PrintSystem; readonly picture: Picture | undefined }>();

  /** Reads what this device holds, then what the server has, and goes on looking. */
  async open(): Promise<void> {
    this.waiting = readWaiting();
    this.entries = this.waiting;
    await this.catchUp();
    setInterval(() => void this.catchUp(), 5000);
  }

  async catchUp(): Promise<void> {
    try {
      if (this.waiting.length > 0) {
        const sent = this.waiting;
        const problems = await sendEntries(sent);
        if (problems.length === 0) this.#setWaiting(this.waiting.filter((entry) => !sent.includes(entry)));
      }
      const news = await fetchSince(this.#cursor);
      this.#cursor = news.cursor;
      if (news.entries.length > 0) this.#take(decodeEntries(news.entries).entries);
      this.standing = 'in-step';
    } catch {
      this.standing = 'apart';
    }
  }

  /** Makes an entry of what somebody entered, shows it at once and sends it. */
  async enter<K extends EntryKind>(hammer: string, kind: K, body: EntryBodies[K], by: string): Promise<readonly Problem[]> {
    return this.keep(this.draft(hammer, kind, body, by));
  }

  /** Takes an entry into the log, shows it and sends it on. @returns what is wrong with it; nothing is kept then */
  async keep(entry: Entry): Promise<readonly Problem[]> {
    const checked = decodeEntries([entry]);
    if (checked.problems.length > 0) return checked.problems;
    this.#setWaiting([...this.waiting, entry]);
    this.#take([entry]);
    await this.catchUp();
    return [];
  }

  /** An entry that is not in the log yet, for showing what it would change. An enrol entry names itself as its hammer. */
  draft<K extends EntryKind>(hammer: string | undefined, kind: K, body: EntryBodies[K], by: string): Entry {
    const now = Date.now();
    const id = makeEntryId(now, crypto.getRandomValues(new Uint8Array(10)));
    return { id, hammer: hammer ?? id, at: new Date(now).toISOString(), by: by === '' ? 'not named' : by, kind, body };
  }

  hammers(): readonly string[] {
    return this.entries.filter((entry) => entry.kind === 'enrol').map((entry) => entry.hammer);
  }

  of(hammer: string): readonly Entry[] {
    return this.entries.filter((entry) => entry.hammer === hammer);
  }

  /** The picture of one hammer; worked out once for each state of its log. */
  picture(hammer: string): Picture | undefined {
    const { system, entries } = this;
    const held = this.#pictures.get(hammer);
    if (held !== undefined && held.of === entries && held.system === system) return held.picture;
    const found = picture(this.of(hammer), knowledge, later(), SEED, system);
    this.#pictures.set(hammer, { of: entries, system, picture: found });
    return found;
  }

  /** What the picture would be with one more entry. */
  pictureWith(hammer: string, entry: Entry): Picture | undefined {
    return picture([...this.of(hammer), entry], knowledge, later(), SEED, this.system);
  }

  #take(news: readonly Entry[]): void {
    this.entries = mergeLogs(this.entries, news).entries;
  }

  #setWaiting(entries: readonly Entry[]): void {
    this.waiting = entries;
    keepWaiting(entries);
  }
}

/** A minute ahead, so that an entry made this very moment on a device whose clock is a little fast still counts. */
const later = (): string => new Date(Date.now() + 60_000).toISOString();

export const yard = new YardLog();
