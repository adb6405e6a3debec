import type { Entry } from '../journal/entry.ts';
import type { Ref, Who } from '../journal/grammar/who.ts';
import { type Counted, inNest, looksToCome, takeEarly } from './look.ts';
import type { Scene } from './scene.ts';
import type { PairSighting } from './sightings.ts';

/**
 * Takes the count of a look of that hour before its turn where everyone is taken out of the nest and the look counted more
 * than were known: it can only have counted them before. So did one that found young of whom nobody knew, where some are
 * named. Not where others bring theirs on that day: it may be these.
 *
 * @param what whom they can mean
 */
export function takeLookBefore(scene: Scene, told: readonly { who: Who }[], what: 'eggs' | 'any'): void {
  const [look, ...others] = looksToCome(scene).filter(({ entry }) => isOfOneVisit(entry, scene.entry));
  if (look === undefined || others.length > 0 || isBroughtTo(scene)) return;
  const { eggs, chicks } = look.observation.value as Counted;
  const { here } = scene.pair;
  const young = inNest(scene, here.young).length;
  const moreEggs = (eggs?.count ?? 0) > inNest(scene, here.eggs).length;
  const moreYoung = what === 'any' && (chicks?.count ?? 0) > young;
  const isAll = told.some(({ who }) => who.kind === 'all') && (moreEggs || moreYoung);
  const named = told.flatMap(({ who }) => (who.kind === 'refs' ? who.refs : [])).filter(isOfChick).length;
  const areNew = what === 'any' && young === 0 && named > 0 && named <= (chicks?.count ?? 0);
  if (isAll || areNew) takeEarly(scene, look);
}

/** Whether two entries of a day tell of one look into one nest, as if they were one. */
function isOfOneVisit(one: Entry, other: Entry): boolean {
  return one.time === other.time && one.site?.text === other.site?.text;
}

const isOfChick = ({ form }: Ref) => form === 'chick';

/** Whether another pair's journal gives eggs or young to this one on that day. */
function isBroughtTo({ fold: { today }, pair }: Scene): boolean {
  today.given ??= new Set(today.seen.flatMap((one) => (one.of === 'pair' ? givenTo(one) : [])));
  return today.given.has(pair.id);
}

/** The other pairs to which a sighting gives eggs or young. */
function givenTo({ journal, observation: { key, value } }: PairSighting): string[] {
  if (key !== 'fostered' && key !== 'set') return [];
  const places: readonly { place: { text: string } | null }[] = value;
  return places.flatMap(({ place }) =>
    place === null || place.text === journal.pair.text ? [] : place.text,
  );
}
