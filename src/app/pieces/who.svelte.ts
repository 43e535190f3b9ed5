const PLACE = 'tupwise.by';

/** Who is entering; asked once and kept on this device. */
class Who {
  name = $state(localStorage.getItem(PLACE) ?? '');
  /** True while somebody is asked for their name before something is entered. */
  asking = $state(false);
  #nameless = false;
  #waiting: ((go: boolean) => void)[] = [];

  set(name: string): void {
    this.name = name.trim();
    try {
      localStorage.setItem(PLACE, this.name);
    } catch {
      // A browser that keeps nothing: the name holds until the page is closed.
    }
  }

  /**
   * Asks for a name before the first entry, where none is known. Whoever would rather not say is not asked again on this visit.
   * @returns false where the reader turned back and nothing is to be entered
   */
  async known(): Promise<boolean> {
    if (this.name !== '' || this.#nameless) return true;
    this.asking = true;
    return new Promise((go) => this.#waiting.push(go));
  }

  /** @param said the name; empty for an entry without one; undefined to turn back */
  answer(said: string | undefined): void {
    this.asking = false;
    if (said !== undefined) {
      if (said.trim() === '') this.#nameless = true;
      else this.set(said);
    }
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const go of waiting) go(said !== undefined);
  }
}

export const who = new Who();
