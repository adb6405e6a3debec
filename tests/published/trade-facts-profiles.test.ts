import { describe, expect, test } from 'vitest';
import { familyOf } from '../../src/species/families.ts';
import { findSpecies } from '../../src/species/find.ts';
import { allShipped } from '../../src/species/shipped.ts';

const species = allShipped();
const family = (name: ReturnType<typeof familyOf>) =>
  species.filter(({ scientific }) => familyOf(scientific) === name);

describe('facts of the trade in the shipped profiles', () => {
  // Woodall 1975, Ostrich 46:55-86 (bronze mannikin, one egg a day); estrildids generally: common practice.
  test('perching birds lay one egg a day', () => {
    const perching = [...family('estrildids'), ...family('other')];
    expect(perching.length).toBeGreaterThan(50);
    for (const bird of perching)
      expect(bird.layingInterval?.value, bird.species).toEqual({ low: 1, high: 1 });
  });

  // IASRI e-course, Breeding lovebirds; a dove husbandry page; budgerigar and cockatiel: common practice.
  test('parrots and doves lay every other day', () => {
    const birds = [...family('parrots'), ...family('doves')];
    expect(birds.length).toBeGreaterThanOrEqual(8);
    for (const bird of birds) expect(bird.layingInterval?.value, bird.species).toEqual({ low: 2, high: 2 });
  });

  // Melba: Johnson, hawkesburyfinchclub.com; orange-cheeked: Watchbird (AFA); the others: common practice.
  test.each([
    'melba finch',
    'orange-cheeked waxbill',
    'lavender waxbill',
    'purple grenadier',
    'red avadavat',
    'green-backed twinspot',
    "Dybowski's twinspot",
  ])('the %s rears its young on live food only', (name) => {
    expect(findSpecies(name)?.liveFood?.value).toBe('required');
  });

  // Common practice.
  test.each(['zebra finch', 'Bengalese finch', 'canary', 'budgerigar', 'cockatiel', 'peach-faced lovebird'])(
    'the %s rears its young without live food',
    (name) => {
      expect(findSpecies(name)?.liveFood?.value).toBe('no');
    },
  );

  // Common practice: the pair must know the food before the chicks are there.
  test('live food is on offer two days before the first hatch is due', () => {
    const fed = species.filter(({ liveFood }) => liveFood?.value !== 'no');
    expect(fed.length).toBeGreaterThan(50);
    for (const bird of fed) expect(bird.liveFoodLead?.value, bird.species).toEqual({ low: 2, high: 2 });
  });

  // Tierwelt, Beringung von Ziervögeln: estrildids about day 7, budgerigars day 7-10; timbrado.com: canary 7-8.
  test.each([
    ['lavender waxbill', 7, 7],
    ['zebra finch', 7, 7],
    ['budgerigar', 7, 10],
    ['canary', 7, 8],
  ])('the %s is ringed within %i to %i days', (name, low, high) => {
    const age = findSpecies(name)?.ringAge?.value;
    expect(age?.low).toBeLessThanOrEqual(low);
    expect(age?.high).toBeGreaterThanOrEqual(high);
  });

  // Common practice (inside diameters of closed rings).
  test.each([
    ['lavender waxbill', 2.0, 2.3],
    ['canary', 2.7, 3.2],
    ['budgerigar', 4.0, 4.5],
    ['cockatiel', 5.0, 5.5],
    ['peach-faced lovebird', 4.2, 4.5],
  ])('the %s takes a ring of %f to %f mm', (name, low, high) => {
    expect(findSpecies(name)?.ringSize).toMatchObject({ value: { low, high }, grade: 'common practice' });
  });

  // pajaroscanarios.com: canary from egg 2 or 3; griffsbirdphotos 2012: red-cheeked cordon-bleu from egg 3;
  // mytiels.com: cockatiel from egg 2 or 3; zebrafinchforum.com: zebra finch after egg 3 or 4.
  test.each([
    ['canary', 2, 3],
    ['red-cheeked cordon-bleu', 3, 3],
    ['cockatiel', 2, 3],
    ['zebra finch', 3, 4],
  ])('the %s sits from egg %i to %i', (name, low, high) => {
    const from = findSpecies(name)?.sittingFrom?.value;
    expect(from).not.toBe('last');
    expect(from).toSatisfy((range: { low: number; high: number }) => range.low <= low && range.high >= high);
  });

  // birdwalkermonday 2017.
  test('a king quail sits after the whole clutch is laid', () => {
    expect(findSpecies('king quail')?.sittingFrom?.value).toBe('last');
  });

  // Common practice: keepers wait longer than the birds would (wild zebra finches bred at 60-70 days, Emu 1994).
  test('nothing is paired before six months but the quail', () => {
    for (const bird of species.filter(({ id }) => id !== 'king-quail')) {
      expect(bird.breedingAge?.value.low, bird.species).toBeGreaterThanOrEqual(6);
    }
  });

  // Dudley Zoo gives about 18 days for the Java sparrow and ogpbb.com 23 for the cockatiel: probably counted from
  // the first egg, so they stay outside and the profile says so.
  test.each([
    ['Java sparrow', 18],
    ['cockatiel', 23],
    ['king quail', 19],
  ])('the %s: an incubation of %i days is left out, with the reason', (name, days) => {
    const incubation = findSpecies(name)?.incubation;
    expect(incubation?.value.high).toBeLessThan(days);
    expect(incubation?.note).toMatch(new RegExp(`^${days} .* left out: probably`));
  });
});
