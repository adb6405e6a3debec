import { commonAncestors } from '../../statistics/pedigree/common-ancestors.ts';
import { isCloser } from '../../statistics/pedigree/relationship.ts';
import type { Contribution } from './groups.ts';
import type { Ancestor, Lineage } from './lineage.ts';

/** How close two are, with the kinship that no closer relatives of the kind fall below. */
const closeness: [kinship: number, as: string][] = [
  [1 / 4, 'brother and sister'],
  [1 / 8, 'half brother and sister'],
  [1 / 16, 'first cousins'],
  [1 / 64, 'second cousins'],
];

/**
 * What a cock and a hen are to each other: `uncle and niece`. Where they are related in no way that has a name of its
 * own, what they are as close as; null where they have no ancestor in common.
 */
export function kinOf(cock: Ancestor, hen: Ancestor, kinship: number): string | null {
  if (!isCloser(kinship, 0)) return null;
  return named(cock, hen) ?? asClose(kinship);
}

/** The ancestors that make two related, with each one’s part of the F of their young; the greatest first. */
export function ancestorsInCommon(
  { autosomes, ancestors }: Pick<Lineage, 'autosomes' | 'ancestors'>,
  one: Ancestor,
  other: Ancestor,
): Contribution[] {
  return commonAncestors(autosomes, one.number, other.number).map(({ ancestor, share }) => ({
    founder: ancestors[ancestor]?.id as string,
    share,
  }));
}

/** `as close as first cousins`, for young that are inbred to this F; the next more distant where it lies between. */
export function asClose(kinship: number): string {
  const known = closeness.find(([least]) => !isCloser(least, kinship));
  return known === undefined ? 'more distant than second cousins' : `as close as ${known[1]}`;
}

function named(cock: Ancestor, hen: Ancestor): string | null {
  if (hen.sire === cock) return 'sire and daughter';
  if (cock.dam === hen) return 'dam and son';
  const shared = sharedParents(cock, hen);
  if (shared > 0) return shared === 2 ? 'brother and sister' : 'half brother and sister';
  if (parentsOf(hen).some((parent) => parentsOf(parent).includes(cock))) return 'grandsire and granddaughter';
  if (parentsOf(cock).some((parent) => parentsOf(parent).includes(hen))) return 'granddam and grandson';
  const uncle = Math.max(...parentsOf(hen).map((parent) => sharedParents(parent, cock)), 0);
  if (uncle > 0) return uncle === 2 ? 'uncle and niece' : 'half uncle and niece';
  const aunt = Math.max(...parentsOf(cock).map((parent) => sharedParents(parent, hen)), 0);
  if (aunt > 0) return aunt === 2 ? 'aunt and nephew' : 'half aunt and nephew';
  const cousins = parentsOf(cock).flatMap((one) => parentsOf(hen).map((other) => sharedParents(one, other)));
  if (cousins.filter((number) => number === 2).length > 1) return 'double first cousins';
  return cousins.includes(2) ? 'first cousins' : null;
}

function parentsOf({ sire, dam }: Ancestor): Ancestor[] {
  return [sire, dam].filter((parent) => parent !== null);
}

function sharedParents(one: Ancestor, other: Ancestor): number {
  if (one === other) return 0;
  return (
    Number(one.sire !== null && one.sire === other.sire) + Number(one.dam !== null && one.dam === other.dam)
  );
}
