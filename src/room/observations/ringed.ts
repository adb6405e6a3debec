import { only } from '../../journal/grammar/who.ts';
import { chooseBirds } from '../choose.ts';
import { whyNotAlive, youngInReach } from '../lives.ts';
import { isTooOldForRing } from '../rings-late.ts';
import { report } from '../scene.ts';
import type { Apply } from './apply.ts';

export const ringed: Apply<'ringed'> = (scene, value) => {
  for (const { chick, code } of value) {
    const who = only(chick);
    const birds = chooseBirds(scene, who, {
      did: 'ringed',
      inHand: true,
      among: youngInReach(scene.pair),
      impossible: (bird) =>
        whyNotAlive(bird) ?? (bird.ringed === null ? null : `it wears ${bird.ring} already`),
    });
    for (const bird of birds) {
      const wearer = scene.fold.byRing.get(code.text);
      if (wearer !== undefined && wearer !== bird) {
        report(scene, code.at, 'ring-twice', { ring: code.text, bird: wearer.id });
        continue;
      }
      bird.ring = code.text;
      bird.ringed = scene.day;
      if (isTooOldForRing(bird, scene.day)) scene.fold.ringsLate.push({ bird, day: scene.day, at: code.at });
      scene.fold.byRing.set(code.text, bird);
    }
  }
};
