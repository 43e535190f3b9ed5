export * from './springs/index.ts';
export * from './cast-iron/index.ts';
