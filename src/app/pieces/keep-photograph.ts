import { sendBlob } from '../log/wire.ts';

/** @returns the SHA-256 of a photograph that the server keeps now, or the sentence that says why it does not */
export async function keepPhotograph(file: File): Promise<{ readonly sha256: string } | { readonly words: string }> {
  try {
    return { sha256: await sendBlob(file) };
  } catch (failure) {
    return { words: failure instanceof Error && !/fetch|network/i.test(failure.message) ? failure.message : 'there is no connection to the server; photographs need it, readings and looks do not' };
  }
}
