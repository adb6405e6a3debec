import type { Span } from '../../days.ts';
import { chooseBirds, hostClutch, owner } from '../choose.ts';
import { likeliestToHatch } from '../fertility.ts';
import { likeLast } from '../lists.ts';
import { canHatchBy, fledging, hatch, openClutch, whyNotAlive, youngInReach } from '../lives.ts';
import type { Bird, Clutch, Seen } from '../model.ts';
import { clutchesThere, means, type Scene } from '../scene.ts';
import { uncountedEgg } from '../unseen.ts';
import type { Apply } from './apply.ts';

/** Brood mates that left the nest together. */
const alikeSpan = likeLast<Span>();
const alike = likeLast<Seen>();

export const fledged: Apply<'fledged'> = (scene, who) => {
  const { pair, day } = scene;
  const inNest = youngInReach(pair).filter((young) => young.fledged === null);
  if (
    !inNest.some((young) => means(scene, hostClutch(young))) &&
    scene.pinned === null &&
    who.kind === 'count' &&
    clutchesThere(scene).every(isOver)
  ) {
    openClutch(scene, { counted: false });
  }
  const birds = chooseBirds(scene, who, {
    did: 'fledged',
    among: inNest,
    impossible: (bird) =>
      whyNotAlive(bird) ?? (bird.fledged === null ? null : 'it has left the nest already'),
    rank: (bird) => bird.hatched?.to ?? 0,
    kind: owner,
    another: (clutch) => unseenNestling(scene, clutch),
  });
  for (const bird of birds) {
    // Out of the nest is seen without a look into it: on the day, unless the keeper says since when.
    const from = scene.entry.after === null ? day : Math.max(scene.since.from, bird.hatched?.from ?? day);
    bird.fledged = alike({ span: alikeSpan({ from, to: day }), day });
    bird.placeholder = false;
  }
};

function isOver(clutch: Clutch): boolean {
  return clutch.counted && clutch.chicksCounted;
}

/** A fledgling of a nest that was never looked into: it hatched a fledging age ago, of no more eggs than were counted. */
function unseenNestling(scene: Scene, clutch: Clutch): Bird | null {
  const { low, high } = fledging(scene.pair.profile);
  const latest = scene.day - low;
  const open = clutch.eggs
    .filter((one) => one.fate === null && canHatchBy(one, latest))
    .sort(likeliestToHatch(latest));
  const egg = open[0] ?? uncountedEgg(clutch, latest);
  if (egg === null) return null;
  return hatch(scene.fold, egg, { from: scene.day - high, to: latest }, scene.day);
}
