import { describe, expect, it } from 'vitest';
import { kindOf } from '../../src/findings/codes.ts';
import { readFile } from '../../src/journal/record.ts';

function profile(text: string, path = 'species/blue-finch.yaml') {
  const { says, findings } = readFile(path, text);
  return {
    profile: says.profile,
    found: findings.map(({ code, at }) => `${at.line}:${at.column} ${code}`),
    fixes: findings.map((finding) => kindOf(finding).hint(finding.args)),
  };
}

describe('a keeper’s own species file', () => {
  it('is a profile, named after its file where it has no name', () => {
    const { profile: read, found } = profile('incubation: 12-14\nlive-food: required\n');
    expect(found).toEqual([]);
    expect(read).toMatchObject({
      id: 'blue-finch',
      species: 'blue finch',
      incubation: { value: { low: 12, high: 14 } },
    });
  });

  it.each([
    ['incubaton: 12-14', '1:1 profile-unknown-key'],
    ['clutch:\n  range: 4-5\n  sauce: book', '3:3 profile-unknown-key'],
    ['incubation: 14-12', '1:13 profile-reversed'],
    ['incubation: soon', '1:13 profile-not-a-number'],
    ['live-food: often', '1:12 profile-unknown-word'],
    ['incubation: 120', '1:13 profile-absurd'],
    ['incubation: {range: x}', '1:21 profile-not-a-number'],
    ['species: [a]', '1:10 profile-not-a-name'],
    ['__proto__: {x: 1}', '1:1 profile-unknown-key'],
    ['incubation: [', '1:13 unreadable-lines'],
    ['incubation: 13\nscientific: *a', '2:13 yaml-feature'],
    ['incubation: 13\nalso: *a', '2:7 yaml-feature'],
    ['incubation: 13\nalso: [*a, sky finch]', '2:8 yaml-feature'],
    ['incubation: 13\nfledging: {range: *a}', '2:19 yaml-feature'],
    ['', '1:1 empty-file'],
  ])('%s has its finding at its place', (text, finding) => {
    expect(profile(text).found).toEqual([finding]);
  });

  it('is named after its file whatever the folder and the letters of its ending', () => {
    expect(profile('incubation: 12-14', 'species/Blue-Finch.YML').profile?.id).toBe('Blue-Finch');
    expect(profile('incubation: 12-14', 'species/a.yaml.yaml').profile?.id).toBe('a.yaml');
  });

  it('keeps names in other languages, and what is empty says nothing', () => {
    const { profile: read, found } = profile(
      'species: blue finch\nincubation: 13\nalso: [azure finch, sky finch]\nclutch:\n',
    );
    expect(read?.also).toEqual(['azure finch', 'sky finch']);
    expect(found).toEqual([]);
    expect(profile('just words').found).toEqual(['1:1 not-a-mapping']);
  });

  it('suggests the key that was meant, and none where none is near', () => {
    expect(profile('incubaton: 12-14').fixes).toEqual(['did you mean `incubation`?']);
    expect(profile('incubation: {rnage: 12-14, sorce: book}').fixes).toEqual([
      'did you mean `range`?',
      'did you mean `source`?',
    ]);
    expect(profile('specis: x').fixes).toEqual(['did you mean `species`?']);
    expect(profile('colour: grey').fixes).not.toContain('did you mean `clutch`?');
    expect(profile('colour: grey').fixes.join()).not.toMatch(/did you mean/);
  });

  it('is read with capitals, and with other words that can mean one thing only', () => {
    const { profile: read, found } = profile(
      'Species: star finch\nIncubation period: {Range: 12-13, source: own room}\nring size: 2.5\nWeight: 13\n',
    );
    expect(found.toSorted()).toEqual([
      '1:1 read-as',
      '2:1 read-as',
      '2:21 read-as',
      '3:1 read-as',
      '4:1 read-as',
    ]);
    expect(read).toMatchObject({
      species: 'star finch',
      incubation: { value: { low: 12, high: 13 } },
      ringSize: { value: { low: 2.5 } },
      adultMass: { value: { low: 13 } },
    });
  });

  it('is of one species: what stands there twice counts once, as in every file', () => {
    const { profile: read, found } = profile(
      'species: star finch\nincubation: 12-14\nspecies: zebra finch\nincubation: 11\n',
    );
    expect(found).toEqual(['3:1 duplicate-key', '4:1 duplicate-key']);
    expect(readFile('species/star-finch.yaml', 'clutch: 4\nclutch: 5\n').findings[0]?.args.key).toBe(
      'clutch',
    );
    expect([read?.species, read?.incubation?.value]).toEqual(['star finch', { low: 12, high: 14 }]);
  });

  it('tells that it corrects no shipped profile where its name is nearly one', () => {
    expect(profile('species: Lavendar Waxbill\nincubation: 12-13\n')).toMatchObject({
      found: ['1:10 profile-alike'],
      fixes: [expect.stringContaining('`species: lavender waxbill`')],
    });
    expect(
      profile('species: Lavendar Waxbill\nscientific: Estrilda nova\nincubation: 12-13\n').found,
    ).toEqual([]);
    expect(profile('species: blue wonder finch\nincubation: 12-13\n').found).toEqual([]);
  });

  it('has each other name by itself', () => {
    const one = profile('incubation: 13\nalso: azure finch\n');
    expect([one.found, one.profile?.also]).toEqual([[], ['azure finch']]);
    expect(profile('incubation: 13\nalso: azure finch, sky finch\n').fixes).toEqual([
      'write `also: [azure finch, sky finch]`',
    ]);
  });

  it.each([
    ['incubation: 12 to 14 days', 'write `incubation: 12-14`'],
    ['incubation: 2 weeks', 'write `incubation: 14`'],
    ['incubation: [12, 14]', 'write `incubation: 12-14`'],
    ['breeding-age: 1 year', 'write `breeding-age: 12`'],
    ['ring-size: 2,0-2,3 mm', 'write `ring-size: 2.0-2.3`'],
    ['adult-mass: 8.5g', 'write `adult-mass: 8.5`'],
    ['sitting-from: last egg', 'write `sitting-from: last`'],
    ['ring-size: small', 'such as `ring-size: 2.0-2.3`'],
    ['live-food: Required', 'did you mean `required`?'],
    ['nest-looks: never!', 'did you mean `never`?'],
    ['live-food: helpful.', 'did you mean `helpful`?'],
    ['live-food: no!', 'did you mean `no`?'],
  ])('%s: %s', (line, fix) => {
    const wrong = profile(line);
    expect(wrong.fixes).toEqual([fix]);
    const meant = /`(?:[\w-]+: )?(.*)`/.exec(fix)?.[1] ?? '';
    expect(profile(line.replace(/: .*/, `: ${meant}`)).found.filter((code) => !/missing/.test(code))).toEqual(
      [],
    );
  });

  it('counts but for what is wrong', () => {
    expect(profile('incubation: [\nfledging: 18-20\n').profile?.fledging?.value).toEqual({
      low: 18,
      high: 20,
    });
  });
});

describe('a species file', () => {
  const told = (path: string, text: string) =>
    readFile(path, text).findings.map((finding) => {
      const { text: said, hint } = kindOf(finding);
      return `${finding.code}: ${said(finding.args)}; ${hint(finding.args)}`;
    });

  it('without the name of a species is told that it corrects none', () => {
    expect(told('species/lw.yaml', 'incubation: 12-14\n')).toEqual([
      'profile-alike: no shipped profile is called `lw`, so this file corrects none; begin it with the name, such as `species: lavender waxbill`',
    ]);
    expect(told('species/lavender-waxbill.yaml', 'incubation: 12-14\n')).toEqual([]);
  });

  it('of several species is told to be one for each', () => {
    expect(told('species/all.yaml', 'lavender waxbill:\n  incubation: 12-14\n')[0]).toContain(
      'each species has a file of its own: put it into species/lavender-waxbill.yaml, which begins with `species: lavender waxbill`',
    );
    expect(told('species/all.yaml', "Jameson's firefinch:\n  incubation: 12-14\n")[0]).toContain(
      'put it into species/jamesons-firefinch.yaml,',
    );
    const behind = told('species/all.yaml', 'incubation: 12-14\nlavender waxbill:\n  fledging: 20\n');
    expect(behind.join()).toContain('put it into species/lavender-waxbill.yaml,');
    for (const text of [
      'colour: {eye: red}\n',
      'lavender waxbill: 12-14\n',
      'clutch: {lavender waxbill: 4}\n',
    ])
      expect(told('species/all.yaml', text).join(), text).not.toContain('a file of its own');
    expect(told('species/all.yaml', '- species: lavender waxbill\n  incubation: 12-14\n')[0]).toContain(
      'each species has a file of its own',
    );
  });
});
