import { describe, expect, it } from 'vitest';
import { calledSo, probablyMeant } from '../../../src/journal/grammar/vocabulary.ts';
import { eggCauses } from '../../../src/journal/observations/lost.ts';
import { readLog } from '../reading.ts';

// What keepers call these things: common practice, from memory.
describe('what keepers call otherwise', () => {
  it.each([
    ['infertile', 'clear'],
    ['Unfertilised', 'clear'],
    ['not_fertile', 'clear'],
    ['rotten', 'addled'],
    ['DIS', 'dead-in-shell'],
    ['cracked', 'broken'],
    ['cold', 'chilled'],
    ['abandoned', 'deserted'],
    ['tossed', 'thrown-out'],
  ])('of an egg that was lost, %s, is %s here', (said, meant) => {
    expect(readLog(`- {date: 2026-03-10, lost: {${said}: e1}}`).fixes).toEqual([
      `did you mean \`${meant}\`?`,
    ]);
  });

  it.each([
    ['infertile', 'clear'],
    ['full', 'fertile'],
  ])('under the lamp, %s, is %s here', (said, meant) => {
    expect(readLog(`- {date: 2026-03-10, candled: {${said}: e1}}`).fixes).toEqual([
      `did you mean \`${meant}\`?`,
    ]);
  });

  it.each([
    ['sold to a friend', 'did you mean `sold`?'],
    ['not sold', 'one of '],
    ['sold, given', 'one of '],
    ['to a friend', 'one of '],
  ])('stands among other words, `%s`, where one alone of ours does', (said, fix) => {
    const fixes = readLog(`- {date: 2026-03-10, gone: {"${said}": c1}}`).fixes;
    expect(fixes).toEqual([expect.stringContaining(fix)]);
    expect(fixes[0]?.startsWith(fix)).toBe(true);
  });

  it('is meant before what is spelt alike', () => {
    expect(probablyMeant('infertile', { fertile: {}, clear: { alsoSaid: ['infertile'] } })).toBe('clear');
  });

  it('may be several things, or none', () => {
    const words = { laid: { alsoSaid: ['eggs'] }, checked: { alsoSaid: ['eggs', 'look'] }, set: {} };
    expect(calledSo('Eggs', words)).toEqual(['laid', 'checked']);
    expect(calledSo('set', words)).toEqual([]);
    expect(probablyMeant('moult', words)).toBe(null);
  });

  it('of an egg is one thing only, and none that the grammar calls so', () => {
    const others = Object.values(eggCauses).flatMap(
      (cause: { alsoSaid?: readonly string[] }) => cause.alsoSaid ?? [],
    );
    expect(new Set(others).size).toBe(others.length);
    for (const word of others) expect(Object.keys(eggCauses)).not.toContain(word);
  });
});
