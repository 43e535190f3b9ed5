export { GREY_IRON, greyIronClass } from './grey-iron.ts';
export type { GreyIron } from './grey-iron.ts';
