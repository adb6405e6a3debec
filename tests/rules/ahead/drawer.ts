import { expect } from 'vitest';
import { type RingSize, type Rings, ringsAhead } from '../../../src/rules/ahead/rings.ts';
import { type Files, room } from '../../rooms.ts';
import { DRAWS, futures, layingPair } from './futures.ts';

/** The look of the day before tells that nobody hatched earlier. */
export const NESTLINGS = ['{date: 2026-03-14, checked: {eggs: 4}}', '{date: 2026-03-15, hatched: 4}'];

/** What a room will need of rings, as it stands on a day. */
export function rings(files: Files, on: string, settings = ''): Rings {
  const stood = room({ 'nestlog.yaml': `room: x\n${settings}`, ...files }, on);
  return ringsAhead(stood, futures(stood), DRAWS);
}

/** Four chicks of zebra finches, hatched on 15 March: rings of 2.5–2.8 mm, at an age of 7–10 days (shipped profile). */
export const four: Files = { A: layingPair('A', 4, NESTLINGS) };
/** The one size that is needed. */
export const only = ({ sizes }: Rings): RingSize => {
  expect(sizes).toHaveLength(1);
  return sizes[0] as RingSize;
};
