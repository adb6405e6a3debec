import { type Day, type Span, shortDay, shortSpan, spanOf } from '../../days.ts';
import { housingOf } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import { listed } from '../../words.ts';
import { UNWELL_FOR } from '../illness.ts';
import { fewNames, quarantineOf } from '../quarantine.ts';
import { type Found, folded, type View, type Warning } from './warning.ts';

interface Held extends Found {
  birds: Bird[];
  housing: string | null;
  died: Bird[];
  diedOn: Day;
  ill: Bird[];
  /** The first days of their illnesses. */
  illSince: Span;
  out: Day;
}

/** Days after a death for which it is said. */
const SHOWN = 7;

export const quarantineHeld: Warning<Held> = {
  kind: 'quarantine-held',
  levels: ['watch'],
  health: true,
  when: 'a bird in quarantine is not to be let out yet because another died beside it, or because its days are over and one that shared its housing is unwell',
  over: `\`released\`; ${SHOWN} d after the death; the ill one is \`well again\`, or ${UNWELL_FOR} d without a word of it, also of treatment`,
  explain:
    'What one bird in quarantine has, the others in its housing may carry without showing it. Nobody is let out while one of them is unwell, and a death in quarantine is looked into by an avian vet before anybody comes out (common practice): ask at once how the dead bird is to be kept and sent in, as that soon becomes impossible. The days begin anew with the death for all that were with it, unless the vet says otherwise; `released` says that they are out. A nestling lost in the nest counts only where it was written as unwell: most broods lose some to cold, hunger or the parents (common practice); a nest in which one after another dies is a matter for the vet all the same. Wash hands, and see to these birds last.',
  find: heldIn,
  say: ({ birds, housing, died, diedOn, ill, illSince, out }) => {
    const why = [
      ...(died.length > 0 ? [`${fewNames(died)} died on ${shortDay(diedOn)}`] : []),
      ...(ill.length > 0 ? [`${fewNames(ill)} fell ill on ${shortSpan(illSince)}`] : []),
    ];
    const where = housing === null ? '' : ` (${housing})`;
    return {
      text: `${fewNames(birds)}${where}: not out of quarantine before ${shortDay(out)}, as ${listed(why)}. What one has, the others may carry.`,
      check: `ask an avian vet before anybody is let out${died.length > 0 ? ', and at once how the dead bird is to be kept' : ''}; then see to these birds last, and wash hands`,
    };
  },
};

/** One line for all whom the same illnesses and deaths keep in; an ill bird that nobody else was with is a matter of its own. */
function heldIn(view: View): Held[] {
  return folded(
    view.room.birds.flatMap((bird) => heldBy(view, bird) ?? []),
    ({ out, housing, died, ill }) => [out, housing, [...died, ...ill].map(({ id }) => id).sort()],
  ).filter(
    ({ birds, died, ill }) => died.length > 0 || ill.some((one) => birds.some((other) => other !== one)),
  );
}

function heldBy({ room, day }: View, bird: Bird): Held | null {
  const quarantine = bird.placeholder ? null : quarantineOf(room, bird);
  if (quarantine === null || day >= quarantine.out) return null;
  const { from, until, out } = quarantine;
  const died = day - from <= SHOWN ? quarantine.died : [];
  const illnesses = quarantine.ill.filter(({ over }) => day >= until && day < over);
  if (died.length + illnesses.length === 0) return null;
  const ill = [...new Set(illnesses.map(({ bird }) => bird))];
  const begun = illnesses.map(({ since }) => since);
  const illSince = spanOf(begun);
  const date = Math.max(...(died.length > 0 ? [from] : []), ...begun);
  const about = { level: 'watch', pair: null, bird: bird.id, clutch: null, date } as const;
  return { ...about, birds: [bird], housing: housingOf(bird), died, diedOn: from, ill, illSince, out };
}
