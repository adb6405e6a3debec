import type { AgendaItem, WarningLine } from '../../rules/agenda/item.ts';
import type { Morning } from '../morning.ts';
import { fold } from '../terminal/due/fold.ts';
import { type Group, type Grouping, groupsBy } from '../terminal/due/groups.ts';
import { gutterWords } from '../terminal/due/lines.ts';
import { hintsText, openingOf, quietText } from '../terminal/due/opening.ts';
import { reasons } from '../terminal/due/reason.ts';
import { LEVEL_WORDS, pressingFirst, warningHead } from '../terminal/due/warnings.ts';
import { type Said, subject, unsaid } from '../terminal/due/where.ts';
import { countLevel, errorsOf } from '../terminal/findings.ts';
import { visibleData } from '../terminal/visible.ts';
import { documentText } from './document.tsx';
import { DUE_STYLE } from './due-style.ts';

/**
 * The morning as a tick list, to be printed or opened on a phone in the bird room. Every task has a box of its own, in
 * the order of a walk through the room; what presses comes before the walk.
 */
export function duePage(morning: Morning, by: Grouping): string {
  const shown = visibleData({ ...morning, findings: [] });
  const { title, standing, counts } = openingOf(shown);
  const errors = errorsOf(morning.findings);
  const hints = countLevel(morning.findings, 'hint');
  const warnings = pressingFirst(shown.warnings);
  const notes = warnings.filter(({ level }) => level === 'note');
  return documentText({
    title,
    style: DUE_STYLE,
    children: (
      <>
        <h1>{title}</h1>
        {standing === null ? null : <p class="quiet">{standing}</p>}
        {counts === '' ? null : <p class="lead">{counts}</p>}
        {errors === null ? null : (
          <div class="broken">
            <p>
              <strong>{errors.head}</strong>
            </p>
            <ul>
              {errors.lines.map((line) => (
                <li>{line}</li>
              ))}
            </ul>
            <p>{errors.more}</p>
          </div>
        )}
        <Warnings
          title="Before the walk"
          warnings={warnings.filter(({ level }) => level !== 'note')}
          of={shown}
        />
        {quietText(shown, errors !== null).map((text) => (
          <p>{text}</p>
        ))}
        <div class="walk">
          {groupsOf(shown.items, by).map((group) => (
            <Round group={group} of={shown} />
          ))}
        </div>
        <Warnings title="To know" warnings={notes} of={shown} />
        {hints === 0 ? null : <p class="quiet small">{hintsText(hints)}</p>}
        <div class="notes" aria-hidden="true">
          <p>Notes, to be written into the journals:</p>
        </div>
      </>
    ),
  });
}

const STATES = [
  { state: 'late', title: 'Late' },
  { state: 'now', title: 'Today' },
  { state: 'coming', title: 'Coming' },
] as const;

/** Under each heading in the order in which things are done. */
function groupsOf(items: readonly AgendaItem[], by: Grouping): Group[] {
  const groups =
    by === 'urgency'
      ? STATES.map(({ state, title }) => ({
          title,
          said: unsaid,
          items: items.filter((item) => item.state === state),
        }))
      : groupsBy(by, items);
  return groups
    .filter((group) => group.items.length > 0)
    .map((group) => ({ ...group, items: fold(group.items).flat() }));
}

interface Of {
  of: Pick<Morning, 'day'>;
}

function Round({ group: { title, said, items }, of }: { group: Group } & Of) {
  return (
    <section>
      <h2>{title}</h2>
      <ul class="ticks">
        {items.map((item) => (
          <Task item={item} said={said} of={of} />
        ))}
      </ul>
    </section>
  );
}

function Task({ item, said, of: { day } }: { item: AgendaItem; said: Said } & Of) {
  const whose = subject(item, said);
  const places = [whose, said.housing ? '' : (item.housing ?? '')].filter((part) => part !== '');
  return (
    <li class={item.state}>
      <label>
        <input type="checkbox" />
        <span class="when">{gutterWords(item, day)}</span>
        <span class="what">
          <strong>{item.say}</strong>
          {places.length === 0 ? null : (
            <>
              {' '}
              · <span class="whose">{places.join(' · ')}</span>
            </>
          )}
        </span>
        <span class="why">
          {reasons([item], day, said)
            .map((phrases) => phrases.join(' · '))
            .join(' · ')}
        </span>
      </label>
    </li>
  );
}

function Warnings({ title, warnings, of: { day } }: { title: string; warnings: WarningLine[] } & Of) {
  if (warnings.length === 0) return null;
  return (
    <section class="warnings">
      <h2>{title}</h2>
      <ul class="ticks">
        {warnings.map((warning) => (
          <li class={warning.level}>
            <label>
              <input type="checkbox" />
              <span class="when">{LEVEL_WORDS[warning.level]}</span>
              <span class="what">
                <strong>{warningHead(warning, day)}</strong>
              </span>
              <span class="why">
                {warning.text} <b>Check:</b> {warning.check}
              </span>
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}
