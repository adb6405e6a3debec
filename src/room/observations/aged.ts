import { type Day, formatDay } from '../../days.ts';
import { chooseBirds, chooseEggs, hostClutch } from '../choose.ts';
import { hatchedOn } from '../clock.ts';
import { eggsInReach, whyNotAlive, whyNotOpen, youngInReach } from '../lives.ts';
import type { Bird } from '../model.ts';
import { means, type Scene } from '../scene.ts';
import type { Apply } from './apply.ts';

/**
 * Refs of chicks age chicks. A count or `all` ages the chicks, too, where there are no eggs or where the chicks can be so
 * old: an egg that is left beside them is not meant. Anything else ages eggs.
 */
export const aged: Apply<'aged'> = (scene, value) => {
  const { pair, day } = scene;
  for (const { days, who } of value) {
    const hatched = day - Math.round(days);
    const chicks =
      who.kind === 'refs'
        ? who.refs.some((ref) => ref.form === 'chick')
        : !eggsInReach(pair).some((egg) => means(scene, hostClutch(egg))) || nestlingsCanBe(scene, hatched);
    if (chicks) {
      const young = chooseBirds(scene, who, {
        did: 'aged',
        among: youngInReach(pair),
        impossible: (bird) => whyNotAlive(bird) ?? whyOlder(bird, hatched),
      });
      for (const bird of young) {
        bird.aged = { day, days };
        bird.hatched = { from: hatched, to: hatched };
      }
    } else {
      const eggs = chooseEggs(scene, who, {
        did: 'aged',
        among: eggsInReach(pair),
        impossible: (egg) => whyNotOpen(egg),
        rank: (egg) => (egg.aged === null ? 0 : 1),
      });
      for (const egg of eggs) egg.aged = { day, days };
    }
  }
};

/** Whether there are nestlings, and each can have hatched on that day. */
function nestlingsCanBe(scene: Scene, day: Day): boolean {
  const young = youngInReach(scene.pair).filter(
    (one) => one.fledged === null && means(scene, hostClutch(one)),
  );
  return (
    young.length > 0 &&
    young.every((bird) => {
      const span = hatchedOn(bird);
      return span !== null && span.from <= day && day <= span.to;
    })
  );
}

/** Why a chick cannot be so young: it was seen before it would have hatched. */
function whyOlder({ firstSeen }: Bird, hatched: Day): string | null {
  if (firstSeen === null || firstSeen >= hatched) return null;
  return `it was out of the shell on ${formatDay(firstSeen)} already`;
}
