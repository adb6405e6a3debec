import { reader } from './bytes.ts';

const EXTENSION = 0x21;
const IMAGE = 0x2c;
const TRAILER = 0x3b;
const CONTROL = 0xf9;
const APPLICATION = 0xff;

/** The blocks of a GIF that are drawn, in order; null for one that is cut off (GIF89a, CompuServe 1990, from memory). */
export function gifDrawing(bytes: Uint8Array): Uint8Array[] | null {
  const { byte, text } = reader(bytes);
  let at = 13 + tableBytes(byte(10));
  const parts = [bytes.subarray(0, at)];
  while (at < bytes.length) {
    const kind = byte(at);
    if (kind === TRAILER) return [...parts, bytes.subarray(at, at + 1)];
    if (kind !== IMAGE && kind !== EXTENSION) return null;
    const blocks = kind === IMAGE ? at + 10 + tableBytes(byte(at + 9)) + 1 : at + 2;
    const next = endOfBlocks(bytes, blocks);
    if (next === null) return null;
    const label = byte(at + 1);
    const loops = label === APPLICATION && text(at + 3, 11) === 'NETSCAPE2.0';
    if (kind === IMAGE || label === CONTROL || loops) parts.push(bytes.subarray(at, next));
    at = next;
  }
  return null;
}

/** Bytes of the colour table that a packed field announces. */
function tableBytes(packed: number): number {
  return (packed & 0x80) === 0 ? 0 : 3 * 2 ** ((packed & 7) + 1);
}

/** Behind the empty block that ends a run of data blocks. */
function endOfBlocks(bytes: Uint8Array, from: number): number | null {
  let at = from;
  while (at < bytes.length) {
    const length = bytes[at] as number;
    at += 1 + length;
    if (length === 0) return at;
  }
  return null;
}
