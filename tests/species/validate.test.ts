import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { profileFromData } from '../../src/species/profile.ts';

function problems(text: string) {
  const { problems } = profileFromData(parse(text.replaceAll(' | ', '\n'), { schema: 'failsafe' }), 'own');
  return problems.map(({ path, code }) => `${path[0]} ${code.replace('profile-', '')}`);
}

// The rows marked * stand so in open data sets (Amniote database, Myhrvold et al. 2015); the others are slips of
// the same kind: a lost decimal point, a wrong unit, a figure in the wrong place.
describe('a known wrong row is stopped', () => {
  test.each([
    [
      '* the diamond firetail’s clutch of 30.15',
      'scientific: Stagonopleura guttata | clutch: 30.15',
      'clutch absurd',
    ],
    [
      '* the crimson finch’s clutch of 35.65',
      'scientific: Neochmia phaeton | clutch: 35.65',
      'clutch absurd',
    ],
    [
      '* 222 days of sitting stand for 22.2',
      'scientific: Agapornis lilianae | incubation: 222',
      'incubation absurd',
    ],
    [
      '* a dove that fledges at 115 days',
      'scientific: Columbina talpacoti | fledging: 115',
      'fledging absurd',
    ],
    ['a dove that fledges at 45 days', 'scientific: Geopelia cuneata | fledging: 45', 'fledging absurd'],
    ['* a maturity of 363.468 days, months meant', 'breeding-age: 363.468', 'breeding-age absurd'],
    ['* the same in months', 'breeding-age: 11.94', 'breeding-age doubtful'],
    [
      '* a munia that sits 16 days',
      'scientific: Lonchura punctulata | incubation: 16',
      'incubation doubtful',
    ],
    [
      'an estrildid that sits 10 days',
      'scientific: Estrilda astrild | incubation: 10-12',
      'incubation doubtful',
    ],
    [
      'an estrildid that fledges at 28 days',
      'scientific: Estrilda astrild | fledging: 28',
      'fledging doubtful',
    ],
    ['a clutch of 30 even for a quail', 'scientific: Synoicus chinensis | clutch: 30', 'clutch absurd'],
    ['an egg every ten days', 'laying-interval: 10', 'laying-interval absurd'],
    [
      'a parrot that lays every day',
      'scientific: Agapornis canus | laying-interval: 1',
      'laying-interval doubtful',
    ],
    [
      'a dove that lays every day',
      'scientific: Geopelia cuneata | laying-interval: 1',
      'laying-interval doubtful',
    ],
    ['sitting from an egg that is never laid', 'clutch: 4-5 | sitting-from: 6', 'sitting-from absurd'],
    ['eggs that hatch after six days', 'incubation: 6-8', 'incubation absurd'],
    ['candling when the eggs have hatched', 'incubation: 11-13 | candling: 11', 'candling absurd'],
    ['candling on the first day', 'candling: 1', 'candling absurd'],
    ['a closed ring for birds on the wing', 'fledging: 17-21 | ring-age: 17-19', 'ring-age absurd'],
    ['brooded by night when fledged', 'fledging: 17-21 | brooding: 25', 'brooding absurd'],
    ['back to the nest for a season', 'roosting-back: 90', 'roosting-back absurd'],
    ['independent before it fledges', 'fledging: 17-21 | independence: 14-30', 'independence absurd'],
    [
      'independent at the latest before it fledges at the latest',
      'fledging: 17-30 | independence: 25',
      'independence absurd',
    ],
    ['fed for a year', 'independence: 365', 'independence absurd'],
    ['moulting in the nest', 'fledging: 17-21 | moult: 20-60', 'moult absurd'],
    ['breeding before it feeds itself', 'independence: 30-40 | breeding-age: 1', 'breeding-age absurd'],
    ['breeding age in days', 'breeding-age: 270', 'breeding-age absurd'],
    ['twelve clutches a year', 'clutches-per-year: 12', 'clutches-per-year absurd'],
    [
      'a finch that fledges on the day it hatches',
      'scientific: Estrilda astrild | fledging: 0',
      'fledging absurd',
    ],
    [
      'the same of a bird without a scientific name',
      'species: hill finch | fledging: 0-1',
      'fledging doubtful',
    ],
    ['live food a month ahead', 'live-food-lead: 30', 'live-food-lead absurd'],
    ['driving four months later', 'restart: 120', 'restart absurd'],
    ['a ring of 23 mm, 2.3 meant', 'ring-size: 23', 'ring-size absurd'],
    ['a bird of 8.5 kg', 'adult-mass: 8500', 'adult-mass absurd'],
    ['a chick heavier than its parents', 'adult-mass: 8.5 | hatch-mass: 9', 'hatch-mass absurd'],
  ])('%s', (_, text, expected) => {
    expect(problems(text)).toEqual([expected]);
  });
});

describe('an unusual row that can be true stays', () => {
  test.each([
    [
      'a munia at 16 days with a second source',
      'scientific: Lonchura striata | incubation: {range: 13-16, source: a book; a club}',
    ],
    ['a quail hen on thirteen eggs', 'scientific: Synoicus chinensis | clutch: 5-13'],
    [
      'young that run on the first day',
      'scientific: Synoicus chinensis | fledging: 0-1 | brooding: 18-28 | roosting-back: 0',
    ],
    [
      'a big parrot in the nest for 84 days',
      'scientific: Psittacus erithacus | fledging: 84 | adult-mass: 450',
    ],
    ['a redpoll at 10 days', 'scientific: Acanthis flammea | incubation: 10-13'],
    ['a hen that lays again before her young have left', 'restart: -5'],
  ])('%s', (_, text) => {
    expect(problems(text)).toEqual([]);
  });

  test('doubtful values are kept, absurd ones are not', () => {
    const { profile } = profileFromData(
      { scientific: 'Lonchura maja', incubation: '16', fledging: '210' },
      'own',
    );
    expect(profile.incubation?.value).toEqual({ low: 16, high: 16 });
    expect(profile.fledging).toBeNull();
  });

  test('the reason is said', () => {
    const [problem] = profileFromData({ incubation: '222' }, 'own').problems;
    expect(problem?.args).toMatchObject({ key: 'incubation', text: '222', unit: 'days' });
    expect(problem?.args.reason).toContain('decimal point');
  });
});
