import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { typed } from '../../cli/at-the-door.ts';
import { INVENTED, invented } from '../../motion-views/invented-hammers.ts';

const KNOCKER = invented('WH-65').path;
const AS_OF = ['--as-of', '2026-04-11'];
const GONE = /NaN|Infinity|undefined|\n\s+at .*:\d+:\d+/;
const folder = mkdtempSync(join(tmpdir(), 'tupwise-motion-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('motion at the command line', () => {
  test('names the knock, what makes it worse, and what would end it; the same every time', async () => {
    const heard = await typed(['motion', KNOCKER, ...AS_OF]);
    expect(heard.exit).toBe(0);
    expect(heard.out).toMatch(/The ram knocks on what carries it 4\d ms before every blow[\s\S]*worse when it runs faster/);
    expect(heard.out).toMatch(/Smallest adjustment that makes it clean[\s\S]*Spring nut[\s\S]*The spring is due, not the nut/);
    expect(heard.out).toMatch(/Read on this hammer: .*room before the ram meets what carries it/);
    expect(heard.out).not.toMatch(GONE);
    expect((await typed(['motion', KNOCKER, ...AS_OF])).out).toBe(heard.out);
  });

  test.each(INVENTED.map((one) => [one.tag, one.path]))('%s is told in both systems of units', async (_tag, path) => {
    for (const units of [[], ['--metric']]) {
      const heard = await typed(['motion', path, ...AS_OF, ...units]);
      expect(heard.exit).toBe(0);
      expect(heard.out).toMatch(/Blow energy|do not meet/);
      expect(heard.out).not.toMatch(GONE);
    }
  });

  test('a setting is tried in shop notation, and the account of the energy is printed and closes', async () => {
    const heard = await typed(['motion', KNOCKER, ...AS_OF, '--set', 'nut=6 3/4 in', '--set', 'speed=300 rpm', '--audit']);
    expect(heard.exit).toBe(0);
    expect(heard.out).toMatch(/tried with spring nut: length of the spring 6 3\/4 in \(3 1\/8 turns tighter \(5\/16 in\)\)/);
    expect(heard.out).toMatch(/^One clean blow a turn\./m);
    const share = Number(/left over: the error of the reckoning +-?[\d.]+ J +(-?[\d.]+) %/.exec(heard.out)?.[1]);
    expect(Math.abs(share)).toBeLessThan(0.01);
  });

  test('the same for machines, without the samples', async () => {
    const heard = await typed(['motion', KNOCKER, ...AS_OF, '--json', '--map', 'speed,nut', '--size', '4']);
    const said = JSON.parse(heard.out) as { motion: { outcome: string; beatClass: string; trace?: unknown }; doubt: { ran: number }; read: unknown[]; assumed: string[]; map: { code: number[] } };
    expect(heard.exit).toBe(0);
    expect(said.motion).toMatchObject({ outcome: 'ran', beatClass: 'upper-stop-knock' });
    expect(said.motion.trace).toBeUndefined();
    expect(said.map.code).toHaveLength(16);
    expect(said.assumed).toContain('suspension.upperLimb');
  });

  test('drawing, trace and map are written to files', async () => {
    const at = (name: string): string => join(folder, name);
    expect((await typed(['motion', KNOCKER, ...AS_OF, '--svg', at('a.svg'), '--csv', at('a.csv')])).exit).toBe(0);
    const drawing = readFileSync(at('a.svg'), 'utf8');
    expect(drawing).toMatch(/^<svg [\s\S]*ram on carrier[\s\S]*<\/svg>\s*$/);
    expect(drawing).not.toMatch(/NaN|undefined/);
    expect(readFileSync(at('a.csv'), 'utf8').split('\n').length).toBeGreaterThan(500);
    const mapped = await typed(['motion', KNOCKER, ...AS_OF, '--map', 'speed,nut', '--size', '12', '--svg', at('m.svg'), '--csv', at('m.csv')]);
    expect(mapped.out).toMatch(/Map of speed without slip and spring nut: length of the spring, 12 by 12[\s\S]*C one clean blow a turn: \d+ %/);
    const map = readFileSync(at('m.svg'), 'utf8');
    expect(map).toMatch(/id="map-upper-stop-knock"[\s\S]*U {2}The ram knocks on what carries it/);
    const lines = readFileSync(at('m.csv'), 'utf8').trimEnd().split('\n');
    expect(lines).toHaveLength(145);
    expect(lines[0]).toBe('speed turns a second,nut m,beat,or,energy J,second sound dB,delay s');
  });

  test.each([
    [['--set', 'nut=banana'], /Spring nut: length of the spring: .*banana/],
    [['--set', 'nut=900 in'], /Spring nut: length of the spring: .*900 in/],
    [['--set', 'spring=3'], /this hammer has no such setting; one of nut, gap, rod, .*: spring/],
    [['--set', 'nut'], /by name and value, such as nut="7 1\/16 in": nut/],
    [['--map', 'speed'], /two different settings, such as speed,nut: speed/],
    [['--map', 'speed,speed'], /two different settings/],
    [['--map', 'speed,nut', '--size', '4000'], /whole number from 2 to 128: 4000/],
    [['--set', 'speed=0 rpm'], /Speed without slip: .*0 rpm/],
  ])('what cannot be asked is answered by name: %j', async (more, says) => {
    const heard = await typed(['motion', KNOCKER, ...AS_OF, ...more]);
    expect(heard.exit).toBe(2);
    expect(heard.err).toMatch(says);
    expect(heard.err + heard.out).not.toMatch(GONE);
  });

  test('a setting that no hammer can have is refused by its shop name', async () => {
    const heard = await typed(['motion', KNOCKER, ...AS_OF, '--set', 'nut=9 in']);
    expect(heard.exit).toBe(2);
    expect(heard.out).toMatch(/^The spring is slack with the links level; the spring preload must be more than the sag/m);
    expect(heard.out).not.toMatch(GONE);
  });
});
