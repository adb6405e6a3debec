import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pictureUri } from '../../../src/report/pictures/picture.ts';
import { describeInChromium } from '../../browser.ts';
import { gif, jpeg, jpegTalk, png, SECRET, webp } from './samples.ts';

const samples = { jpeg: jpeg(), png: png(), gif: gif(), webp: webp() };

/** The bytes behind a data: URI. */
function bytesOf(uri: string | null): Buffer {
  return Buffer.from(uri?.split(',')[1] ?? '', 'base64');
}

describe.each(Object.entries(samples))('of a %s', (type, bytes) => {
  it('nothing is handed over but what is drawn', () => {
    const uri = pictureUri(bytes);
    expect(uri).toMatch(new RegExp(`^data:image/${type};base64,`));
    const kept = bytesOf(uri).toString('latin1');
    for (const secret of [SECRET, 'camera', 'MPF', 'Photoshop', 'adobe.com', 'EXIF', 'XMP', 'tEXt', 'eXIf']) {
      expect(kept).not.toContain(secret);
    }
    expect(kept.length).toBeGreaterThan(20);
  });

  it('that was cut off on its way nothing is shown', () => {
    for (let length = 0; length < bytes.length - SECRET.length - 4; length += 3) {
      expect(pictureUri(bytes.subarray(0, length))).toBeNull();
    }
  });

  it('damaged in any byte it is shown or not, and nothing breaks', () => {
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.nat(255), (at, value) => {
        const damaged = bytes.slice();
        damaged[at] = value;
        const uri = pictureUri(damaged);
        return uri === null || uri.startsWith('data:image/');
      }),
    );
  });
});

it.each(['II', 'MM'] as const)('which side is up stays with a JPEG, byte order %s', (order) => {
  const kept = bytesOf(pictureUri(jpeg(8, order)));
  const at = kept.indexOf('Exif');
  // CIPA DC-008: tag 0x0112 is the orientation, a short; the one field left (from memory).
  expect(kept.subarray(at + 14, at + 28)).toEqual(
    Buffer.from([0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 8, 0, 0]),
  );
});

it('an upright JPEG needs no word from the camera', () => {
  expect(bytesOf(pictureUri(jpeg(1))).includes('Exif')).toBe(false);
});

it('a WebP no longer announces what was taken out', () => {
  const kept = bytesOf(pictureUri(webp()));
  expect(kept.readUInt32LE(4)).toBe(kept.length - 8);
  expect(kept.readUInt8(20)).toBe(0x20);
});

it.each([
  [
    'a drawing that could hold scripts',
    '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>',
  ],
  ['a page', '<!doctype html><p>hello'],
  ['nothing', ''],
])('%s is no picture to embed', (_, text) => {
  expect(pictureUri(Buffer.from(text))).toBeNull();
});

describeInChromium('pictures as Chromium draws them', (open) => {
  const drawn = `(type) => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 40, height: 20 });
    const pen = canvas.getContext('2d');
    pen.fillStyle = 'green';
    pen.fillRect(0, 0, 20, 20);
    return canvas.toDataURL('image/' + type, 0.9);
  }`;
  const sizeOf = `async (uri) => {
    const image = Object.assign(new Image(), { src: uri });
    await image.decode();
    return [image.naturalWidth, image.naturalHeight];
  }`;

  it.each(['jpeg', 'png', 'webp'])('a %s is still whole', async (type) => {
    const { page } = await open('<!doctype html><title>t</title>');
    const original = bytesOf(await page.evaluate(`(${drawn})('${type}')`));
    const uri = pictureUri(original);
    expect(uri).not.toBeNull();
    expect(await page.evaluate(`(${sizeOf})('${uri}')`)).toEqual([40, 20]);
  });

  it('a JPEG that was taken upright stands upright', async () => {
    const { page } = await open('<!doctype html><title>t</title>');
    const original = bytesOf(await page.evaluate(`(${drawn})('jpeg')`));
    const taken = Buffer.concat([
      original.subarray(0, 2),
      Buffer.from(jpegTalk(6, 'II')),
      original.subarray(2),
    ]);
    const uri = pictureUri(taken);
    expect(bytesOf(uri).includes('camera')).toBe(false);
    expect(await page.evaluate(`(${sizeOf})('${uri}')`)).toEqual([20, 40]);
  });
});
