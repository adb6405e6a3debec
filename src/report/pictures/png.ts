import { reader } from './bytes.ts';

/** What is drawn, with its colours and its animation (PNG third edition, W3C 2025; names from memory). */
const DRAWN = new Set(
  'IHDR PLTE IDAT IEND tRNS cHRM gAMA iCCP sBIT sRGB cICP bKGD pHYs acTL fcTL fdAT'.split(' '),
);

/** The chunks of a PNG that are drawn, in order; null for one that is cut off. */
export function pngDrawing(bytes: Uint8Array): Uint8Array[] | null {
  const { big32, text } = reader(bytes);
  const parts = [bytes.subarray(0, 8)];
  let at = 8;
  while (at + 12 <= bytes.length) {
    const type = text(at + 4, 4);
    const next = at + 12 + big32(at);
    if (next > bytes.length || (at === 8 && type !== 'IHDR')) return null;
    if (DRAWN.has(type)) parts.push(bytes.subarray(at, next));
    if (type === 'IEND') return parts;
    at = next;
  }
  return null;
}
