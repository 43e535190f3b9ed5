export { coilEndsOf } from './coil-ends.ts';
export { workOutCoilSpring } from './coil-spring.ts';
