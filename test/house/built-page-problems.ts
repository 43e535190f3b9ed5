import type { SourceFile } from './source-file.ts';

/** Names of notations, which nobody fetches, and the addresses in the page library's own error texts. */
const NOT_FETCHED = [/^https?:\/\/www\.w3\.org\//, /^https:\/\/svelte\.dev\/e\//];
/** Reserved for examples by RFC 2606 and RFC 6761, or this machine. */
const NOWHERE = /^https?:\/\/(localhost|127\.0\.0\.1|\[::1\]|([\w-]+\.)*(example|invalid|test)|([\w-]+\.)*example\.(com|org|net))([:/]|$)/;

/** Addresses of others in the page as it is built, one sentence each. */
export function thirdPartyProblems(files: readonly SourceFile[]): string[] {
  return files.flatMap(({ path, text }) => {
    const written = [...text.matchAll(/(?:https?|wss?):\/\/[^\s"'`<>)\\]+/g)].map(([address]) => address);
    // Without a scheme an address still leaves the machine: src="//cdn...", url(//fonts...), @import "//..."
    const bare = [...text.matchAll(/(?:src|href|action)=["']?(\/\/[^\s"'>]+)|url\(["']?(\/\/[^\s"')]+)|@import\s+["'](\/\/[^"']+)/g)].map((match) => match[1] ?? match[2] ?? match[3]!);
    return [...written.filter((address) => !NOT_FETCHED.some((name) => name.test(address)) && !NOWHERE.test(address)), ...bare].map(
      (address) => `${path}: the page names an address that is not its own: ${address}`,
    );
  });
}
