import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { fingerprint, loadRoom } from '../../src/journal/load.ts';

let room: string;
beforeEach(() => {
  room = mkdtempSync(join(tmpdir(), 'room-'));
});
afterEach(() => rmSync(room, { recursive: true }));

function write(path: string, content: string | Uint8Array = 'pair: x\n'): void {
  mkdirSync(dirname(join(room, path)), { recursive: true });
  writeFileSync(join(room, path), content);
}

/** Paths, with the problem of those that have one. */
function loaded(): string[] {
  return loadRoom(room).map((file) =>
    'problem' in file ? `${file.path}: ${file.problem} ${file.detail}`.trim() : file.path,
  );
}

/** Paths and texts. */
function read(): { path: string; text: string }[] {
  return loadRoom(room).flatMap((file) => ('text' in file ? [{ path: file.path, text: file.text }] : []));
}

describe('the files of a room', () => {
  it('are its journals, sorted by path', () => {
    for (const path of [
      'pairs/b.yaml',
      'pairs/a.yml',
      'pairs/old/c.YAML',
      'species/x.yaml',
      'birds.yaml',
      'nestlog.yaml',
      'LW-1.yaml',
    ])
      write(path);
    expect(loaded()).toEqual([
      'LW-1.yaml',
      'birds.yaml',
      'nestlog.yaml',
      'pairs/a.yml',
      'pairs/b.yaml',
      'pairs/old/c.YAML',
      'species/x.yaml',
    ]);
  });

  it('are nothing hidden, and nothing else', () => {
    for (const path of [
      'pairs/.a.yaml',
      '.git/x.yaml',
      'pairs/a.yaml~',
      'species/old/x.yaml',
      'notes/x.yaml',
    ])
      write(path);
    expect(loaded()).toEqual([]);
  });

  it('are also those that an editor gave another ending, and that lie in a folder spelt otherwise', () => {
    for (const path of [
      'pairs/a.yaml.txt',
      'pairs/b',
      'pairs/old/c.txt',
      'birds.txt',
      'Pairs/d.yaml',
      'pair/e.yaml',
    ])
      write(path, path.startsWith('birds') ? 'birds:\n  - {id: A}\n' : 'pair: x\n');
    write('pairs/shopping.txt', 'seed, 2 kg\n');
    write('pair/shopping.yaml', 'seed: 2 kg\n');
    write('pair/old/f.yaml');
    write('pairs/LICENSE', new Uint8Array([0, 1, 2]));
    expect(loaded()).toEqual([
      'Pairs/d.yaml',
      'birds.txt',
      'pair/e.yaml',
      'pair/old/f.yaml',
      'pairs/a.yaml.txt',
      'pairs/b',
      'pairs/old/c.txt',
    ]);
  });

  it('are read once where capitals make no difference to the disk', () => {
    write('pairs/a.yaml');
    write('species/star-finch.yaml', 'species: star finch\nincubation: 13\n');
    symlinkSync('pairs', join(room, 'Pairs'));
    symlinkSync('species', join(room, 'Species'));
    expect(loaded()).toEqual(['pairs/a.yaml', 'species/star-finch.yaml']);
  });

  it('may be missing altogether', () => {
    expect(loadRoom(join(room, 'nowhere'))).toEqual([]);
  });

  it('are none where one file is called as the folder of journals is', () => {
    write('pairs', 'a list of what to buy\n');
    write('birds.yaml', 'birds:\n');
    expect(loaded()).toEqual(['birds.yaml']);
  });

  it('keep their text as it is', () => {
    write('pairs/a.yaml', '\ufeffpair: 🐣\r\n');
    expect(read()).toEqual([{ path: 'pairs/a.yaml', text: '\ufeffpair: 🐣\r\n' }]);
  });
});

describe('links', () => {
  it('are followed', () => {
    write('elsewhere/a.yaml');
    mkdirSync(join(room, 'pairs'));
    symlinkSync('../elsewhere', join(room, 'pairs/linked'));
    symlinkSync('../elsewhere/a.yaml', join(room, 'pairs/b.yaml'));
    expect(loaded()).toEqual(['pairs/b.yaml', 'pairs/linked/a.yaml']);
  });

  it('that go round in circles are a problem, and the rest is read', () => {
    write('pairs/a.yaml');
    symlinkSync('..', join(room, 'pairs/up'));
    symlinkSync('.', join(room, 'pairs/here'));
    symlinkSync('self.yaml', join(room, 'pairs/self.yaml'));
    expect(loaded()).toEqual([
      'pairs/a.yaml',
      'pairs/here: loop',
      'pairs/self.yaml: loop',
      'pairs/up/pairs: loop',
    ]);
  });

  it('that stand for the folder of journals and lead to themselves are a problem, not a room without pairs', () => {
    write('birds.yaml', 'birds:\n');
    symlinkSync('pairs', join(room, 'pairs'));
    expect(loaded()).toEqual(['birds.yaml', 'pairs: loop']);
  });

  it('to nowhere are a problem', () => {
    mkdirSync(join(room, 'pairs'));
    symlinkSync('gone.yaml', join(room, 'pairs/a.yaml'));
    expect(loaded()).toEqual(['pairs/a.yaml: unreadable it is a link to a file that does not exist']);
  });
});

describe('files that cannot be read', () => {
  it('may be folders', () => {
    write('nestlog.yaml/x.txt');
    write('pairs/a.yaml/b.yaml');
    expect(loaded()).toEqual(['nestlog.yaml: unreadable it is a folder', 'pairs/a.yaml/b.yaml']);
  });

  it.runIf(existsSync('/dev/null'))('may be something that never ends, or says nothing', () => {
    mkdirSync(join(room, 'pairs'));
    symlinkSync('/dev/null', join(room, 'pairs/a.yaml'));
    expect(loaded()).toEqual(['pairs/a.yaml: unreadable it is no file']);
  });

  it.runIf(existsSync('/proc/self/mem'))('may lie on a disk that fails', () => {
    write('pairs/b.yaml');
    symlinkSync('/proc/self/mem', join(room, 'pairs/a.yaml'));
    expect(loaded()).toEqual([
      'pairs/a.yaml: unreadable the disk does not work as it should',
      'pairs/b.yaml',
    ]);
  });

  it('may be too large, which is told without reading them', () => {
    write('pairs/a.yaml');
    truncateSync(join(room, 'pairs/a.yaml'), 50 * 1024 * 1024);
    expect(loaded()).toEqual(['pairs/a.yaml: too-large 50 MB']);
  });

  it('may be no text', () => {
    write('pairs/picture.yaml', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0]));
    write('pairs/wide.yaml', Uint8Array.from([0xff, 0xfe, 0x70, 0, 0x61, 0]));
    write('pairs/wide2.yaml', Uint8Array.from([0xfe, 0xff, 0, 0x70, 0, 0x61]));
    write('pairs/half.yaml', Uint8Array.from([0xff, 0x70, 0, 0x61, 0xfe]));
    write('pairs/half2.yaml', Uint8Array.from([0x70, 0xfe, 0, 0x61, 0xff]));
    write(
      'pairs/noise.yaml',
      Uint8Array.from({ length: 100 }, (_, index) => 128 + index),
    );
    expect(loaded()).toEqual([
      'pairs/half.yaml: binary',
      'pairs/half2.yaml: binary',
      'pairs/noise.yaml: binary',
      'pairs/picture.yaml: binary',
      'pairs/wide.yaml: binary it is UTF-16',
      'pairs/wide2.yaml: binary it is UTF-16',
    ]);
  });

  it('are no text where more than a few signs are not in UTF-8', () => {
    const letters = (lost: number) =>
      Uint8Array.from({ length: 100 }, (_, index) => (index < lost ? 0xfc : 0x61));
    write('pairs/five.yaml', letters(5));
    write('pairs/six.yaml', letters(6));
    const problems = loadRoom(room).map((file) => ('problem' in file ? file.problem : 'read'));
    expect(problems).toEqual(['read', 'binary']);
  });

  it('are read with what was lost where a few letters are not in UTF-8', () => {
    write('pairs/a.yaml', Uint8Array.from([...new TextEncoder().encode('pair: '.repeat(10)), 0xfc]));
    expect(read()).toEqual([{ path: 'pairs/a.yaml', text: `${'pair: '.repeat(10)}\ufffd` }]);
  });
});

describe('the fingerprint of a room', () => {
  it('is that of the names and contents of its files, and of what is wrong with them', () => {
    const now = () => fingerprint(loadRoom(room));
    const seen = new Set([now()]);
    const differs = () => {
      const print = now();
      expect(now()).toBe(print);
      expect(seen.has(print)).toBe(false);
      seen.add(print);
    };
    write('pairs/a.yaml');
    differs();
    const first = now();
    write('pairs/b.yaml');
    differs();
    write('pairs/b.yaml', 'pair: y\n');
    differs();
    write('pairs/b.yaml', Uint8Array.from([0]));
    differs();
    write('pairs/b.yaml', Uint8Array.from([0xff, 0xfe, 0]));
    differs();
    rmSync(join(room, 'pairs/b.yaml'));
    expect(now()).toBe(first);
  });

  it('is another where a letter changed that is not in UTF-8, though both are lost', () => {
    const latin = (letter: number) => {
      write('pairs/a.yaml', Uint8Array.from([...new TextEncoder().encode('pair: '.repeat(10)), letter]));
      return { print: fingerprint(loadRoom(room)), texts: read() };
    };
    const [one, other] = [latin(0xfc), latin(0xe4)];
    expect(other.texts).toEqual(one.texts);
    expect(other.print).not.toBe(one.print);
  });

  it('does not depend on whether a file came with its hash', () => {
    write('pairs/a.yaml');
    expect(fingerprint([{ path: 'pairs/a.yaml', text: 'pair: x\n' }])).toBe(fingerprint(loadRoom(room)));
  });
});

describe('the text of a file', () => {
  const texts = (file: ReturnType<typeof loadRoom>[number] | undefined) =>
    file !== undefined && 'text' in file ? [file.text, file.text] : [];

  it('has its size in bytes, not in letters', () => {
    write('birds.yaml', '# Blässhuhn 🐣\n');
    expect(loadRoom(room)).toMatchObject([{ size: 18 }]);
  });

  it('is given as often as it is asked for', () => {
    write('birds.yaml', 'birds: []\n');
    expect(texts(loadRoom(room)[0])).toEqual(['birds: []\n', 'birds: []\n']);
  });

  it('is not shown for what was read before, once the file is another or gone', () => {
    write('birds.yaml', 'birds: []\n');
    const [file] = loadRoom(room);
    texts(file);
    write('birds.yaml', 'birds: [{id: A}]\n');
    expect(texts(file)).toEqual(['', '']);
    rmSync(join(room, 'birds.yaml'));
    expect(texts(file)).toEqual(['', '']);
  });
});
