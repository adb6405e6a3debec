import { probablyMeant } from '../../journal/grammar/vocabulary.ts';
import type { Who } from '../../journal/grammar/who.ts';
import { eggCauses, takenCauses } from '../../journal/observations/lost.ts';
import { chooseEggs, namedFirst } from '../choose.ts';
import { fertilityOf } from '../fertility.ts';
import { ELSEWHERE, eggsInReach, endEgg, longPast, whyNotOpen } from '../lives.ts';
import { takeLookBefore } from '../look-before.ts';
import { type Egg, type Lamp, type LossCause, refIn, type TakenHow } from '../model.ts';
import { isNestGone } from '../nests-down.ts';
import { report, type Scene } from '../scene.ts';
import { uncountedEgg } from '../unseen.ts';
import { owner } from '../wanted.ts';
import { notBroughtToday, reportedOf } from '../where.ts';
import type { Apply } from './apply.ts';

type Cause = LossCause | TakenHow | null;

export const lost: Apply<'lost'> = (scene, value) => {
  const { pair, day } = scene;
  takeLookBefore(scene, value, 'eggs');
  for (const { cause, who } of namedFirst(value)) {
    const all = eggsInReach(pair, ELSEWHERE);
    // A time says that it was everyone there.
    const inReach = isTaken(cause) && scene.entry.time === null ? notBroughtToday(scene, all) : all;
    const eggs = chooseEggs(scene, who, {
      did: 'lost',
      among: who.kind === 'all' ? ofToday(scene, inReach) : inReach,
      impossible: (egg) => whyNotOpen(egg),
      past: (egg) => isNestGone(egg, day) || (longPast(egg, day) && !isLeftOver(cause, egg)),
      rank: (egg) => rankFor(cause, egg),
      kind: (egg) => `${owner(egg)} ${egg.lamp.at(-1)?.saw}`,
      cause: (said) => probablyMeant(said, eggCauses) ?? 'broken',
      another: (clutch) => uncountedEgg(clutch, day),
    });
    if (cause === 'clear') hintFertile(scene, who, eggs);
    for (const egg of eggs) {
      const { from } = reportedOf(scene, egg);
      end(egg, cause, { from: Math.max(from, egg.laid.from), to: day });
    }
  }
};

/** Without those that went with an earlier nest, where another clutch lies in the nest now. */
function ofToday({ pair, day }: Scene, all: readonly Egg[]): readonly Egg[] {
  const gone = all.filter((egg) => isNestGone(egg, day));
  const earlier = new Set(gone.map(({ clutch }) => clutch));
  const isAnew = [...pair.here.eggs].some(({ clutch }) => !earlier.has(clutch));
  return isAnew ? all.filter((egg) => !gone.includes(egg)) : all;
}

/** Said once for all that the lamp, or a cracked shell, had shown to be fertile. */
function hintFertile(scene: Scene, { at }: Who, eggs: readonly Egg[]): void {
  const fertile = eggs.filter((egg) => fertilityOf(egg) === 'fertile').map((egg) => refIn(scene, egg));
  if (fertile.length > 0) report(scene, at, 'clear-though-fertile', { who: fertile.join(', ') });
}

function end(egg: Egg, cause: Cause, span: { from: number; to: number }): void {
  if (isTaken(cause)) endEgg(egg, { kind: 'taken', cause, span, day: span.to });
  else endEgg(egg, { kind: 'lost', cause, span, day: span.to });
}

function isTaken(cause: Cause): cause is TakenHow {
  return cause !== null && Object.hasOwn(takenCauses, cause);
}

/** What is taken out at last: an egg of long ago, gone bad or cleared away, or known to be what it is now said to be. */
function isLeftOver(cause: Cause, egg: Egg): boolean {
  if (cause === 'addled' || cause === 'removed') return true;
  return cause !== null && ORDER[cause] !== undefined && rankFor(cause, egg) === 0;
}

type Seen = Lamp | undefined;

/** What the lamp will have shown of an egg that was lost so, likeliest first. */
const ORDER: Partial<Record<NonNullable<Cause>, readonly Seen[]>> = {
  clear: ['clear', 'unsure', undefined, 'dead', 'fertile'],
  undeveloped: ['clear', 'unsure', undefined, 'dead', 'fertile'],
  'dead-in-shell': ['dead', 'fertile', undefined, 'unsure', 'clear'],
  addled: ['dead', undefined, 'unsure', 'fertile', 'clear'],
};

/** Which egg a loss most likely means: the clear one was clear, the dead one had been fertile. */
function rankFor(cause: Cause, egg: Egg): number {
  const order = cause === null ? undefined : ORDER[cause];
  return order === undefined ? 0 : order.indexOf(egg.lamp.at(-1)?.saw);
}
