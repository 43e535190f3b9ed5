const PLACE = 'tupwise.by';

/** Who is entering; asked once and kept on this device. */
class Who {
  name = $state(localStorage.getItem(PLACE) ?? '');

  set(name: string): void {
    this.name = name.trim();
    localStorage.setItem(PLACE, this.name);
  }
}

export const who = new Who();
