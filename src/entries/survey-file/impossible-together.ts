import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Draft } from './draft.ts';
import type { SurveyProblems } from './survey-problem.ts';

const DIES: readonly string[] = ['upper-die.height', 'lower-die.height'];
const GAP = 'upper-die.rest-gap';
/** Places that work only ever makes smaller. */
const ONLY_WEARS_AWAY: readonly string[] = [...DIES, 'clutch-facing.thickness', 'coil-spring.wire', 'bow-spring.leaf-thickness', 'crank.pin-diameter', 'main-shaft.diameter', 'pulley.diameter'];
const GROWTH_SHARE = 0.02;

type Written = Extract<Draft['body'], { place: string }>;

const isWritten = (draft: Draft): boolean => draft.kind === 'reading' || draft.kind === 'as-made' || draft.kind === 'setting';

/**
 * Looks at the readings together: each may be possible by itself and yet not beside the others. A die that is taller than
 * the whole room between ram and seat as made is refused; a part that measures more than it was made is doubtful.
 * @returns the drafts that stay
 */
export function withoutImpossible(drafts: readonly Draft[], problems: SurveyProblems): readonly Draft[] {
  const made = new Map<string, number>();
  for (const draft of drafts) {
    const body = draft.body as Written;
    if (draft.kind === 'as-made') made.set(body.place, body.quantity.value);
  }
  const [upper, lower] = DIES.map((die) => made.get(die));
  const room = upper === undefined || lower === undefined ? undefined : upper + lower + (made.get(GAP) ?? 0);
  return drafts.filter((draft) => {
    if (!isWritten(draft) || draft.kind === 'as-made') return true;
    const { place, quantity, asWritten } = draft.body as Written;
    const shown = (value: number): string => formatQuantity({ dimension: 'length', value, uncertainty: 0 });
    if (room !== undefined && DIES.includes(place) && quantity.value >= room) {
      problems.add(draft.path, draft.span, asWritten, 'the die is taller than the whole gap between ram and seat', `less than ${shown(room)}, which both dies and the rest gap took up as made`);
      return false;
    }
    const asMade = made.get(place);
    if (asMade !== undefined && ONLY_WEARS_AWAY.includes(place) && quantity.value > asMade * (1 + GROWTH_SHARE) + 3 * quantity.uncertainty) {
      problems.add(draft.path, draft.span, asWritten, 'the part measures more than it was made', `at most ${shown(asMade)}, or another as-made value`, 'warning');
    }
    return true;
  });
}
