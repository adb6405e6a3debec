import type { Ref, Who } from '../journal/grammar/who.ts';
import type { ObservationKey } from '../journal/observations/index.ts';
import { type Counted, inNest, takeLook } from './look.ts';
import { type Scene, toldToday } from './scene.ts';

/**
 * Takes the count of the same entry before its turn where everyone is taken out of the nest and the look counted more than
 * were known: it can only have counted them before. So did one that found young of whom nobody knew, where some are named. Not
 * where others bring theirs on that day: it may be these.
 *
 * @param what whom they can mean
 */
export function takeLookBefore(scene: Scene, told: readonly { who: Who }[], what: 'eggs' | 'any'): void {
  const { entry, fold, pair } = scene;
  const look = entry.saw.find(({ key }) => key === 'checked');
  if (look === undefined || fold.today.looked.has(entry) || isBroughtTo(scene)) return;
  const { eggs, chicks } = look.value as Counted;
  const young = inNest(scene, pair.here.young).length;
  const moreEggs = (eggs?.count ?? 0) > inNest(scene, pair.here.eggs).length;
  const moreYoung = what === 'any' && (chicks?.count ?? 0) > young;
  const isAll = told.some(({ who }) => who.kind === 'all') && (moreEggs || moreYoung);
  const named = told.flatMap(({ who }) => (who.kind === 'refs' ? who.refs : [])).filter(isOfChick).length;
  const areNew = what === 'any' && young === 0 && named > 0 && named <= (chicks?.count ?? 0);
  if (!isAll && !areNew) return;
  takeLook(scene, look.value as Counted);
  fold.today.looked.add(entry);
}

const isOfChick = ({ form }: Ref) => form === 'chick';

/** Whether another pair's journal gives eggs or young to this one on that day. */
function isBroughtTo({ fold, pair }: Scene): boolean {
  return [...fold.pairs.values()].some(
    (other) =>
      other !== pair &&
      BRINGS.some((key) =>
        toldToday(fold, other, key).some(({ observation }) =>
          (observation.value as { place: { text: string } | null }[]).some(
            ({ place }) => place?.text === pair.id,
          ),
        ),
      ),
  );
}

/** What brings eggs or young to another nest. */
const BRINGS: readonly ObservationKey[] = ['fostered', 'set'];
