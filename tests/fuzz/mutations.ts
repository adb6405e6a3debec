import fc from 'fast-check';

/** What is put where it does not belong. None of it reads as something that a program prints by mistake. */
const TOKENS = [
  '{',
  '}',
  '[',
  ']',
  ',',
  ':',
  ': ',
  '-',
  '- ',
  '"',
  "'",
  '#',
  ' # ',
  '&a',
  '*a',
  '!!str',
  '|',
  '>',
  '%',
  '@',
  '`',
  '~',
  '\\',
  '\t',
  '\r',
  '\r\n',
  '\n',
  '\n\n',
  '  ',
  '\u0000',
  '\u001B[2J',
  '\u202E',
  '\u200B',
  '\uFEFF',
  '\uD800',
  '🐣',
  'é',
  '---\n',
  '...\n',
  '<<: *a',
  '? ',
  'date',
  'note: ',
  'laid: ',
  'hatched: all',
  'lost: {clear: e1}',
  '__proto__: 1',
  'constructor',
  '2026-02-30',
  '2026-05-17',
  '0000-00-00',
  '99999999999999999999',
  '-1',
  '1e9',
  '0x10',
  '4,5',
  'e0',
  'c99',
  'LW-1/1/e1',
  '/',
  '..',
  'x'.repeat(2000),
  '['.repeat(300),
  '{a: '.repeat(100),
];

/** One slip of the hand, the editor or the merge: places are taken modulo what there is. */
interface Slip {
  kind:
    | 'cut'
    | 'insert'
    | 'repeat'
    | 'swap-lines'
    | 'drop-line'
    | 'copy-line'
    | 'join'
    | 'indent'
    | 'digit'
    | 'end'
    | 'graft';
  at: number;
  length: number;
  other: number;
  token: string;
}

const slip: fc.Arbitrary<Slip> = fc.record({
  kind: fc.constantFrom<Slip['kind']>(
    'cut',
    'insert',
    'repeat',
    'swap-lines',
    'drop-line',
    'copy-line',
    'join',
    'indent',
    'digit',
    'end',
    'graft',
  ),
  at: fc.nat(),
  length: fc.nat(40),
  other: fc.nat(),
  token: fc.constantFrom(...TOKENS),
});

/** Up to so many slips, one after the other. */
export const slips = (most: number) => fc.array(slip, { minLength: 1, maxLength: most });

/** The text after these slips. */
export function mutated(text: string, made: readonly Slip[]): string {
  return made.reduce(after, text);
}

function after(text: string, { kind, at, length, other, token }: Slip): string {
  if (text === '') return token;
  const [from, to] = [at % text.length, other % text.length];
  const lines = text.split('\n');
  const [line, second] = [at % lines.length, other % lines.length];
  const own = lines[line] ?? '';
  const replaced = (...by: string[]) => lines.toSpliced(line, 1, ...by).join('\n');
  switch (kind) {
    case 'cut':
      return text.slice(0, from) + text.slice(from + length);
    case 'insert':
      return text.slice(0, from) + token + text.slice(from);
    case 'repeat':
      return text.slice(0, from) + text.slice(from, from + length).repeat(2) + text.slice(from + length);
    case 'swap-lines':
      return lines
        .with(line, lines[second] ?? '')
        .with(second, own)
        .join('\n');
    case 'drop-line':
      return replaced();
    case 'copy-line':
      return replaced(own, own);
    case 'join':
      return lines.toSpliced(line, 2, own + (lines[line + 1] ?? '')).join('\n');
    case 'indent':
      return replaced(`${' '.repeat(length % 6)}${own.trimStart()}`);
    case 'digit':
      return text.slice(0, from) + text.slice(from).replace(/\d/, String(other % 10));
    case 'end':
      return text.slice(0, from);
    case 'graft':
      return text.slice(0, from) + text.slice(to, to + length) + text.slice(from);
  }
}
