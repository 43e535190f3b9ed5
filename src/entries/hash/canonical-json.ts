/**
 * Writes a plain value so that equal content gives equal text: keys sorted by code unit, no spaces, numbers in their
 * shortest form that reads back the same. Source: RFC 8785, JSON Canonicalization Scheme, section 3.2.
 * @param value plain data as JSON knows it; a field that is undefined counts as absent
 * @param where what to call the value in a complaint
 * @returns the canonical text
 * @throws TypeError for what JSON would lose in silence (a number that is not finite, a function, a Date): a programmer's mistake
 */
export function canonicalJson(value: unknown, where = 'value'): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new TypeError(`a number cannot be written; allowed are finite ones: ${where} = ${value}`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map((item, index) => canonicalJson(item, `${where}[${index}]`)).join(',')}]`;
  if (typeof value === 'object' && isPlain(value)) {
    const record = value as Readonly<Record<string, unknown>>;
    const fields = Object.keys(record).filter((key) => record[key] !== undefined).sort();
    return `{${fields.map((key) => `${JSON.stringify(key)}:${canonicalJson(record[key], `${where}.${key}`)}`).join(',')}}`;
  }
  throw new TypeError(`a value cannot be written; allowed is plain data: ${where} is a ${typeof value}`);
}

const isPlain = (value: object): boolean => {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
};
