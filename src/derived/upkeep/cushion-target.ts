import type { Quantity } from '../../methods/quantity/index.ts';
import type { SettingInputs, Targeted } from './setting-line.ts';

const RENEWED = 'helve.renew-cushions';

/** Height of the cushions of a helve, free: as made, and the new ones where an open job renews them. */
export function cushionTarget({ jobs }: SettingInputs, known: (key: string) => Quantity | undefined): Targeted {
  const made = ['upper', 'lower'].flatMap((end) => known(`helve.cushion-height@${end}#as-made`) ?? [])[0] ?? known('helve.cushion-height#as-made');
  if (made === undefined) return { missing: ['helve.cushion-height#as-made'] };
  const height: Quantity = { ...made, uncertainty: 0 };
  const renewed = jobs?.has(RENEWED) ?? false;
  return {
    target: {
      from: height, to: height, basis: 'as-made', ...(renewed ? { anew: true as const } : {}),
      sentence: renewed ? 'As made, upper and lower alike: read the new rubber. What was found belongs to the old.' : 'As made, upper and lower alike.', sources: ['page-other-families'],
    },
    missing: [],
  };
}
