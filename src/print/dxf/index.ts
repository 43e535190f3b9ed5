export { makingDxf } from './making-dxf.ts';
