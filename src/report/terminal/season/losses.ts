import type { Block } from '../../../rules/season/block.ts';
import { indented, type Page } from '../page.ts';
import { visible } from '../visible.ts';
import { pad, truncate } from '../width.ts';
import { bar } from './plots.ts';

const WHO = 8;
const CAUSE = 20;
const NUMBER = 4;

/** What eggs and young were lost to, the commonest first. */
export function lossLines({ eggs, chicks }: Pick<Block, 'eggs' | 'chicks'>, page: Page): string[] {
  const numbers = [...Object.values(eggs.lost), ...Object.values(chicks.died)];
  if (numbers.length === 0) return indented('Nothing was lost.', page);
  const most = Math.max(...numbers);
  return [...causeLines('eggs', eggs.lost, most, page), ...causeLines('young', chicks.died, most, page)];
}

function causeLines(who: string, causes: Record<string, number>, most: number, { width }: Page): string[] {
  const room = Math.min(40, width - 2 - WHO - CAUSE - NUMBER);
  return Object.entries(causes).map(([cause, n], i) => {
    const name = cause === 'unknown' ? 'cause not known' : cause;
    const head = `  ${pad(i === 0 ? who : '', WHO)}${pad(truncate(visible(name), CAUSE - 1), CAUSE)}`;
    return `${head}${pad(String(n), NUMBER)}${bar(n / most, room)}`;
  });
}
