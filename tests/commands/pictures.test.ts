import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readPictures } from '../../src/commands/pictures.ts';
import { png } from '../report/pictures/samples.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'nestlog-pictures-'));
  mkdirSync(join(folder, 'room/pairs/waxbills/pictures'), { recursive: true });
  writeFileSync(join(folder, 'room/pairs/waxbills/pictures/nest.png'), png());
  writeFileSync(join(folder, 'room/pairs/hen.png'), png());
  writeFileSync(join(folder, 'outside.png'), png());
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function read(path: string) {
  const photo = { day: 0, path, journal: 'pairs/waxbills/LW-1.yaml', note: null };
  const [picture] = readPictures(join(folder, 'room'), [photo]);
  return picture !== undefined && 'uri' in picture ? 'shown' : picture?.missing;
}

it.each(['pictures/nest.png', './pictures/nest.png', '../hen.png'])('%s lies beside the journal', (path) => {
  expect(read(path)).toBe('shown');
});

it.each([
  '../../../outside.png',
  'pictures/../../../../outside.png',
  '/etc/hostname',
  'file:///etc/hostname',
  'https://x.invalid/a.png',
  'C:\\pictures\\a.png',
])('%s does not lie in the room', (path) => {
  expect(read(path)).toBe('not in the room’s folder');
});

it('a link that leads out of the room is not followed, one inside it is', () => {
  symlinkSync(join(folder, 'outside.png'), join(folder, 'room/pairs/waxbills/out.png'));
  symlinkSync(folder, join(folder, 'room/pairs/waxbills/away'));
  symlinkSync(join(folder, 'room/pairs/hen.png'), join(folder, 'room/pairs/waxbills/in.png'));
  expect(read('out.png')).toBe('not in the room’s folder');
  expect(read('away/outside.png')).toBe('not in the room’s folder');
  expect(read('in.png')).toBe('shown');
});

it('what is no picture, is not there or is too large comes with the reason', () => {
  writeFileSync(join(folder, 'room/pairs/waxbills/text.png'), 'no picture');
  writeFileSync(join(folder, 'room/pairs/waxbills/huge.png'), png());
  truncateSync(join(folder, 'room/pairs/waxbills/huge.png'), 200 * 1024 * 1024);
  expect(read('text.png')).toBe('no JPEG, PNG, WebP or GIF that can be read');
  expect(read('gone.png')).toBe('not found');
  expect(read('a\0.png')).toBe('not found');
  expect(read('pictures')).toBe('no file');
  expect(read('huge.png')).toBe('too large, 200 MB');
});

it('a page takes only so much', () => {
  const big = join(folder, 'room/pairs/waxbills/big.png');
  writeFileSync(big, Buffer.concat([png(), Buffer.alloc(11 * 1024 * 1024)]));
  const photos = Array.from({ length: 7 }, (_, day) => ({
    day,
    path: 'big.png',
    journal: 'pairs/waxbills/a.yaml',
    note: null,
  }));
  const missing = readPictures(join(folder, 'room'), photos).map((one) =>
    'missing' in one ? one.missing : 'shown',
  );
  expect(missing).toEqual([...Array(5).fill('shown'), ...Array(2).fill('too much with all the others')]);
});
