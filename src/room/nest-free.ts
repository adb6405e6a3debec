import type { Day } from '../days.ts';
import { type Clutch, sameSite } from './model.ts';

/**
 * The day before which no egg of this clutch can have been laid, because the pair's brood before it was still in that
 * nest, or the nest was seen being made or cleaned since; null where nothing of the kind is known.
 */
export function nestFreeSince(clutch: Clutch): Day | null {
  const { pair, opened } = clutch;
  const earlier = pair.clutches.filter((one) => one.opened < opened && sameSite(one.site, clutch.site));
  const left = earlier.flatMap(({ chicks }) =>
    chicks.flatMap(
      ({ fledged, fate }) => fledged?.span.from ?? (fate?.kind === 'died' ? fate.span.from : []),
    ),
  );
  if (left.length === 0) return null;
  const free = Math.max(...left);
  const made = pair.nestStates.flatMap(({ day, state, site }) =>
    state !== 'moved' && day <= opened && sameSite(site, clutch.site) ? [day] : [],
  );
  return Math.max(free, ...made);
}
