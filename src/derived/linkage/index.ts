export { bowDraw, strapLonger, type BowDraw } from './bow-draw.ts';
