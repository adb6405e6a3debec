import { type Day, formatDay } from '../../days.ts';
import { chooseBirds, chooseEggs, namedFirst } from '../choose.ts';
import { hatchedOn } from '../clock.ts';
import {
  begun,
  canHatchBy,
  eggsInReach,
  fledging,
  hostClutch,
  incubation,
  layingTakes,
  whyNotAlive,
  whyNotOpen,
  youngInReach,
} from '../lives.ts';
import type { Bird, Clutch, Egg } from '../model.ts';
import { means, type Scene } from '../scene.ts';
import { unseenLaying } from '../unseen.ts';
import type { Apply } from './apply.ts';

/**
 * Refs of chicks age chicks. A count or `all` ages the chicks, too, where there are no eggs or where the chicks can be so
 * old: an egg that is left beside them is not meant. Anything else ages eggs.
 */
export const aged: Apply<'aged'> = (scene, value) => {
  const { pair, day } = scene;
  const told = { eggs: new Set<Egg>(), young: new Set<Bird>() };
  for (const { days, who } of namedFirst(value)) {
    const hatched = day - Math.round(days);
    const chicks =
      who.kind === 'refs'
        ? who.refs.some((ref) => ref.form === 'chick')
        : !eggsInReach(pair).some((egg) => means(scene, hostClutch(egg))) || nestlingsCanBe(scene, hatched);
    if (chicks) {
      const young = chooseBirds(scene, who, {
        did: 'aged',
        among: youngInReach(pair),
        inHand: true,
        impossible: (bird) => whyNotAlive(bird) ?? whyOlder(bird, hatched) ?? whyYounger(bird, hatched),
        told: told.young,
      });
      for (const bird of young) {
        bird.aged = { day, days };
        bird.hatched = { from: hatched, to: hatched };
        if (bird.egg === null || !isUnseen(bird.egg)) continue;
        bird.egg.laid = unseenLaying(bird.egg.clutch, hatched);
        narrowSisters(bird.egg.clutch, hatched, day);
      }
    } else {
      const eggs = chooseEggs(scene, who, {
        did: 'aged',
        among: eggsInReach(pair),
        impossible: (egg) => whyNotOpen(egg),
        told: told.eggs,
        rank: (egg) => (egg.aged === null ? 0 : 1),
      });
      for (const egg of eggs) egg.aged = { day, days };
    }
  }
};

/**
 * Eggs that nobody saw laid are of one laying with that of a chick whose age is known: none was laid longer before it or after
 * it than the clutch takes, and none hatches longer before it or after it. Of eggs beside chicks that are about to leave the
 * nest nothing is known: they may be of the next laying.
 */
function narrowSisters(clutch: Clutch, hatched: Day, day: Day): void {
  const { profile } = clutch.pair;
  const apart = layingTakes(profile);
  const latest = hatched - Math.floor(incubation(profile).low) + 1 + apart;
  const isOneLaying = day < hatched + fledging(profile).low + Math.min(0, profile?.restart?.value.low ?? 0);
  for (const egg of clutch.eggs.filter(isUnseen)) {
    const { laid, fate } = egg;
    if (fate === null && isOneLaying && laid.to > latest)
      egg.laid = { from: Math.min(laid.from, latest), to: latest };
    const sister = fate?.kind === 'hatched' ? fate.bird : null;
    if (sister === null) continue;
    const from = Math.max(sister.hatched.from, hatched - apart);
    const to = Math.min(sister.hatched.to, hatched + apart);
    if (from <= to) sister.hatched = { from, to };
  }
}

/** Whether there are nestlings, and each can have hatched on that day. */
function nestlingsCanBe(scene: Scene, day: Day): boolean {
  const young = youngInReach(scene.pair).filter(
    (one) => one.fledged === null && means(scene, hostClutch(one)),
  );
  return (
    young.length > 0 &&
    young.every((bird) => {
      const span = hatchedOn(bird);
      return span.from <= day && day <= span.to;
    })
  );
}

/** Why a chick cannot be so young: it was seen before it would have hatched. */
function whyOlder({ firstSeen }: Bird, hatched: Day): string | null {
  if (firstSeen === null || firstSeen >= hatched) return null;
  return `it was out of the shell on ${formatDay(firstSeen)} already`;
}

/** Why a chick cannot be so old: no egg hatches so soon after it was laid. */
function whyYounger({ egg }: Bird, hatched: Day): string | null {
  if (egg === null || isUnseen(egg) || canHatchBy(egg, hatched)) return null;
  const { day, what } = begun(egg);
  return `it would have hatched on ${formatDay(hatched)}, and its egg was ${what} on ${formatDay(day)}`;
}

/** Whether nobody saw the egg, nor counted it: it is as old as its chick needs it to be. */
function isUnseen({ assumed, clutch }: Egg): boolean {
  return assumed && !clutch.counted;
}
