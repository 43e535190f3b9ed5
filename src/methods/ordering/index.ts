export { inOrder } from './in-order.ts';
export type { Ordered, Step } from './in-order.ts';
export { criticalPath } from './critical-path.ts';
export type { Schedule, Scheduled, Task } from './critical-path.ts';
export { threePoint, uncertainSchedule } from './three-point.ts';
export type { ThreePoint, UncertainSchedule, UncertainTask } from './three-point.ts';
