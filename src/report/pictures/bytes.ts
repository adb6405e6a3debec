/** Numbers inside a file's bytes. Reading past the end is NaN, which no length equals. */
export function reader(bytes: Uint8Array) {
  const at = (index: number) => bytes[index] ?? Number.NaN;
  return {
    byte: at,
    big16: (index: number) => at(index) * 256 + at(index + 1),
    big32: (index: number) => ((at(index) * 256 + at(index + 1)) * 256 + at(index + 2)) * 256 + at(index + 3),
    little16: (index: number) => at(index) + at(index + 1) * 256,
    little32: (index: number) =>
      at(index) + 256 * (at(index + 1) + 256 * (at(index + 2) + 256 * at(index + 3))),
    text: (from: number, length: number) => String.fromCharCode(...bytes.subarray(from, from + length)),
  };
}
