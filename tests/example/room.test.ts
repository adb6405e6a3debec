import { describe, expect, it } from 'vitest';
import { isMap, isScalar, isSeq, type Pair, parseDocument, type Scalar, type YAMLMap } from 'yaml';
import { formatDay, parseDay } from '../../src/days.ts';
import { birdObservations } from '../../src/journal/bird-observations/index.ts';
import { observations } from '../../src/journal/observations/index.ts';
import { inbred } from './pedigree.ts';
import { exampleRecord, exampleRoom, files, TODAY } from './room.ts';

const room = exampleRoom();
const record = exampleRecord();
const clutches = room.pairs.flatMap((pair) => pair.clutches);
const texts = files.map((file) => ({ path: file.path, text: 'text' in file ? file.text : '' }));
const journals = texts.filter(({ path }) => path.startsWith('pairs/'));

const said = ({ code, at }: { code: string; at: { file: string; line: number } }) =>
  `${at.file}:${at.line} ${code}`;

describe('the example room', () => {
  it('has nothing to mend on the day on which it stands', () => {
    expect(room.findings.map(said)).toEqual([]);
  });

  it('had nothing to mend on any tenth day since the first of its journals', () => {
    const first = parseDay('2024-01-01') as number;
    const days = Array.from({ length: Math.ceil((TODAY - first) / 10) }, (_, i) => first + i * 10);
    const wrong = days.flatMap((day) =>
      exampleRoom(day).findings.map((one) => `${formatDay(day)} ${said(one)}`),
    );
    expect(wrong).toEqual([]);
    expect(days.length).toBeGreaterThan(80);
  });

  it('reads the same with the clock of a later day', () => {
    const later = exampleRecord(TODAY + 400);
    expect(later.findings.map(said)).toEqual([]);
  });

  it('keeps at least eight species, each with a profile', () => {
    expect(new Set(room.pairs.map(({ species }) => species)).size).toBeGreaterThanOrEqual(8);
    expect(room.pairs.filter(({ profile }) => profile === null)).toEqual([]);
  });

  it('has more than forty clutches, in two past seasons and this one', () => {
    expect(clutches.length).toBeGreaterThanOrEqual(40);
    const years = new Set(clutches.map(({ opened }) => formatDay(opened).slice(0, 4)));
    expect([...years].sort()).toEqual(['2024', '2025', '2026']);
  });

  it('uses every observation that the grammar has', () => {
    const used = new Set(
      record.pairs.flatMap(({ entries }) => [...entries].flatMap(({ saw }) => saw.map(({ key }) => key))),
    );
    expect(Object.keys(observations).filter((key) => !used.has(key as never))).toEqual([]);
  });

  it('uses every line that a bird’s own log may have', () => {
    const used = new Set(
      record.birds.flatMap(({ log }) => log.flatMap(({ saw }) => saw.map(({ key }) => key))),
    );
    expect(Object.keys(birdObservations).filter((key) => !used.has(key as never))).toEqual([]);
  });

  it('tells of most situations that a bird room knows', () => {
    const all = journals.map(({ text }) => text).join('\n');
    const situations: Record<string, RegExp> = {
      'eggs given away': /fostered: \{BF-1: \[e1/,
      'eggs given back the other way': /fostered: \{GF-1: \[e1/,
      'a chick given away': /fostered: \{LW-2: 3\/c3\}/,
      'fed by hand': /fostered: \{hand: c3\}/,
      'stored and set back': /pulled: e3\}[\s\S]*set: all, sitting/,
      'stored and set back late': /pulled: all[\s\S]*set: all, note/,
      incubator: /set: \{incubator: all\}/,
      'never looked into': /nest-looks: never/,
      'size unknown': /laid: 3\+/,
      'found late': /aged: \{6: /,
      'on and off': /sitting: off[\s\S]*sitting: both, note: "on again/,
      'a colony': /cock: \[OC-23-01, /,
      'a parent dead on eggs': /died: \{found on the nest: hen\}/,
      'hard chasing, parted': /level: hard\}[\s\S]*parted: \{cock: cage 6\}/,
      'put together again': /reunited: flight 7/,
      'two nests of one pair': /site: shelf, clutch: 7/,
      'a chick put back': /back: 4\/c2/,
      'an egg found again': /back: 2\/e2/,
      'out on loan': /gone: \{lent: hen\}/,
      'a new hen': /paired: \{hen: PG-25-07\}/,
      'a correction': /said `3\/c1` until/,
    };
    const missing = Object.entries(situations).filter(([, pattern]) => !pattern.test(all));
    expect(missing.map(([name]) => name)).toEqual([]);
  });

  it('has one cock with two hens, each with a journal of her own', () => {
    const withCock = room.pairs.filter(({ cock }) => cock[0] === 'FF-24-01');
    expect(withCock.map(({ id, hen }) => [id, hen])).toEqual([
      ['FF-1', ['FF-24-02']],
      ['FF-2', ['FF-24-03']],
    ]);
  });
});

describe('its seasons', () => {
  const eggs = clutches.flatMap((clutch) => clutch.eggs);
  const past = clutches.filter(({ opened }) => opened < (parseDay('2026-01-01') as number));
  const share = (k: number, n: number) => k / n;

  it('have no egg and no chick of the past years without a fate', () => {
    const open = past.flatMap((clutch) => clutch.eggs.filter(({ fate }) => fate === null));
    const fed = past.flatMap((clutch) =>
      clutch.chicks.filter((c) => c.fate === null && c.independent === null),
    );
    expect([...open, ...fed]).toEqual([]);
  });

  it('went as they go in a good room: no figure of a fairy tale, none of a disaster', () => {
    const ended = eggs.filter(({ fate }) => fate !== null);
    const fertile = ended.filter(
      ({ fate, lamp }) => fate?.kind === 'hatched' || lamp.at(-1)?.saw === 'fertile',
    );
    const clear = ended.filter(({ fate, lamp }) => fate?.kind !== 'hatched' && lamp.at(-1)?.saw === 'clear');
    const hatched = fertile.filter(({ fate }) => fate?.kind === 'hatched');
    const chicks = past.flatMap((clutch) => clutch.chicks);
    const fledged = chicks.filter((chick) => chick.fledged !== null);
    expect(share(fertile.length, fertile.length + clear.length)).toBeGreaterThan(0.72);
    expect(share(fertile.length, fertile.length + clear.length)).toBeLessThan(0.86);
    expect(share(hatched.length, fertile.length)).toBeGreaterThan(0.75);
    expect(share(hatched.length, fertile.length)).toBeLessThan(0.93);
    expect(share(fledged.length, chicks.length)).toBeGreaterThan(0.75);
    expect(share(fledged.length, chicks.length)).toBeLessThan(0.88);
  });

  it('keep to the profiles: every young bird fledged and fed itself at an age that its species knows', () => {
    const odd = clutches.flatMap(({ pair, chicks }) =>
      chicks.flatMap(({ id, hatched, fledged, independent }) => {
        const [nest, fed] = [pair.profile?.fledging?.value, pair.profile?.independence?.value];
        if (hatched === null || nest === undefined || fed === undefined) return [`${id}: no profile`];
        const left = fledged === null ? nest.low : fledged.day - hatched.to;
        // Cracking seed is written down when it was seen for a week: up to a week later than in the book.
        const alone = independent === null ? fed.low : independent.day - hatched.to;
        const fits = left >= nest.low && left <= nest.high && alone >= fed.low && alone <= fed.high + 7;
        return fits ? [] : [`${id}: fledged at ${left}, independent at ${alone}`];
      }),
    );
    expect(odd).toEqual([]);
  });

  it('show cock and hen of one clutch as parents of every chick, wherever it grew up', () => {
    const fostered = clutches.find(({ pair, number }) => pair.id === 'GF-1' && number === 2);
    expect(fostered?.chicks.map(({ sire, dam }) => [...sire, ...dam])).toEqual(
      fostered?.chicks.map(() => ['GF-23-01', 'GF-23-02']),
    );
    expect(fostered?.chicks.every((chick) => chick.stays.some(({ nest }) => nest?.id === 'BF-1'))).toBe(true);
  });
});

describe('its star finches', () => {
  it('are here in three generations', () => {
    const generation = (name: string): number => {
      const bird = room.birds.find(
        ({ id, ref, clutch }) =>
          id === name || (ref !== null && `${clutch?.pair.id}/${clutch?.number}/${ref}` === name),
      );
      const parents = [...(bird?.sire ?? []), ...(bird?.dam ?? [])];
      return parents.length === 0 ? 1 : 1 + Math.max(...parents.map(generation));
    };
    expect(generation('SF-21-03')).toBe(1);
    expect(generation('SF-24-05')).toBe(2);
    expect(generation('SF-25-01')).toBe(3);
  });

  it('pose a dilemma: the proven cock is the uncle of both young hens, the unrelated one has proved nothing', () => {
    // Wright 1922: full brother and sister share half; uncle and niece give young with an inbreeding of 1/8.
    for (const hen of ['SF-25-01', 'SF-25-14']) {
      expect(inbred(room, 'SF-24-05', hen)).toBe(1 / 8);
      expect(inbred(room, 'SF-25-31', hen)).toBe(0);
    }
    const reared = clutches.filter(({ cock }) => cock[0] === 'SF-24-05').flatMap(({ chicks }) => chicks);
    expect(reared.filter(({ fledged }) => fledged !== null).length).toBeGreaterThanOrEqual(9);
    expect(clutches.filter(({ cock }) => cock.includes('SF-25-31'))).toEqual([]);
  });
});

describe('its journals are the tutorial, so', () => {
  it.each(journals)('$path opens with a comment that teaches', ({ text }) => {
    expect(text).toMatch(/^# .{40,}/);
  });

  const logs = texts
    .filter(({ path }) => !path.startsWith('species/'))
    .flatMap(({ path, text }) => entriesOf(path, text));

  it('every entry stands on a line of its own, in braces', () => {
    expect(
      logs.filter(({ lines, entry }) => lines !== 1 || entry.flow !== true).map(({ where }) => where),
    ).toEqual([]);
    expect(logs.length).toBeGreaterThan(500);
  });

  it('the date comes first, the note last and in double quotes', () => {
    const wrong = logs.filter(({ entry }) => {
      const keys = entry.items.map(({ key }) => String((key as Scalar).value));
      const note = entry.items[keys.indexOf('note')];
      const quoted = note === undefined || (note.value as Scalar).type === 'QUOTE_DOUBLE';
      return keys[0] !== 'date' || !quoted || (note !== undefined && keys.at(-1) !== 'note');
    });
    expect(wrong.map(({ where }) => where)).toEqual([]);
  });

  it('entries of one journal stand in the order of their days', () => {
    const wrong = logs.filter(({ where, log }, i) => {
      const before = logs[i - 1];
      return (
        before !== undefined &&
        before.log === log &&
        dateOf(before.entry) > dateOf(logs[i]?.entry as YAMLMap) &&
        where
      );
    });
    expect(wrong.map(({ where }) => where)).toEqual([]);
  });

  it('the first egg of every clutch pins its number', () => {
    const pinned = new Set(
      record.pairs.flatMap(({ pair, entries }) =>
        [...entries].flatMap(({ clutch }) => (clutch === null ? [] : [`${pair.text}/${clutch.number}`])),
      ),
    );
    expect(
      clutches.map(({ pair, number }) => `${pair.id}/${number}`).filter((id) => !pinned.has(id)),
    ).toEqual([]);
  });

  it('no two notes are the same', () => {
    const notes = logs.flatMap(({ entry }) =>
      entry.items.flatMap(({ key, value }) =>
        (key as Scalar).value === 'note' ? [String((value as Scalar).value)] : [],
      ),
    );
    expect(notes.filter((note, i) => notes.indexOf(note) !== i)).toEqual([]);
    expect(notes.length).toBeGreaterThan(100);
  });
});

interface LogEntry {
  where: string;
  log: unknown;
  lines: number;
  entry: YAMLMap<Scalar, Scalar>;
}

/** Every entry of every `log` in a file, as the YAML library sees it. */
function entriesOf(path: string, text: string): LogEntry[] {
  const found: LogEntry[] = [];
  const visit = (node: unknown) => {
    if (isSeq(node)) node.items.forEach(visit);
    if (!isMap(node)) return;
    for (const { key, value } of node.items as Pair[]) {
      if (isScalar(key) && key.value === 'log' && isSeq(value)) {
        for (const entry of value.items) {
          if (!isMap(entry) || !entry.range) continue;
          const body = text.slice(entry.range[0], entry.range[1]);
          const line = text.slice(0, entry.range[0]).split('\n').length;
          found.push({
            where: `${path}:${line}`,
            log: value,
            lines: body.split('\n').length,
            entry: entry as LogEntry['entry'],
          });
        }
      } else visit(value);
    }
  };
  visit(parseDocument(text, { schema: 'failsafe' }).contents);
  return found;
}

function dateOf(entry: YAMLMap): string {
  return String(entry.get('date'));
}
