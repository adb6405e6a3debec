import type { Day } from '../days.ts';
import type { Bird } from '../room/model.ts';
import { byDay } from './by-day.ts';

/** Signs in a keeper's own words that mean danger within hours. */
export type Sign = 'straining' | 'down' | 'breathing' | 'injured';

const SIGNS: Record<Sign, string> = {
  straining: "strain\\w*|egg[- ]?bound|can(?:not|no|’t|'t) (?:lay|pass)|prolaps\\w*|swollen vent",
  down: "on the (?:floor|ground|bottom)|fluffed|puffed|hunched|collapsed|limp|lying|can(?:not|’t|'t) (?:fly|perch|stand|get up)|penguin\\w*|convuls\\w*|seizures?",
  breathing:
    'breath\\w*|gasp\\w*|wheez\\w*|tail[- ]?bob\\w*|bobbing|panting|sneez\\w*|open[- ](?:mouth|beak|bill)ed|clicking|discharge|runny',
  injured: 'bleed\\w*|blood\\w*|broken|wounds?|scalped|torn',
};

/** What is said not to be so any more. A bird that is not breathing well is one that breathes badly. */
const DENIED = new RegExp(
  `\\b(?:no longer|not|never|without|stopped|no)\\s+(?:${[SIGNS.straining, SIGNS.down, SIGNS.injured].join('|')})`,
  'gi',
);

const WELL =
  /\b(?:well|fit|fine|healthy|itself|herself|himself|normal|right) again\b|\brecovered\b|\bback to normal\b|^\s*(?:quite |fully |all )?(?:well|fine|right|healthy)\s*$/i;
const NOT = /\b(?:not|isn[’']t|hardly|never|no)\b/i;
const AS_USUAL = /\b(?:again|recovered|normal|well|fine)\b/i;

/** The signs that a text tells of. */
export function signsIn(text: string): Sign[] {
  const said = text.replace(DENIED, '');
  return (Object.keys(SIGNS) as Sign[]).filter((sign) => new RegExp(`\\b(?:${SIGNS[sign]})`, 'i').test(said));
}

/** Where the first match of a text ends; behind the text where there is none. */
function endOf(expression: RegExp, text: string): number {
  const match = expression.exec(text);
  return match === null ? text.length : match.index + match[0].length;
}

/** Whether a text says that the bird is well again. */
function saysWell(text: string): boolean {
  const denied = text.split(/[,;.]/).some((clause) => AS_USUAL.test(clause.slice(endOf(NOT, clause))));
  return WELL.test(text) && !denied && signsIn(text).length === 0;
}

/** What was written of a bird since it was last well. */
export interface Illness {
  bird: Bird;
  since: Day;
  /** Oldest first. */
  seen: { day: Day; text: string; signs: Sign[] }[];
  last: Day;
  /** The first treatment since it fell ill. */
  treated: Day | null;
}

/**
 * The illness a living bird is in, or null. `well again` ends it; where one look of a day says so and another still
 * calls it ill, it is ill.
 */
export function illnessOf(bird: Bird): Illness | null {
  if (bird.fate !== null || bird.unwell.length === 0) return null;
  const days = byDay(bird.unwell);
  const well =
    days.findLast(({ all }) => all.every(({ text }) => saysWell(text)))?.day ?? Number.NEGATIVE_INFINITY;
  const seen = bird.unwell
    .filter(({ day, text }) => day > well && !saysWell(text))
    .map(({ day, text }) => ({ day, text, signs: signsIn(text) }));
  const [first, last] = [seen[0], seen.at(-1)];
  if (first === undefined || last === undefined) return null;
  const treated = bird.treated.find(({ day }) => day >= first.day)?.day ?? null;
  return { bird, since: first.day, seen, last: last.day, treated };
}

/** An unwell bird is reckoned well again when nothing was written of it for so many days. */
const UNWELL_FOR = 14;

/** A time in which a bird was unwell: from the first day on which that was seen to the day on which it was over. */
export interface Spell {
  bird: Bird;
  since: Day;
  /** The first day on which it was well again, or is reckoned well. */
  over: Day;
}

/** Each time in which a bird was unwell, oldest first. */
export function spellsOf(bird: Bird): Spell[] {
  const spells: Spell[] = [];
  let open: Spell | null = null;
  for (const { day, all } of byDay(bird.unwell)) {
    if (all.every(({ text }) => saysWell(text))) {
      if (open !== null) open.over = day;
      open = null;
      continue;
    }
    if (open === null) {
      open = { bird, since: day, over: day };
      spells.push(open);
    }
    open.over = day + UNWELL_FOR + 1;
  }
  return spells;
}

/** The illness that still keeps a bird from company and from breeding on a day, or null. */
export function illOn(bird: Bird, day: Day): Illness | null {
  const illness = illnessOf(bird);
  return illness !== null && day - illness.last <= UNWELL_FOR ? illness : null;
}
