import type { Place } from '../../findings/finding.ts';
import type { ObservationKey, ObservationValue } from '../../journal/observations/index.ts';
import type { Scene } from '../scene.ts';

/** What one kind of observation does to the room. */
export type Apply<K extends ObservationKey> = (scene: Scene, value: ObservationValue<K>, at: Place) => void;
