import { fullRef } from '../../../src/room/model.ts';
import * as all from '../../../src/rules/agenda/anchors.ts';
import { days } from '../../room/facts.ts';
import type { Files } from '../../rooms.ts';
import { pair } from '../warnings/warned.ts';
import { brood, FOUR_EGGS, hillFinches, THREE_CHICKS } from './hill-finch.ts';

const { NIGHTS_OUT: _nights, hatching: _hatching, ...finders } = all;

/** What finds where a task of a brood starts from, by name. */
export const anchors = finders;

/** Where a task starts from on a day: the days, the reason, whom it is about. */
export function found(
  name: keyof typeof anchors,
  log: string | Files,
  on: string,
  where?: 'incubator' | 'hand',
): string[] {
  const files = typeof log === 'string' ? hillFinches(log) : log;
  return anchors[name](brood(files, on, where)).map(({ span, says, who }) =>
    [days(span), says, ...(who === null ? [] : [who.map(fullRef).join(' ')])].join('; '),
  );
}

/** A second pair beside HF-1, whose eggs or young may be brought there. */
export const beside = (log: string, other: string) =>
  hillFinches(log, {}, { 'HF-2': pair('HF-2', 'hill finch', other) });

/** The four eggs, on which nobody was seen to sit. */
export const unseen = FOUR_EGGS.replace(', sitting: both', '');

/** The fourth egg hatches two days after the others. */
export const fourth = `${THREE_CHICKS}date: 2026-03-17, after: 2026-03-16, hatched: e4\n`;
