/** Day sheet or night board; follows the device until somebody chooses. */
const PLACE = 'tupwise.light';
const CHOICES = ['device', 'day', 'night'] as const;
type Choice = (typeof CHOICES)[number];

class Light {
  choice = $state<Choice>('device');

  constructor() {
    const held = localStorage.getItem(PLACE);
    this.#set(CHOICES.find((one) => one === held) ?? 'device');
  }

  get words(): string {
    return { device: 'light: as device', day: 'light: day', night: 'light: night' }[this.choice];
  }

  turn(): void {
    this.#set(CHOICES[(CHOICES.indexOf(this.choice) + 1) % CHOICES.length] ?? 'device');
  }

  #set(choice: Choice): void {
    this.choice = choice;
    localStorage.setItem(PLACE, choice);
    if (choice === 'device') delete document.documentElement.dataset['light'];
    else document.documentElement.dataset['light'] = choice;
  }
}

export const light = new Light();
