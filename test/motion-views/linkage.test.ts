import { describe, expect, test } from 'vitest';
import { linkageAt, motionLoop, movingFigure, movingLengths, movingShapes, poseOf, traces } from '../../src/views/motion/index.ts';
import { INVENTED, invented } from './invented-hammers.ts';

const NUMBERS_GONE = /NaN|Infinity|undefined/;
const far = (a: readonly [number, number], b: readonly [number, number]): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('the linkage is drawn to the lengths that the motion was reckoned with', () => {
  test.each(INVENTED.map((one) => [one.tag, one] as const))('%s: rod, throw, links and arms keep their length at every instant', (_tag, { picture, survey, run }) => {
    const lengths = movingLengths(picture);
    const { spec } = survey;
    const s = spec.suspension;
    const centres: (readonly [number, number])[] = [];
    let worst = 0;
    for (let i = 0; i < run.trace.time.length; i += 7) {
      const pose = linkageAt(spec, lengths, run.trace, i);
      worst = Math.max(worst, Math.abs(far(pose.crankPin, pose.rodEnd) - spec.rodLength), Math.abs(far(pose.crankPin, pose.crankCentre) - spec.throw));
      if (pose.kind === 'coil-toggle' && s.kind === 'coil-toggle') worst = Math.max(worst, Math.abs(far(pose.armLower, pose.ramPin) - s.link), Math.abs(far(pose.armLower, pose.armPivot) - s.lowerLimb), Math.abs(far(pose.armUpper, pose.armPivot) - s.upperLimb));
      if (pose.kind === 'bow-strap' && s.kind === 'bow-strap') worst = Math.max(worst, Math.abs(far(pose.tip, pose.ramPin) - s.strap));
      centres.push(pose.crankCentre);
    }
    console.log(`${_tag}: worst length off by ${worst.toExponential(1)} m over ${centres.length} instants`);
    expect(worst).toBeLessThan(1e-9);
    // The crank does not wander: what the simulator did and what is drawn are one machine.
    const [first] = centres;
    for (const centre of centres) expect(far(centre, first!)).toBeLessThan(s.kind === 'helve' ? 2e-3 : 1e-9);
  });

  test('the spring shortens as its arms spread, by the amount of the law', () => {
    const { picture, survey } = invented('WH-65');
    const lengths = movingLengths(picture);
    const level = poseOf(survey.spec, lengths, 0.05, 0, 1);
    const low = poseOf(survey.spec, lengths, 0.05, 0.03, 1);
    if (level.kind !== 'coil-toggle' || low.kind !== 'coil-toggle') throw new Error('a coil and toggle hammer');
    expect(level.springLength).toBeCloseTo(lengths.springLength, 12);
    expect(level.springLength - low.springLength).toBeCloseTo(2 * (low.armUpper[0] - level.armUpper[0]), 12);
    expect(low.springLength).toBeLessThan(level.springLength);
  });

  test.each(INVENTED.map((one) => [one.tag, one] as const))('%s: figure and traces hold no number that is not one, are the same each time, and every moving path is always there', (_tag, { picture, survey, run }) => {
    const lengths = movingLengths(picture);
    for (const system of ['inch', 'metric'] as const)
      for (const aspect of [0.5, 0.68, 1.15, 2.6]) {
        const figure = movingFigure(survey.spec, lengths, run, { system, aspect, ghost: true });
        expect(figure.svg).not.toMatch(NUMBERS_GONE);
        expect(movingFigure(survey.spec, lengths, run, { system, aspect, ghost: true }).svg).toBe(figure.svg);
      }
    const chart = traces(run, survey.spec, { system: 'inch', width: 360, behind: run });
    expect(chart).not.toMatch(NUMBERS_GONE);
    expect(traces(run, survey.spec, { system: 'inch', width: 360, behind: run })).toBe(chart);
    const loop = motionLoop(run);
    const ids = movingShapes(survey.spec, lengths, linkageAt(survey.spec, lengths, run.trace, loop.first)).map((shape) => shape.id);
    for (let i = loop.first; i < loop.end; i += 11) {
      const shapes = movingShapes(survey.spec, lengths, linkageAt(survey.spec, lengths, run.trace, i));
      expect(shapes.map((shape) => shape.id)).toEqual(ids);
      for (const shape of shapes) expect(shape.d).not.toMatch(NUMBERS_GONE);
    }
  });
});
