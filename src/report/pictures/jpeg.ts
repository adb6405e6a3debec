import { reader } from './bytes.ts';

const START = 0xd8;
const END = 0xd9;
const SCAN = 0xda;
const APP0 = 0xe0;
const APP1 = 0xe1;
const APP2 = 0xe2;
const APP14 = 0xee;
const APP15 = 0xef;
const COMMENT = 0xfe;

/**
 * The parts of a JPEG that are drawn, in order; null for one that is cut off or no JPEG. Kept are the frame, tables and
 * scans, JFIF, the colour profile and Adobe's colour transform; of the camera's own data only which side is up.
 * Structure: ITU-T T.81 annex B; Exif's orientation: CIPA DC-008, tag 0x0112 (both from memory).
 */
export function jpegDrawing(bytes: Uint8Array): Uint8Array[] | null {
  const { byte, big16 } = reader(bytes);
  const parts = [bytes.subarray(0, 2)];
  let at = 2;
  while (at < bytes.length) {
    if (byte(at) !== 0xff) return null;
    const marker = byte(at + 1);
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === END) return [...parts, bytes.subarray(at, at + 2)];
    const length = big16(at + 2);
    const next = at + 2 + length;
    if (marker === START || !(length >= 2) || next > bytes.length) return null;
    const segment = bytes.subarray(at, next);
    if (marker === APP1) parts.push(...uprightOnly(segment));
    else if (isDrawn(marker, segment)) parts.push(segment);
    at = next;
    if (marker === SCAN) {
      const end = endOfScan(bytes, at);
      parts.push(bytes.subarray(at, end));
      at = end;
    }
  }
  return null;
}

function isDrawn(marker: number, segment: Uint8Array): boolean {
  const { text } = reader(segment);
  if (marker === APP0) return text(4, 5) === 'JFIF\0';
  if (marker === APP2) return text(4, 12) === 'ICC_PROFILE\0';
  if (marker === APP14) return text(4, 5) === 'Adobe';
  return !((marker >= APP0 && marker <= APP15) || marker === COMMENT);
}

/** Compressed data runs to the next marker that is neither a stuffed byte nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1] as number;
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return bytes.length;
}

const ORIENTATION = 0x0112;
const TIFF = 10;

/** The camera's segment rewritten with its orientation alone; nothing where it has none or is upright. */
function uprightOnly(segment: Uint8Array): Uint8Array[] {
  const { text, big16, big32, little16, little32 } = reader(segment);
  if (text(4, 6) !== 'Exif\0\0') return [];
  const little = text(TIFF, 2) === 'II';
  const [short, long] = little ? [little16, little32] : [big16, big32];
  const directory = TIFF + long(TIFF + 4);
  const entries = short(directory);
  for (let index = 0; index < entries; index++) {
    const entry = directory + 2 + 12 * index;
    if (!(entry + 12 <= segment.length)) return [];
    const side = short(entry + 8);
    if (short(entry) === ORIENTATION) return side >= 2 && side <= 8 ? [orientationSegment(side)] : [];
  }
  return [];
}

function orientationSegment(side: number): Uint8Array {
  const exif = [0x45, 0x78, 0x69, 0x66, 0, 0];
  const header = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8];
  const directory = [0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, side, 0, 0, 0, 0, 0, 0];
  const body = [...exif, ...header, ...directory];
  return Uint8Array.from([0xff, APP1, 0, body.length + 2, ...body]);
}
