import { knowledge, type Source } from '../../knowledge/index.ts';

/** Sources of drawings alone; the rest stand in knowledge. */
const OWN: readonly Source[] = [
  { id: 'iso-286', title: 'ISO 286, limits and fits', kind: 'standard', where: 'ISO 286-1, tables of tolerance grades and fundamental deviations', standing: 'in part read in tables that agree, the rest from memory' },
  { id: 'asme-b17-1', title: 'ANSI B17.1, keys and keyseats', kind: 'standard', where: 'key sizes by shaft diameter', standing: 'in part read, the rest from memory' },
  { id: 'zimmerli', title: 'Endurance of spring wire, Zimmerli', kind: 'handbook', where: 'as quoted in Shigley, Mechanical Engineering Design, section 10-9: 35 ksi about a mean of 55 ksi, not peened', standing: 'from memory' },
  { id: 'spring-tolerances', title: 'Commercial tolerances of coil springs', kind: 'memory', where: '', standing: 'from memory' },
];

/** The source of an id, wherever it stands. */
export const makingSource = (id: string): Source | undefined => knowledge.sources.find((one) => one.id === id) ?? OWN.find((one) => one.id === id);
