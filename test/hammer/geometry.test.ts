import { describe, expect, it } from 'vitest';
import { GEOMETRY_PLACES, LINKAGE_FAMILIES, defaultGeometry, placeOf, type GeometryName } from '../../src/hammer/index.ts';

const CLASSES_KG = [25, 40, 50, 65, 90, 100, 150, 250, 500].map((pounds) => pounds * 0.45359237);

const length = (geometry: ReturnType<typeof defaultGeometry>, name: GeometryName): number => {
  const found = geometry[name];
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

describe('default geometry', () => {
  it('keeps the order of heights in every family and class', () => {
    for (const family of LINKAGE_FAMILIES) {
      for (const mass of CLASSES_KG) {
        const geometry = defaultGeometry(family, mass);
        const heights = ['seat-height', ...(family === 'helve' ? ['pivot-height'] : ['guide-bottom', 'guide-top', 'linkage-height', 'shaft-height']), 'overall-height']
          .map((name) => length(geometry, name as GeometryName));
        expect(heights, `${family} ${mass}`).toEqual([...heights].sort((a, b) => a - b));
        const ramFoot = length(geometry, 'seat-height') + 2 * length(geometry, 'die-height') + length(geometry, 'rest-gap');
        if (family !== 'helve') {
          expect(ramFoot).toBeLessThan(length(geometry, 'guide-bottom'));
          expect(ramFoot + length(geometry, 'ram-height')).toBeGreaterThan(length(geometry, 'guide-top'));
          const rodFoot = length(geometry, 'shaft-height') - length(geometry, 'throw') - length(geometry, 'rod-length');
          expect(Math.abs(rodFoot - length(geometry, 'linkage-height'))).toBeLessThan(0.02 * length(geometry, 'overall-height'));
        }
        expect(Object.values(geometry).every((one) => one > 0)).toBe(true);
      }
    }
  });

  it('is about 1.6 m tall at 50 lb and grows with the class', () => {
    expect(length(defaultGeometry('coil-and-toggle', 22.68), 'overall-height')).toBeCloseTo(1.6, 2);
    for (const family of LINKAGE_FAMILIES) {
      const tall = CLASSES_KG.map((mass) => length(defaultGeometry(family, mass), 'overall-height'));
      expect(tall).toEqual([...tall].sort((a, b) => a - b));
    }
  });

  it('names only places that exist, and refuses what no class has', () => {
    expect(Object.values(GEOMETRY_PLACES).filter((id) => placeOf(id) === undefined)).toEqual([]);
    expect(() => defaultGeometry('helve', 0)).toThrow('5 to 500 kg');
    expect(() => defaultGeometry('helve', Number.NaN)).toThrow('5 to 500 kg');
  });
});
