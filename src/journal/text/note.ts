/** A note that goes on to the end of its line, as offsets into the text. */
interface NoteSpan {
  from: number;
  to: number;
}

interface SwallowedNote extends NoteSpan {
  /** Whether a key at this offset is no key, but words of the note. */
  swallows: (offset: number) => boolean;
}

/** What we use of the library's nodes. */
interface YamlScalar {
  value?: unknown;
  type?: string;
  source?: string;
  range: readonly number[];
}

interface YamlMap {
  items: { key: YamlScalar | null; value: YamlScalar | null }[];
  range: readonly number[];
}

/**
 * The unquoted note of a flow map when keys follow it on its line: `{note: sat well, pulled}`. All up to the map's end,
 * or up to the end of the line where the map goes on, was meant as the note. Null where nothing follows.
 */
export function swallowedNote({ items, range }: YamlMap, text: string): SwallowedNote | null {
  const index = items.findIndex(({ key }) => key?.value === 'note');
  const note = items[index]?.value;
  if (note?.type !== 'PLAIN' || note.source === '') return null;
  const from = note.range[0] as number;
  const ends = note.range[1] as number;
  const newline = text.indexOf('\n', ends);
  const lineEnd = newline < 0 ? text.length : newline;
  const next = items[index + 1]?.key?.range[0];
  if (next === undefined || next >= lineEnd) return null;
  const mapEnd = (range[1] as number) - 1;
  const region =
    mapEnd <= lineEnd ? text.slice(from, mapEnd) : text.slice(from, lineEnd).trimEnd().replace(/,$/, '');
  const to = from + region.trimEnd().length;
  return { from, to, swallows: (offset) => offset > from && offset < lineEnd };
}

const FLOW_NOTE = /[{,][ \t]*note[ \t]*:[ \t]+(?=[^ \t\r\n])/;
const BLOCK_NOTE = /^[ \t]*(?:-[ \t]+)?note[ \t]*:[ \t]+(?=[^ \t\r\n|>])/m;
const QUOTED = /^(?:"(?:[^"\\]|\\.)*"|'(?:[^']|'')*')[ \t\r]*(?:$|[,}#])/;

/**
 * Where the raw words of a note stand in an entry that is no YAML as it stands (`note: hen off: cold`). A note that is
 * properly quoted is not to blame: null.
 */
export function rawNote(entry: string): NoteSpan | null {
  const flow = /^[ \t]*-[ \t]*\{/.test(entry);
  const match = (flow ? FLOW_NOTE : BLOCK_NOTE).exec(entry);
  if (match === null) return null;
  const from = match.index + match[0].length;
  const newline = entry.indexOf('\n', from);
  const line = entry.slice(from, newline < 0 ? entry.length : newline);
  if (QUOTED.test(line)) return null;
  const words = flow ? line.slice(0, Math.max(0, line.lastIndexOf('}'))) : line;
  const to = from + words.trimEnd().length;
  return to > from ? { from, to } : null;
}

/** The entry with harmless quoted text in the note's place, of the same length so that every offset stays true. */
export function maskNote(entry: string, { from, to }: NoteSpan): string {
  const length = to - from;
  const mask = length < 2 ? 'x' : `"${'x'.repeat(length - 2)}"`;
  return entry.slice(0, from) + mask + entry.slice(to);
}
