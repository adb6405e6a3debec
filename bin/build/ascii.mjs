/**
 * A program in ASCII alone, as it is loaded one byte a character. esbuild writes so what stands in strings; in regular
 * expressions it leaves signs as they are, and there an escape means the same.
 *
 * @param {string} program as esbuild wrote it with `charset: 'ascii'`
 * @returns {string}
 */
export function inAscii(program) {
  return program.replace(/[^\0-\x7f]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
