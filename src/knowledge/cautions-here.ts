import type { LinkageFamily } from '../hammer/index.ts';

/** Cautions that stand in the place of others on a family: a helve has no preload to let off, and a beam that drops. */
const INSTEAD: Readonly<Partial<Record<LinkageFamily, Readonly<Record<string, string>>>>> = { helve: { 'spring-unload': 'beam-propped' } };

/** The cautions, by id, that hold on a hammer of the family. */
export const cautionsFor = (ids: readonly string[], family: LinkageFamily): readonly string[] => [...new Set(ids.map((id) => INSTEAD[family]?.[id] ?? id))];
