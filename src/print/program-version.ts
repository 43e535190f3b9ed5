import about from '../../package.json' with { type: 'json' };

/** Version of the program, which every paper names beside its log and its knowledge. */
export const PROGRAM: string = about.version;
