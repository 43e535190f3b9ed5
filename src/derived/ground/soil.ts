import { knowledge, SOILS, type Soil, type SoilId } from '../../knowledge/index.ts';

export { SOILS, type Soil, type SoilId };

const PRINTED = knowledge.sources.find((one) => one.id === 'barkan-soils');
/** The source of the soils in words, with who read it. */
export const SOIL_SOURCE = PRINTED === undefined ? '' : `${PRINTED.title}, ${PRINTED.where}, ${PRINTED.standing}`;

const TABLE_AREA = 10;
/** Below this the rule of the root has no support; a small base is taken as this large. */
const LEAST_AREA = 0.2;

/**
 * Stiffness of the ground under a base, N/m: coefficient x area, the coefficient growing as the root of 10 m² over the area.
 * @param coefficient N/m³ for 10 m², positive @param area m², positive
 */
export const groundStiffness = (coefficient: number, area: number): number => coefficient * Math.sqrt(Math.max(1, TABLE_AREA / Math.max(area, LEAST_AREA))) * area;
