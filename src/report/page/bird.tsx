import type { Day } from '../../days.ts';
import type { Mate, Portrait } from '../../rules/stock/portrait.ts';
import type { Stock } from '../../rules/stock/stock.ts';
import { capital, count } from '../../words.ts';
import type { Picture } from '../pictures/picture.ts';
import { factsOf, inbreedingOf, leadOf, titleOf } from '../terminal/bird/words.ts';
import { coefficient } from '../terminal/birds.ts';
import { longDate, periodText, shortDate } from '../terminal/dates.ts';
import { visible } from '../terminal/visible.ts';
import { documentText } from './document.tsx';
import { FACTS_STYLE, Facts } from './facts.tsx';
import { PEDIGREE_STYLE, Pedigree } from './pedigree/drawing.tsx';
import { PICTURE_STYLE, Pictures } from './pictures.tsx';
import { Table } from './table.tsx';

/** One bird as a page that goes with it: who it is, its pedigree, its life, its young, its photos. */
export function birdPage(portrait: Portrait, stock: Stock, pictures: readonly Picture[]): string {
  const { one, life, mates } = portrait;
  const { day, of } = stock;
  return documentText({
    title: visible(titleOf(one, day)),
    style: FACTS_STYLE + PICTURE_STYLE + PEDIGREE_STYLE,
    children: (
      <>
        <h1>{visible(one.id)}</h1>
        <p class="lead">{visible(leadOf(one, day))}</p>
        <p>{visible(factsOf(portrait, day).join(' · '))}</p>
        <section>
          <h2>Where it comes from</h2>
          {inbreedingOf(portrait).map((text) => (
            <p>{visible(capital(text))}.</p>
          ))}
          <Pedigree
            of={one.ancestor}
            parentsOf={({ bird }) => (bird === null ? null : (of(bird)?.parents ?? null))}
            inbreedingOf={({ bird }) =>
              bird === null ? 'founder' : coefficient(of(bird)?.inbreeding ?? null)
            }
          />
        </section>
        <Pictures pictures={pictures} of={one.id} files={false} />
        <Young mates={mates} day={day} />
        {life.length === 0 ? null : (
          <section>
            <h2>Life</h2>
            <Facts
              items={life.map(({ from, day: on, what }) => ({
                of: periodText({ from, to: on }, 0),
                text: visible(what),
              }))}
            />
          </section>
        )}
        <footer>
          As known on {longDate(day)}. F is the coefficient of inbreeding: the chance that the two copies of a
          gene come from one ancestor, as far as the pedigree is known.
        </footer>
      </>
    ),
  });
}

function Young({ mates, day }: { mates: readonly Mate[]; day: Day }) {
  if (mates.length === 0) return null;
  return (
    <section>
      <h2>Mates and young</h2>
      <Table
        caption={null}
        head={['mate', 'together', 'young', 'who']}
        rows={mates.map(({ id, times, young }) => [
          visible(id ?? 'not certain'),
          times.map(({ from, to }) => together(from, to, day)).join(', '),
          young.length === 0 ? 'none' : count(young.length, 'young', 'young'),
          visible(young.map((chick) => chick.id).join(', ')),
        ])}
      />
    </section>
  );
}

function together(from: Day, to: Day | null, day: Day): string {
  return to === null
    ? `since ${shortDate(from, 0)}`
    : `${shortDate(from, 0)}–${shortDate(Math.min(to, day), 0)}`;
}
