import { dateForm } from './date-forms.ts';
import type { Table } from './table.ts';

/** What a column probably holds. */
export type Role =
  | 'pair'
  | 'species'
  | 'cock'
  | 'hen'
  | 'housing'
  | 'clutch'
  | 'event'
  | 'number'
  | 'note'
  | `${Stage} date`
  | `${Stage} count`
  | 'date';

const stages = ['laid', 'sitting', 'fertile', 'clear', 'hatched', 'fledged', 'independent', 'died'] as const;

export type Stage = (typeof stages)[number];

export interface Column {
  heading: string;
  /** Null where the heading says nothing that is known here. */
  role: Role | null;
  kind: 'dates' | 'numbers' | 'words' | 'nothing';
  /** What stands in it, each once. */
  values: string[];
}

/** Cells that look as if they were to say nothing. */
export const NOTHINGS = /^(?:na|n\/a|nil|none|null|-+|–|\?+|\.+|#n\/a)$/i;

const NUMBERED = '(?: (?:no|nr|number|id|code|ring|name))?';

const roles: [RegExp, Role][] = [
  [/^(?:clutch|round|brood)(?: (?:no|nr|number))$|^round$/, 'clutch'],
  [new RegExp(`^(?:pair|couple|breeding pair|nest|nest ?box|box)${NUMBERED}$`), 'pair'],
  [/^(?:species|kind|kind of bird|breed)$/, 'species'],
  [new RegExp(`^(?:cock|male|father|sire)${NUMBERED}$`), 'cock'],
  [new RegExp(`^(?:hen|female|mother|dam)${NUMBERED}$`), 'hen'],
  [/^(?:housing|cage|flight|aviary|enclosure|location)(?: (?:no|nr|number))?$/, 'housing'],
  [/^(?:event|what|activity|action|observation|seen)$/, 'event'],
  [/^(?:number|count|how many|quantity|n|qty)$/, 'number'],
  [/^(?:notes?|remarks?|comments?)$/, 'note'],
  [/^(?:date|day|when)$/, 'date'],
];

const stageWords: [RegExp, Stage][] = [
  [/\b(?:in)?fertile\b(?<!infertile)|\bfull\b/, 'fertile'],
  [/\bclear\b|\binfertile\b|\bempty eggs\b/, 'clear'],
  [/\b(?:sit|sitting|sat|incubat\w*|brooding|set)\b/, 'sitting'],
  [/\bhatch\w*\b|\bchicks?\b/, 'hatched'],
  [/\bfledg\w*\b|\bleft (?:the )?nest\b/, 'fledged'],
  [/\bindependent\b|\bweaned\b|\bself feeding\b/, 'independent'],
  [/\bdied\b|\bdead\b|\blost\b|\bdeaths?\b/, 'died'],
  [/\beggs?\b|\blaid\b|\blay\w*\b|\bclutch\b/, 'laid'],
];

/** What each column of a table probably holds, by its heading and by what stands in it. */
export function columnsOf({ headings, rows }: Table): Column[] {
  return headings.map((heading, index) => {
    const said = rows.map(({ cells }) => cells[index] ?? '').filter((cell) => cell !== '');
    const cells = said.filter((cell) => !NOTHINGS.test(cell));
    const kind = kindOf(cells);
    return { heading, kind, role: heading === '' ? null : roleOf(heading, kind), values: [...new Set(said)] };
  });
}

/** A stage of the nest, or another event, that a word of the table probably means. */
export function stageOf(word: string): Stage | null {
  const plain = plainWords(word);
  return stageWords.find(([pattern]) => pattern.test(plain))?.[1] ?? null;
}

function roleOf(heading: string, kind: Column['kind']): Role | null {
  const plain = plainWords(heading);
  const known = roles.find(([pattern]) => pattern.test(plain));
  if (known !== undefined) return known[1];
  const stage = stageOf(heading);
  if (stage === null) return null;
  return kind === 'dates' ? `${stage} date` : kind === 'numbers' ? `${stage} count` : null;
}

/** Of a column with more than one kind of text, what most of it is. */
function kindOf(cells: readonly string[]): Column['kind'] {
  if (cells.length === 0) return 'nothing';
  const share = (test: (cell: string) => boolean) => cells.filter(test).length / cells.length;
  if (share((cell) => !['unreadable', 'impossible'].includes(dateForm(cell).kind)) > 0.5) return 'dates';
  return share((cell) => /^\d+(?:[.,]\d+)?$/.test(cell)) > 0.5 ? 'numbers' : 'words';
}

/** `incubation_start` and `Incubation start` alike, `hatchDate` as two words. */
function plainWords(text: string): string {
  return text
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
