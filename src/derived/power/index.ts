export { powerInputOf, powerProblems } from './power-input.ts';
export type { ConverterKind, Phase, PowerInput } from './power-input.ts';
export { reckonedCurrent, tableCurrent } from './current.ts';
export type { CurrentRange, TableCurrent } from './current.ts';
export { powerOf } from './power-of.ts';
export type { Converter, ConverterAnswer, Power, PowerAnswer } from './power-of.ts';
export { wiringCautions } from './wiring-cautions.ts';
export type { WiringCaution } from './wiring-cautions.ts';
export { workOutPower } from './work-out-power.ts';
