import type { Day } from '../../../days.ts';
import { clutchId } from '../../../room/model.ts';
import type { DurationKind } from '../../../rules/forecast/own-durations.ts';
import type { PastForecast, TrackRecord } from '../../../rules/forecast/track-record.ts';
import type { KindRecord } from '../../../rules/species/records.ts';
import type { SpeciesView } from '../../../rules/species/view.ts';
import { count } from '../../../words.ts';
import { columns } from '../columns.ts';
import { dateSpan, shortDate } from '../dates.ts';
import { indented, type Screen } from '../page.ts';
import { styles } from '../style.ts';
import { visible } from '../visible.ts';
import { wrap } from '../width.ts';

const TITLES: Record<DurationKind, string> = { incubation: 'First to hatch', fledging: 'First to fledge' };
const NONE = '  no clutch of known length yet';
const HOW =
  'Each clutch is forecast anew from all other clutches of its species in this room; its own outcome never teaches its own forecast. CRPS is the distance of the whole forecast from what happened, in days: less is better.';

/** What a window holds or claims: all but certain is not certain. */
const windowPercent = (share: number) => `${share < 1 ? Math.min(99, Math.round(share * 100)) : 100} %`;

/** Every past forecast of a species beside what happened. */
export function recordText({ profile, own }: SpeciesView, day: Day, { width, color }: Screen): string {
  const look = styles(color);
  const blocks = (['incubation', 'fledging'] as const).flatMap((kind) => {
    const title = look.heading(TITLES[kind]);
    const experience = own[kind];
    if (experience?.record == null) return [title, NONE, ''];
    const rows = [...experience.past]
      .sort((a, b) => a.happened - b.happened)
      .map((past) => recordRow(past, day));
    const head = ['clutch', 'window', 'likely', 'happened', 'off', 'CRPS', ''];
    const [first = '', ...table] = columns([head, ...rows], { width, indent: 2, right: [4, 5], cut: 0 });
    const sentence = indented(recordSentence(experience.record), { width });
    return [title, look.muted(first), ...table, ...sentence, ''];
  });
  const heading = look.heading(`${visible(profile.species)}: forecasts and what happened`);
  return `${[heading, '', ...blocks, ...wrap(HOW, width).map(look.muted)].join('\n')}\n`;
}

function recordRow({ clutch, from, to, likely, happened, crps }: PastForecast, day: Day): string[] {
  const off = happened - likely;
  return [
    visible(clutchId(clutch)),
    dateSpan(from, to, day),
    shortDate(likely, day),
    shortDate(happened, day),
    off > 0 ? `+${off}` : `${off}`.replace('-', '−'),
    crps.toFixed(2),
    happened < from ? 'early' : happened > to ? 'late' : '',
  ];
}

/** The scores of the whole room, a species a line. */
export function roomRecordText(records: readonly KindRecord[], { width, color }: Screen): string {
  const look = styles(color);
  const blocks = records.flatMap(({ kind, species, all }) => {
    const title = look.heading(TITLES[kind]);
    if (all === null) return [title, NONE, ''];
    const rows = species.map(({ species: name, record }) => scoreRow(visible(name), record));
    const head = ['species', 'clutches', 'off', 'inside', 'claimed', 'CRPS', 'book alone'];
    const table = columns([head, ...rows, scoreRow('all', all)], {
      width,
      indent: 2,
      right: [1, 2, 3, 4, 5, 6],
      cut: 0,
    });
    const [first = '', ...lines] = table;
    const verdict = indented(`${comparison(all)}.`, { width });
    return [title, look.muted(first), ...lines.slice(0, -1), look.task(lines.at(-1) ?? ''), ...verdict, ''];
  });
  const words =
    'off: days between the likely day and the real one, half of the clutches were nearer. inside: share that came in the window, beside the share that the windows claimed.';
  const heading = look.heading('Forecasts and what happened');
  return `${[heading, '', ...blocks, ...wrap(`${words} ${HOW}`, width).map(look.muted)].join('\n')}\n`;
}

function scoreRow(name: string, { n, medianError, inside, claimed, crps, book }: TrackRecord): string[] {
  return [
    name,
    `${n}`,
    `${medianError} d`,
    windowPercent(inside),
    windowPercent(claimed),
    crps.toFixed(2),
    book.crps.toFixed(2),
  ];
}

/** How good the forecasts of one kind were, in a sentence. */
export function recordSentence(record: TrackRecord): string {
  const { n, medianError, inside, claimed } = record;
  const near = medianError === 0 ? 'on the likely day' : `within ${medianError} d of the likely day`;
  const share = `${Math.round(inside * n)} of ${count(n, 'clutch', 'clutches')}`;
  return `half came ${near}; ${share} inside a window that claims ${windowPercent(claimed)}; ${comparison(record)}`;
}

/** The whole forecast against the book alone, said only as finely as it is printed. */
function comparison({ crps, book }: TrackRecord): string {
  const [own, alone] = [crps.toFixed(2), book.crps.toFixed(2)];
  if (own === alone) return `mean CRPS ${own} d, like the book alone`;
  const verdict = crps < book.crps ? 'better than the book alone' : 'no better yet than the book alone';
  return `mean CRPS ${own} d, ${verdict} (${alone} d)`;
}
