export { outlookBlocks } from './outlook-blocks.ts';
