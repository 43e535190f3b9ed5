export * from './springs/index.ts';
export * from './journals/index.ts';
export * from './belts/index.ts';
export * from './keys-and-fits/index.ts';
export * from './crank-and-toggle/index.ts';
export * from './cast-iron/index.ts';
