import type { Block } from '../../../rules/season/block.ts';
import { count, stated } from '../../../words.ts';
import { aside, type Page } from '../page.ts';
import { pad } from '../width.ts';
import { bar } from './plots.ts';

const TITLE = 13;
const NUMBER = 5;

/** From eggs laid to independent young, as bars, and below it those that are in no bar. */
export function funnelLines({ eggs, chicks }: Pick<Block, 'eggs' | 'chicks'>, page: Page): string[] {
  const steps: [string, number][] = [
    ['laid', eggs.laid],
    ['fertile', eggs.fertile],
    ['hatched', eggs.hatched],
    ['fledged', chicks.fledged],
    ['independent', chicks.independent],
  ];
  const room = Math.min(60, page.width - 2 - TITLE - NUMBER);
  const most = Math.max(1, ...steps.map(([, n]) => n));
  const bars = steps.map(([title, n]) =>
    `  ${pad(title, TITLE)}${pad(String(n), NUMBER)}${bar(n / most, room)}`.trimEnd(),
  );
  const beside = besideWords({ eggs, chicks });
  return beside === null ? bars : [...bars, ...aside(beside, page)];
}

/** Those that are in no bar. */
export function besideWords({ eggs, chicks }: Pick<Block, 'eggs' | 'chicks'>): string | null {
  const parts = [
    eggs.open > 0 ? `${count(eggs.open, 'egg')} without an end yet` : null,
    eggs.unknown > 0 ? `${count(eggs.unknown, 'egg')} of unknown fertility` : null,
    eggs.taken > 0 ? `${count(eggs.taken, 'egg')} taken by our hand` : null,
    chicks.open > 0 ? `${count(chicks.open, 'young bird')} not known to be independent` : null,
    chicks.gone > 0 ? `${count(chicks.gone, 'young bird')} gone before that` : null,
  ];
  const beside = stated(parts, ', ');
  return beside === '' ? null : `Beside these: ${beside}.`;
}
