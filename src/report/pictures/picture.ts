import { sumBy } from '../../statistics/sums.ts';
import { gifDrawing } from './gif.ts';
import { jpegDrawing } from './jpeg.ts';
import { pngDrawing } from './png.ts';
import { webpDrawing } from './webp.ts';

/** A picture of the record, ready for a page: its data, or why it cannot be shown. */
export type Picture = PictureWords & ({ uri: string } | { missing: string });

export interface PictureWords {
  /** The day of the entry that names it. */
  day: number;
  note: string | null;
  /** As the journal has it. */
  path: string;
}

/** Tells a kind of picture by its first bytes, and keeps of it what is drawn. */
interface Format {
  type: string;
  starts(bytes: Uint8Array): boolean;
  drawing(bytes: Uint8Array): Uint8Array[] | null;
}

const text = (bytes: Uint8Array, from: number, to: number) =>
  String.fromCharCode(...bytes.subarray(from, to));

const formats: Format[] = [
  { type: 'jpeg', starts: (bytes) => text(bytes, 0, 3) === '\xFF\xD8\xFF', drawing: jpegDrawing },
  { type: 'png', starts: (bytes) => text(bytes, 0, 8) === '\x89PNG\r\n\x1A\n', drawing: pngDrawing },
  { type: 'gif', starts: (bytes) => /^GIF8[79]a$/.test(text(bytes, 0, 6)), drawing: gifDrawing },
  {
    type: 'webp',
    starts: (bytes) => text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 12) === 'WEBP',
    drawing: webpDrawing,
  },
];

/**
 * A picture as a data: URI, or null for what is none that every browser shows. Only what is drawn is kept: where and
 * with what it was taken, its text, previews and whatever hangs on behind its end stay at home.
 */
export function pictureUri(bytes: Uint8Array): string | null {
  const format = formats.find(({ starts }) => starts(bytes));
  const parts = format?.drawing(bytes) ?? null;
  if (format === undefined || parts === null) return null;
  return `data:image/${format.type};base64,${base64(parts)}`;
}

function base64(parts: readonly Uint8Array[]): string {
  const whole = new Uint8Array(sumBy(parts, (part) => part.length));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  let binary = '';
  for (let from = 0; from < whole.length; from += 8192) {
    binary += String.fromCharCode(...whole.subarray(from, from + 8192));
  }
  return btoa(binary);
}
