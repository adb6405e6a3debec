import { sumBy } from '../../statistics/sums.ts';
import { reader } from './bytes.ts';

/** What is drawn (RFC 9649, section 2.7; names from memory). */
const DRAWN = new Set(['VP8 ', 'VP8L', 'VP8X', 'ANIM', 'ANMF', 'ALPH', 'ICCP']);

/** In the flags of VP8X: the file has Exif data, or XMP. */
const TALKS = 0x08 | 0x04;

/** The chunks of a WebP that are drawn, in order, under a new length; null for one that is cut off. */
export function webpDrawing(bytes: Uint8Array): Uint8Array[] | null {
  const { little32, text } = reader(bytes);
  const end = 8 + little32(4);
  if (!(end <= bytes.length)) return null;
  const parts: Uint8Array[] = [];
  let at = 12;
  while (at + 8 <= end) {
    const type = text(at, 4);
    const length = little32(at + 4);
    const next = at + 8 + length + (length % 2);
    if (next > end) return null;
    if (type === 'VP8X') parts.push(silent(bytes.slice(at, next)));
    else if (DRAWN.has(type)) parts.push(bytes.subarray(at, next));
    at = next;
  }
  if (parts.length === 0) return null;
  const header = bytes.slice(0, 12);
  const size = 4 + sumBy(parts, (part) => part.length);
  new DataView(header.buffer).setUint32(4, size, true);
  return [header, ...parts];
}

function silent(chunk: Uint8Array): Uint8Array {
  chunk[8] = (chunk[8] ?? 0) & ~TALKS;
  return chunk;
}
