import type { Day } from '../../days.ts';
import type { Note } from '../../journal/notes.ts';
import { hatchedFrom } from '../../room/model.ts';
import type { ClutchStory, PairStory } from '../../rules/season/story.ts';
import { count } from '../../words.ts';
import type { Picture } from '../pictures/picture.ts';
import { guestsWords, inCareWords } from '../season.ts';
import { longDate, shortDate } from '../terminal/dates.ts';
import { percent, percentRange } from '../terminal/figures.ts';
import { clutchFacts, clutchHead, leadOf, titleOf } from '../terminal/pair/facts.ts';
import { fatesOf } from '../terminal/pair/fates.ts';
import { visible } from '../terminal/visible.ts';
import { documentText } from './document.tsx';
import { FACTS_STYLE, Facts } from './facts.tsx';
import { PICTURE_STYLE, Pictures } from './pictures.tsx';
import { Table } from './table.tsx';
import { TIMELINE_STYLE } from './timeline/style.ts';
import { type YearClutch, Years } from './years.tsx';

interface Beside {
  notes: readonly Note[];
  pictures: readonly Picture[];
}

/** A pair's years as a page: what was foreseen and what came, every fate, its rates beside the others', its photos. */
export function pairPage(story: PairStory, { notes, pictures }: Beside): string {
  const { pair, clutches, day } = story;
  return documentText({
    title: titleOf(story),
    style: TIMELINE_STYLE + FACTS_STYLE + PICTURE_STYLE + PAIR_STYLE,
    children: (
      <>
        <h1>{visible(pair.id)}</h1>
        <p class="lead">{leadOf(story)}</p>
        <p>{summary(story)}</p>
        <Years clutches={clutches.map(yearOf)} day={day} />
        <Notes
          title="Notes from before the first clutch"
          notes={notes.filter((note) => clutchAt(clutches, note.day) === null)}
        />
        {clutches.map((one) => (
          <ClutchSection
            story={one}
            day={day}
            notes={notes.filter((note) => clutchAt(clutches, note.day) === one)}
          />
        ))}
        <Rates story={story} />
        <Pictures pictures={pictures} of={`The pair ${pair.id}, its nest or its young`} files={true} />
        <footer>As known on {longDate(day)}.</footer>
      </>
    ),
  });
}

/** What was foreseen and came, beside it what became of each egg and chick. */
const PAIR_STYLE = `
.begun { font-weight: 400; font-size: 1rem; }
.outcome { display: grid; grid-template-columns: minmax(0, 3fr) minmax(0, 2fr); column-gap: 2rem; align-items: start; }
h3 { margin-top: 0; }
.fates th, .fates td { padding-top: 0.1rem; padding-bottom: 0.1rem; border-bottom-width: 0; }
.fates tbody th { white-space: nowrap; min-width: 0; width: 2.5rem; }
@media (max-width: 44rem) { .outcome { grid-template-columns: minmax(0, 1fr); } }
@media print { .outcome { column-gap: 5mm; } .outcome th, .outcome td { padding-top: 0.8mm; padding-bottom: 0.8mm; } .facts { row-gap: 0.5mm; } .facts { font-size: 9pt; } }
`;

function summary({ pair, clutches, own }: PairStory): string {
  const care = inCareWords(pair);
  const and = care === '' ? '' : ` ${care}`;
  if (clutches.length === 0) return `No clutch yet.${and}`;
  const { eggs, chicks } = own;
  return `${count(clutches.length, 'clutch', 'clutches')} since ${longDate(Math.min(...clutches.map(({ begun }) => begun)))}: ${count(eggs.laid, 'egg')} laid, ${chicks.hatched} hatched, ${chicks.fledged} fledged, ${chicks.independent} independent.${and}`;
}

function yearOf(story: ClutchStory): YearClutch {
  const { number, counted, eggs, chicks } = story.clutch;
  return {
    ...story,
    number,
    eggs: counted ? eggs.length : null,
    chicks: hatchedFrom(story.clutch),
    left: chicks.filter((bird) => bird.fledged !== null).length,
    fed: chicks.filter((bird) => bird.independent !== null).length,
  };
}

/** The clutch in whose time a day lies: the last begun by then. */
function clutchAt(clutches: readonly ClutchStory[], day: number): ClutchStory | null {
  return clutches.findLast(({ begun }) => begun <= day) ?? null;
}

function ClutchSection({ story, day, notes }: { story: ClutchStory; day: Day; notes: readonly Note[] }) {
  const { clutch } = story;
  return (
    <section>
      <h2>
        Clutch {clutch.number}
        <span class="quiet begun"> {clutchHead(story)}</span>
      </h2>
      <div class="outcome">
        <Table
          caption={null}
          head={['', 'real', '', 'foreseen']}
          rows={clutchFacts(story).map((cells) => cells.map((cell) => cell.replace(/^foreseen /, '')))}
        />
        <div class="fates">
          <Table
            caption={null}
            head={['', 'fate']}
            rows={fatesOf(story, day).map(([of, fate]) => [of, visible(fate)])}
          />
        </div>
      </div>
      <Notes title={null} notes={notes} />
    </section>
  );
}

function Notes({ title, notes }: { title: string | null; notes: readonly Note[] }) {
  if (notes.length === 0) return null;
  return (
    <>
      {title === null ? <h3>Notes</h3> : <h2>{title}</h2>}
      <Facts items={notes.map(({ day, text }) => ({ of: shortDate(day, 0), text: visible(text) }))} />
    </>
  );
}

function Rates({ story: { own, others, reared, measures } }: { story: PairStory }) {
  const share = ({ k, n, rate }: PairStory['own']['rates']['fertility']) =>
    rate === null ? '–' : `${k} of ${n}, ${percent(rate)}`;
  const range = ({ low, high }: { low: number | null; high: number | null }) =>
    low === null || high === null ? '–' : percentRange(low, high);
  return (
    <section>
      <h2>Beside the other pairs</h2>
      <Table
        caption={null}
        head={['', 'this pair', '95 %', 'all others', '95 %', 'open']}
        rows={measures.map(({ name, title }) => {
          const [mine, rest] = [own.rates[name], others.rates[name]];
          return [
            title,
            share(mine),
            range(mine),
            share(rest),
            range(rest),
            mine.open === 0 ? '' : mine.open,
          ];
        })}
      />
      {reared.taken === 0 ? null : <p>{guestsWords(reared)}</p>}
    </section>
  );
}
