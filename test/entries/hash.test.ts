import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, hexOf, sha256, utf8Bytes } from '../../src/entries/index.ts';

/** NIST, Secure Hash Standard examples (SHA-256: one block, two blocks) and FIPS 180-2 appendix B.3 (a million letters a). */
const PUBLISHED = [
  { message: 'abc', digest: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad' },
  { message: 'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', digest: '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1' },
  { message: 'a'.repeat(1_000_000), digest: 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0' },
];

describe('SHA-256', () => {
  it.each(PUBLISHED)('gives the published digest ($digest)', ({ message, digest }) => {
    expect(hexOf(sha256(utf8Bytes(message)))).toBe(digest);
  });

  it('agrees with the platform on random bytes of every length round the block', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
      expect(hexOf(sha256(bytes))).toBe(createHash('sha256').update(bytes).digest('hex'));
    }));
  });

  it('writes UTF-8 as the platform does, stray surrogates included', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), fc.integer({ min: 0xd800, max: 0xdfff }), (text, stray) => {
      for (const each of [text, `${text}${String.fromCharCode(stray)}x`]) expect([...utf8Bytes(each)]).toEqual([...new TextEncoder().encode(each)]);
    }));
  });
});

describe('canonical text', () => {
  it('is the same whatever the order of the keys, and reads back as the same value', () => {
    fc.assert(fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (record) => {
      const turned = Object.fromEntries(Object.entries(record).reverse());
      expect(canonicalJson(turned)).toBe(canonicalJson(record));
      expect(JSON.parse(canonicalJson(record))).toEqual(JSON.parse(JSON.stringify(record)));
    }));
  });

  it('sorts keys by code unit and refuses what JSON cannot hold: RFC 8785, section 3.2.3', () => {
    expect(canonicalJson({ '\u20ac': 1, '\r': 2, '1': 3, '\ud83d\ude00': 4, '\u0080': 5, '\u00f6': 6, '\ufb33': 7 })).toBe('{"\\r":2,"1":3,"\u0080":5,"\u00f6":6,"\u20ac":1,"\ud83d\ude00":4,"\ufb33":7}');
    expect(() => canonicalJson({ value: Number.NaN })).toThrow(/NaN/);
    expect(() => canonicalJson(() => 1)).toThrow(/function/);
  });
});
