import type { Ahead, Basis, StepShare } from '../../../rules/ahead/ahead.ts';
import { count, speciesName } from '../../../words.ts';
import { columns } from '../columns.ts';
import { aside } from '../page.ts';
import type { DatedPage } from './page.ts';

/** The shares that were reckoned with, and of how many of the room's own clutches they know. */
export function basisLines(
  { basis, draws, guess }: Pick<Ahead, 'basis' | 'draws' | 'guess'>,
  page: DatedPage,
): string[] {
  const rows = basis.map((one) => [
    speciesName(one.species),
    ...steps.map((step) => shareText(one[step])),
    String(Math.max(...steps.map((step) => one[step].own.clutches))),
  ]);
  const [head = '', ...lines] = columns(
    [['', 'fertile', 'hatched', 'fledged', 'independent', 'own'], ...rows],
    { width: page.width, indent: 2, right: [5], cut: 0 },
  );
  return [
    page.look.heading('What this rests on, in per cent'),
    page.look.muted(head),
    ...lines,
    ...aside(
      `Own: clutches of the species in this room; where they are few the other species of the room lend some weight, and behind them a guess that is worth ${count(guess, 'egg')}. Clutch mates share their luck. ${draws} futures, the same ones for the same record.`,
      page,
    ),
  ];
}

const steps = ['fertility', 'hatchOfFertile', 'fledge', 'independence'] as const satisfies (keyof Basis)[];

function shareText({ mean, low, high }: StepShare): string {
  const hundred = (share: number) => Math.round(share * 100);
  return `${hundred(mean)} (${hundred(low)}–${hundred(high)})`;
}
