/** Sheets of one hammer, in the order of the job. */
export const SHEETS = [
  { id: 'elevation', name: 'Elevation' },
  { id: 'round', name: 'Survey round' },
  { id: 'findings', name: 'Findings' },
  { id: 'motion', name: 'Motion' },
  { id: 'sound', name: 'Sound' },
  { id: 'work', name: 'Worksheet' },
  { id: 'outlook', name: 'Outlook' },
  { id: 'papers', name: 'Papers' },
] as const;

export type SheetId = (typeof SHEETS)[number]['id'];

export interface Route {
  readonly hammer: string | undefined;
  readonly sheet: SheetId;
  readonly part: string | undefined;
}

function read(): Route {
  const [, root, hammer, sheet, part] = location.pathname.split('/');
  if (root !== 'hammer' || hammer === undefined || hammer === '') return { hammer: undefined, sheet: 'elevation', part: undefined };
  if (sheet === 'part') return { hammer, sheet: 'elevation', part };
  return { hammer, sheet: SHEETS.find((one) => one.id === sheet)?.id ?? 'elevation', part: undefined };
}

class Router {
  now = $state.raw<Route>(read());
  /** True from a move until the new sheet's heading has taken the reader. */
  moved = false;
  /** Key of the reading or look that the reader comes for; taken by the form that has it. */
  place: string | undefined = location.hash === '' ? undefined : decodeURIComponent(location.hash.slice(1));

  constructor() {
    addEventListener('popstate', () => (this.now = read()));
  }

  /** @param path of a sheet; with `#` and the key of a reading or look it brings the reader to where that is entered */
  go(path: string): void {
    const [sheet = path, place] = path.split('#');
    const elsewhere = sheet !== location.pathname;
    if (!elsewhere && place === undefined) return;
    history.pushState(null, '', path);
    this.place = place;
    this.now = read();
    if (!elsewhere) return;
    this.moved = true;
    scrollTo(0, 0);
  }
}

export const router = new Router();

export const pathOf = (hammer: string, sheet: SheetId = 'elevation'): string => `/hammer/${hammer}/${sheet}`;
export const partPath = (hammer: string, part: string): string => `/hammer/${hammer}/part/${part}`;
