import { mapCell, type CellSettings, type MapCell } from './map-cell.ts';
import type { MotionSpec } from './motion-spec.ts';
import type { SettingName } from './setting.ts';
import { withSetting } from './setting.ts';

/** One thing changed alone, to see what it does to the beat. */
export interface MotionTrial {
  readonly id: 'slower' | 'faster' | 'new-spring' | 'tight-joints' | 'full-stack' | 'leaf-lost' | 'strong-motor' | 'bare-dies' | 'thick-work';
  readonly cell: MapCell;
}

/** Ten per cent either way is what a person can try by pulley or tread. */
const TENTH = 0.1;

/**
 * Tries what a person would: slower, faster, a spring of its first length, tight joints, dies of full height, a motor twice as strong, bare dies, thicker
 * work, a bow without one of its leaves. Only those that would change something on this hammer.
 * @param leaves leaves of the bow, where they were counted
 */
export function motionTrials(spec: MotionSpec, leaves?: number, settings: CellSettings = { duration: 5, relative: 1e-5, either: true }): readonly MotionTrial[] {
  const s = spec.suspension;
  const set = (name: SettingName, value: number): MotionSpec => withSetting(spec, name, value);
  const wanted: readonly (readonly [MotionTrial['id'], MotionSpec] | undefined)[] = [
    ['slower', set('driveSpeed', spec.driveSpeed * (1 - TENTH))],
    ['faster', set('driveSpeed', spec.driveSpeed * (1 + TENTH))],
    s.kind === 'coil-toggle' && s.sag > 0.001 ? ['new-spring', set('sag', 0)] : undefined,
    spec.lostMotion > 0.0008 ? ['tight-joints', set('lostMotion', 0)] : undefined,
    spec.stackLoss > 0.004 ? ['full-stack', set('stackLoss', 0)] : undefined,
    s.kind === 'bow-strap' && leaves !== undefined && leaves >= 2 ? ['leaf-lost', set('springRate', s.tipRate * (1 - 1 / leaves))] : undefined,
    ['strong-motor', { ...spec, pullOutTorque: spec.pullOutTorque * 2, clutchTorque: spec.clutchTorque * 1.5 }],
    spec.workThickness > 0.001 ? ['bare-dies', { ...set('workThickness', 0), contact: spec.contact.kind === 'fixed' ? { kind: 'fixed', restitution: 0.6 } : spec.contact }] : undefined,
    ['thick-work', set('workThickness', spec.workThickness + 0.012)],
  ];
  return wanted.flatMap((one) => (one === undefined ? [] : [{ id: one[0], cell: mapCell(one[1], settings) }]));
}
