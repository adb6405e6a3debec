import type { Day } from '../days.ts';
import type { Bird } from '../room/model.ts';
import { byDay } from './by-day.ts';

/** Signs in a keeper's own words that mean danger within hours. */
export type Sign = 'straining' | 'down' | 'labouring' | 'airways' | 'injured';

const SIGNS: Record<Sign, string> = {
  straining: "strain\\w*|egg[- ]?bound|can(?:not|no|’t|'t) (?:lay|pass)|prolaps\\w*|swollen vent",
  down: "on the (?:floor|ground|bottom)|fluffed|puffed|hunched|collapsed|limp\\w*|lying|lame\\w*|can(?:not|’t|'t) (?:fly|perch|stand|get up)|penguin\\w*|convuls\\w*|seizures?",
  labouring: 'breath\\w*|gasp\\w*|tail[- ]?bob\\w*|bobbing|panting|open[- ](?:mouth|beak|bill)ed',
  airways: 'wheez\\w*|sneez\\w*|clicking|discharge|runny',
  injured: 'bleed\\w*|blood\\w*|broken|wounds?|scalped|torn',
};

/** Whether a bird breathes badly: what ails it may be caught by people. */
export function breathesBadly(signs: readonly Sign[]): boolean {
  return signs.includes('labouring') || signs.includes('airways');
}

/** What is said not to be so any more. A bird that is not breathing well is one that breathes badly. */
const DENIED = new RegExp(
  `\\b(?:no longer|not|never|without|stopped|no)\\s+(?:${[SIGNS.straining, SIGNS.down, SIGNS.injured].join('|')})`,
  'gi',
);

const WELL =
  /\b(?:well|fit|fine|healthy|itself|herself|himself|normal|right) again\b|\brecovered\b|\bback to normal\b|^\s*(?:(?:quite |fully |all )?(?:well|fine|right|healthy)|no|none|nothing|no (?:more|longer))\s*$/i;
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

/** A time in which a bird was unwell. */
export interface Illness {
  bird: Bird;
  /** The first day on which it was seen. */
  since: Day;
  /** What was seen, oldest first. */
  seen: { day: Day; text: string; signs: Sign[] }[];
  /** The last day on which something was written of it. */
  last: Day;
  /** The first day on which the bird was well again, or is reckoned well. */
  over: Day;
  /** The first treatment for it. */
  treated: Day | null;
}

/** An unwell bird is reckoned well again when nothing was written of it for so many days. */
export const UNWELL_FOR = 14;

/**
 * Each time in which a bird was unwell, oldest first. `well again` ends one; where one look of a day says so and another
 * still calls the bird ill, it is ill. Whoever is treated is not well yet.
 */
export function illnessesOf(bird: Bird): Illness[] {
  const illnesses: Illness[] = [];
  const told = [
    ...bird.unwell.map((look) => ({ ...look, isLook: true })),
    ...bird.treated.map((treatment) => ({ ...treatment, isLook: false })),
  ];
  for (const { day, all } of byDay(told)) {
    const looks = all.filter(({ isLook }) => isLook);
    const ill = looks.filter(({ text }) => !saysWell(text));
    const known = illnesses.findLast(({ over }) => day < over);
    if (known === undefined && ill.length === 0) continue;
    const illness = known ?? { bird, since: day, seen: [], last: day, over: day, treated: null };
    if (known === undefined) illnesses.push(illness);
    if (looks.length > 0 && ill.length === 0) {
      illness.over = day;
      continue;
    }
    illness.seen.push(...ill.map(({ text }) => ({ day, text, signs: signsIn(text) })));
    illness.last = illness.seen.at(-1)?.day ?? day;
    illness.over = day + UNWELL_FOR + 1;
    if (looks.length < all.length) illness.treated ??= day;
  }
  return illnesses;
}

/** The illness that a living bird is in on a day, or null. */
export function illnessOf(bird: Bird, on: Day): Illness | null {
  if (bird.fate !== null || bird.unwell.length === 0) return null;
  return illnessesOf(bird).find(({ since, over }) => since <= on && on < over) ?? null;
}
