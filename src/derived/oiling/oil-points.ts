export { OIL_POINTS, type OilPoint } from '../../knowledge/index.ts';
