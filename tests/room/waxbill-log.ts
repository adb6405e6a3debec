import type { Span } from '../../src/days.ts';
import { room } from '../rooms.ts';
import { birdIn, days, eggIn, pairIn, waxbills } from './facts.ts';

/** The room of one pair of lavender waxbills by its log. */
export const at = (log: string, on = '2026-07-01', head = '') => room({ P: waxbills(log, head) }, on);

/** Its clutches: `1: 3+ eggs, 3+ chicks` of one that nobody counted. */
export const clutches = (log: string, on?: string, head = '') =>
  pairIn(at(log, on, head), 'LW-1').clutches.map(
    ({ number, eggs, chicks, counted, chicksCounted }) =>
      `${number}: ${eggs.length}${counted ? '' : '+'} eggs, ${chicks.length}${chicksCounted ? '' : '+'} chicks`,
  );

/** On which days a chick hatched. */
export const hatched = (log: string, name = 'LW-1/1/c1') => days(birdIn(at(log), name).hatched as Span);

/** On which days an egg was laid. */
export const laid = (log: string, name = 'LW-1/1/e1') => days(eggIn(at(log), name).laid);
