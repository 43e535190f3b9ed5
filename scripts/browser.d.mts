/** A browser's program and the variables that it needs. */
export interface BrowserProgram {
  readonly executablePath: string;
  readonly env: Record<string, string>;
}
export const BROWSER_FLAGS: readonly string[];
export function ensureBrowser(only?: { readonly packaged?: boolean }): Promise<BrowserProgram>;
