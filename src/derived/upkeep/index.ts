export { upkeepPlan, type DueItem, type UpkeepPlan } from './due.ts';
export { calendarText, upkeepEvents, type CalendarEvent } from './calendar.ts';
export { wearForecast, type WearForecast, type WearReading } from './wear-forecast.ts';
export { wearOf, type Wear } from './wear-of.ts';
export { inspectionRecord, type InspectionRecord } from './inspection-record.ts';
export { settingSheet } from './setting-sheet.ts';
export type { SettingInputs, SettingLine, SettingTarget } from './setting-line.ts';
export { acceptance, type Acceptance, type AcceptanceInputs } from './acceptance.ts';
export type { AcceptancePoint } from './acceptance-point.ts';
