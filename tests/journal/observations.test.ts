import { describe, expect, it } from 'vitest';
import { observations } from '../../src/journal/observations/index.ts';
import { plain, readLog } from './reading.ts';

/** The value that one observation of an entry is read as, or the code of its finding. */
function value(said: string): string {
  const { entries, findings } = readLog(`- {date: 2026-03-01, ${said}}`);
  if (findings.length > 0) return findings.map(({ code }) => code).join();
  return plain(entries[0]?.saw[0]?.value);
}

const count = (number: number, exact = 'exactly') => ({ kind: 'count', count: number, exact });
const egg = (number: number) => ({ text: `e${number}`, form: 'egg', pair: null, clutch: null, number });
const chick = (number: number) => ({ text: `c${number}`, form: 'chick', pair: null, clutch: null, number });

describe('every observation', () => {
  it.each(Object.entries(observations))('%s reads its own example', (key, { example }) => {
    const { entries, found } = readLog(`- {date: 2026-03-01, ${example}}`);
    expect(found).toEqual([]);
    expect(entries[0]?.saw.map((observation) => observation.key)).toEqual([key]);
  });

  it.each(Object.entries(observations))('%s stands at its key', (key, { example }) => {
    const { entries } = readLog(`- {date: 2026-03-01, ${example}}`);
    expect(entries[0]?.saw[0]?.at).toEqual({
      file: 'pairs/LW-1.yaml',
      line: 3,
      column: 24,
      length: key.length,
    });
  });

  it.each(Object.entries(observations))('%s with a list in a list is one finding', (key) => {
    const { entries, findings } = readLog(`- {date: 2026-03-01, ${key}: [[[x]]], site: gorse}`);
    expect(findings).toHaveLength(1);
    expect(entries[0]).toMatchObject({ saw: [], site: { text: 'gorse' } });
  });

  it('comes in the order of the trade within a day', () => {
    const day =
      'paired nest laid pulled set sitting candled pipped hatched fostered lost ringed weighed fledged independent died gone checked';
    const orders = day.split(' ').map((key) => observations[key as keyof typeof observations].order);
    expect(orders).toEqual([...orders].sort((a, b) => a - b));
    expect(new Set(orders).size).toBe(orders.length);
  });

  it('is a look where somebody saw into the nest', () => {
    const looks = Object.entries(observations).filter(([, { look }]) => look === true);
    expect(looks.map(([key]) => key)).toEqual(
      'laid candled aged pipped hatched lost checked ringed crops'.split(' '),
    );
  });

  it.each([
    ['weighed: {c1: 4.5}', true],
    ['weighed: {e1: 1.1, hen: 9.8}', true],
    ['weighed: {hen: 9.8}', false],
  ])('%s is a look only if an egg or chick was weighed', (said, expected) => {
    const observation = readLog(`- {date: 2026-03-01, ${said}}`).entries[0]?.saw[0];
    if (observation?.key !== 'weighed') throw new Error('nothing was weighed');
    const { look } = observations.weighed;
    expect(typeof look === 'function' && look(observation.value)).toBe(expected);
  });
});

describe('values', () => {
  it.each([
    ['laid: 1', count(1)],
    ['laid: 3+', count(3, 'at least')],
    ['laid: some', count(1, 'at least')],
    ['laid: ~3', count(3, 'about')],
    ['laid: all', { kind: 'all' }],
    ['laid: e1', { kind: 'refs', refs: [egg(1)] }],
    ['laid: [e1, e2]', { kind: 'refs', refs: [egg(1), egg(2)] }],
    ['hatched: 2/c1', { kind: 'refs', refs: [{ ...chick(1), text: '2/c1', clutch: 2 }] }],
    [
      'hatched: SF-2/1/c1',
      { kind: 'refs', refs: [{ ...chick(1), text: 'SF-2/1/c1', pair: 'SF-2', clutch: 1 }] },
    ],
    [
      'died: hen',
      [{ cause: null, who: { kind: 'refs', refs: [{ text: 'hen', form: 'parent', parent: 'hen' }] } }],
    ],
    [
      'died: ring:014',
      [{ cause: null, who: { kind: 'refs', refs: [{ text: 'ring:014', form: 'ring', ring: '014' }] } }],
    ],
    ['ringed: {c1: 014}', [{ chick: chick(1), code: { text: '014' } }]],
    [
      'candled: {fertile: 0, clear: 4}',
      [
        { what: 'fertile', who: count(0) },
        { what: 'clear', who: count(4) },
      ],
    ],
    ['checked: {eggs: 0, chicks: 2}', { eggs: count(0), chicks: count(2) }],
    ['checked', { eggs: null, chicks: null }],
    ['sitting', 'seen'],
    ['sitting: off', 'off'],
    ['measured: {e1: 10.8 x 14.2}', [{ egg: egg(1), length: 14.2, breadth: 10.8 }]],
    ['food: live food', [{ kind: { text: 'live food' }, grams: null }]],
    ['food: {egg food: 20}', [{ kind: { text: 'egg food' }, grams: 20 }]],
    ['paired: {hen: LW-22-01}', { housing: null, cock: null, hen: { text: 'LW-22-01' } }],
    ['courting', null],
    ['paired: flight 2', { housing: { text: 'flight 2' }, cock: null, hen: null }],
    ['nest: lined', { state: 'lined', site: null, height: null, material: null }],
    ['roosting: out', [{ where: 'out', who: null }]],
    ['chasing', { by: null, level: null }],
    ['gone: c1', [{ how: null, who: { kind: 'refs', refs: [chick(1)] } }]],
    ['gone: {sold: 2}', [{ how: 'sold', who: count(2) }]],
    ['lost: 2', [{ cause: null, who: count(2) }]],
    ['lost: {clear: e1}', [{ cause: 'clear', who: { kind: 'refs', refs: [egg(1)] } }]],
    ['died: {chilled: 2}', [{ cause: { text: 'chilled' }, who: count(2) }]],
    ['treated: as the vet ordered', [{ who: null, what: { text: 'as the vet ordered' } }]],
    ['treated: {c1: eye wash}', [{ who: { kind: 'refs', refs: [chick(1)] }, what: { text: 'eye wash' } }]],
    ['unwell: {all: fluffed}', [{ who: { kind: 'all' }, what: { text: 'fluffed' } }]],
    ['moved: flight 5', [{ who: null, housing: { text: 'flight 5' } }]],
    [
      'moved: {"c1, c2": cage 4}',
      [{ who: { kind: 'refs', refs: [chick(1), chick(2)] }, housing: { text: 'cage 4' } }],
    ],
    ['moult: {started: 2}', [{ what: 'started', who: count(2) }]],
    ['sexed: {hen: 2}', [{ sex: 'hen', who: count(2) }]],
    ['feeding: {cock: all}', [{ by: 'cock', who: { kind: 'all' } }]],
    ['crops: {thin: 2}', [{ what: 'thin', who: count(2) }]],
    ['weighed: {c1: 4.5}', [{ who: chick(1), grams: 4.5 }]],
    ['ringed: {c1: " LW 7 "}', [{ chick: chick(1), code: { text: 'LW 7' } }]],
    ['laid: 40', count(40)],
    [
      'roosting: {nest: 2, out: c1}',
      [
        { where: 'nest', who: count(2) },
        { where: 'out', who: { kind: 'refs', refs: [chick(1)] } },
      ],
    ],
  ])('%s', (said, expected) => {
    expect(JSON.parse(value(said))).toEqual(expected);
  });

  it.each([
    ['laid: 0', 'zero-count'],
    ['laid: -1', 'negative-count'],
    ['laid: 41', 'absurd-count'],
    ['laid: 12.5', 'not-a-who'],
    ['laid: "1,5"', 'not-a-who'],
    ['laid: [e1, all]', 'not-a-ref'],
    ['measured: {e1: 0 x 14}', 'not-a-size'],
    ['laid: 1.5', 'not-a-who'],
    ['laid: []', 'empty-list'],
    ['laid', 'wrong-value'],
    ['laid: {e1: 1}', 'wrong-value'],
    ['laid: [e1, 2]', 'not-a-ref'],
    ['laid: [e1, [e2]]', 'not-a-ref'],
    ['nest: biulding', 'unknown-word'],
    ['nest: {state: lined, heigth: 180}', 'unknown-key'],
    ['nest: {state: lined, height: [1]}', 'wrong-value'],
    ['candled: 3', 'wrong-value'],
    ['candled: {}', 'empty-map'],
    ['candled: {fertil: 3}', 'unknown-word'],
    ['candled: {clear: e1, e3}', 'comma-in-map'],
    ['weighed: {c1: 4,5}', 'comma-in-map'],
    ['weighed: {c1: "4,5"}', 'not-a-number'],
    ['weighed: {c1: heavy}', 'not-a-number'],
    ['measured: {e1: big}', 'not-a-size'],
    ['lost: {stolen: 2}', 'unknown-word'],
    ['roosting: tree', 'unknown-word'],
    ['checked: {eggs: few}', 'not-a-count'],
    ['checked: {eggs: -2}', 'negative-count'],
    ['chasing: {by: cock, level: very}', 'unknown-word'],
    ['courting: ""', 'empty-text'],
    ['skip: []', 'empty-list'],
    ['paired: {hen: A, cock}', 'comma-in-map'],
    ['died: {chilled: {c1: 2}}', 'wrong-value'],
  ])('%s is refused as %s', (said, code) => {
    expect(value(said)).toBe(code);
  });

  it('are wrong at the innermost place', () => {
    const { findings } = readLog('- {date: 2026-03-01, moult: {started: c1, done: {x: y}}}');
    expect(findings[0]).toMatchObject({ code: 'wrong-value', at: { column: 51, length: 6 } });
    expect(findings[0]?.args).toMatchObject({ key: 'moult', example: observations.moult.example });
  });

  it('inside braces with known keys are wrong at their own place', () => {
    const { findings } = readLog('- {date: 2026-03-01, nest: {state: lined, height: [1]}}');
    expect(findings[0]).toMatchObject({ at: { column: 53 } });
  });

  it.each([
    ['nest: biulding', 'did you mean `building`?'],
    ['lost: {dead in shell: 1}', 'did you mean `dead-in-shell`?'],
    ['lost: {Clear: 1}', 'did you mean `clear`?'],
    ['candled: {fertil: 3}', 'did you mean `fertile`?'],
    ['nest: {state: lined, heigth: 180}', 'did you mean `height`?'],
    ['weighed: {c1: "4,5"}', 'write 4.5'],
    ['roosting: tree', 'one of nest, out'],
    ['died: {chilled: e1, c2}', 'write:\n- {date: 2026-03-01, died: {chilled: [e1, c2]}}'],
  ])('%s: %s', (said, fix) => {
    expect(readLog(`- {date: 2026-03-01, ${said}}`).fixes).toEqual([fix]);
  });
});
