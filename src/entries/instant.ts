const SHAPE = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})(?::(\d{2})(?:\.(\d{1,9}))?)?(Z|[+-]\d{2}:\d{2})$/;
const DAY_MS = 86_400_000;

/** Whether a day exists in the calendar: 2026-02-30 does not. */
export function isCalendarDay(year: number, month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysOfMonth(year, month);
}

const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const daysOfMonth = (year: number, month: number): number => (month === 2 ? (isLeapYear(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31);

/**
 * Days from 1970-01-01 to a day of the Gregorian calendar.
 * @param year four figures
 * @param month 1 to 12
 * @param day 1 to 31
 */
function dayNumber(year: number, month: number, day: number): number {
  const before = year - 1;
  let days = 365 * before + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  for (let each = 1; each < month; each += 1) days += daysOfMonth(year, each);
  return days + day - 719_163;
}

/**
 * Reads an instant of ISO 8601 with its zone. The core has no clock and no calendar object, so it is reckoned here.
 * @param text for example `2026-04-11T09:30:00-05:00`; seconds may be left out, the zone may not
 * @returns milliseconds since 1970 UTC, or undefined where the text is no instant
 */
export function instantMs(text: string): number | undefined {
  const found = SHAPE.exec(text);
  if (found === null) return undefined;
  const [year, month, day, hour, minute] = found.slice(1, 6).map(Number) as [number, number, number, number, number];
  const second = Number(found[6] ?? '0');
  const fraction = Math.floor(Number(`0.${found[7] ?? '0'}`) * 1000);
  const zone = zoneMinutes(found[8] ?? 'Z');
  if (!isCalendarDay(year, month, day) || hour > 23 || minute > 59 || second > 59 || zone === undefined) return undefined;
  return dayNumber(year, month, day) * DAY_MS + (hour * 60 + minute - zone) * 60_000 + second * 1000 + fraction;
}

function zoneMinutes(text: string): number | undefined {
  if (text === 'Z') return 0;
  const hours = Number(text.slice(1, 3));
  const minutes = Number(text.slice(4, 6));
  if (hours > 14 || minutes > 59) return undefined;
  return (text.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
}
