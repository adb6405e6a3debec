/** Small pictures of every kind, each with something in it that is nobody's business. */

/** Stands in whatever a sample holds beside the drawing. */
export const SECRET = 'N 51.50 W 0.12 Ada’s camera';

const ascii = (text: string) => [...Buffer.from(text, 'latin1')];
const secret = [...Buffer.from(SECRET)];
const big16 = (number: number) => [number >> 8, number & 255];
const big32 = (number: number) => [...big16(number >>> 16), ...big16(number & 0xffff)];
const little32 = (number: number) => big32(number).reverse();

const segment = (marker: number, body: number[]) => [0xff, marker, ...big16(body.length + 2), ...body];

/** The camera's data as either byte order writes it: where it was taken, and which side is up. */
function exif(orientation: number, order: 'II' | 'MM'): number[] {
  const number = (value: number, bytes: number) => {
    const digits = Array.from({ length: bytes }, (_, at) => (value >> (8 * (bytes - 1 - at))) & 255);
    return order === 'II' ? digits.reverse() : digits;
  };
  const entry = (tag: number, type: number, count: number, value: number[]) => [
    ...number(tag, 2),
    ...number(type, 2),
    ...number(count, 4),
    ...value,
  ];
  return [
    ...ascii('Exif\0\0'),
    ...ascii(order),
    ...number(42, 2),
    ...number(8, 4),
    ...number(2, 2),
    ...entry(0x010f, 2, secret.length, number(40, 4)),
    ...entry(0x0112, 3, 1, [...number(orientation, 2), 0, 0]),
    ...number(0, 4),
    ...secret,
  ];
}

/** The segments that a camera and an editor put before the drawing of a JPEG. */
export const jpegTalk = (orientation: number, order: 'II' | 'MM') => [
  ...segment(0xe1, exif(orientation, order)),
  ...segment(0xe1, [...ascii('http://ns.adobe.com/xap/1.0/\0'), ...secret]),
  ...segment(0xed, [...ascii('Photoshop 3.0\0'), ...secret]),
  ...segment(0xe2, [...ascii('MPF\0'), ...secret]),
  ...segment(0xfe, secret),
];

/** Headers and a scan with a stuffed byte and a restart; what hangs on behind its end is a second picture. */
export function jpeg(orientation = 6, order: 'II' | 'MM' = 'II'): Uint8Array {
  return Uint8Array.from([
    0xff,
    0xd8,
    ...segment(0xe0, [...ascii('JFIF\0'), 1, 1, 0, 0, 1, 0, 1, 0, 0]),
    ...jpegTalk(orientation, order),
    ...segment(0xe2, [...ascii('ICC_PROFILE\0'), 1, 1, 7]),
    ...segment(0xdb, [0, 1, 2]),
    ...segment(0xda, [1, 1, 0, 0, 63, 0]),
    ...[1, 2, 0xff, 0, 3, 0xff, 0xd0, 4],
    0xff,
    0xd9,
    ...secret,
  ]);
}

const chunk = (type: string, body: number[]) => [...big32(body.length), ...ascii(type), ...body, 9, 9, 9, 9];

export function png(): Uint8Array {
  return Uint8Array.from([
    ...ascii('\x89PNG\r\n\x1A\n'),
    ...chunk('IHDR', [0, 0, 0, 1, 0, 0, 0, 1, 8, 2, 0, 0, 0]),
    ...chunk('tEXt', secret),
    ...chunk('eXIf', exif(1, 'MM')),
    ...chunk('IDAT', [1, 2, 3]),
    ...chunk('IEND', []),
    ...secret,
  ]);
}

const blocks = (body: number[]) => [body.length, ...body, 0];

export function gif(): Uint8Array {
  return Uint8Array.from([
    ...ascii('GIF89a'),
    ...[1, 0, 1, 0, 0x80, 0, 0, 1, 2, 3, 4, 5, 6],
    ...[0x21, 0xff, ...blocks(ascii('NETSCAPE2.0')).slice(0, -1), ...blocks([1, 0, 0])],
    ...[0x21, 0xfe, ...blocks(secret)],
    ...[0x21, 0xf9, ...blocks([0, 0, 0, 0])],
    ...[0x2c, 0, 0, 0, 0, 1, 0, 1, 0, 0, 2, ...blocks([0x44, 0x01])],
    0x3b,
    ...secret,
  ]);
}

export function webp(): Uint8Array {
  const part = (type: string, body: number[]) => [
    ...ascii(type),
    ...little32(body.length),
    ...body,
    ...(body.length % 2 === 1 ? [0] : []),
  ];
  const body = [
    ...ascii('WEBP'),
    ...part('VP8X', [0x2c, 0, 0, 0, 0, 0, 0, 0, 0, 0]),
    ...part('ICCP', [1, 2, 3]),
    ...part('VP8L', [5, 6, 7, 8, 9]),
    ...part('EXIF', exif(1, 'II')),
    ...part('XMP ', secret),
  ];
  return Uint8Array.from([...ascii('RIFF'), ...little32(body.length), ...body, ...secret]);
}
