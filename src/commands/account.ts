import { entriesOf } from '../journal/entry.ts';
import { photosOf } from '../journal/photos.ts';
import type { Picture } from '../report/pictures/picture.ts';
import { type Account, accountOf } from '../rules/account/account.ts';
import { discretionOf } from '../rules/discretion/discretion.ts';
import type { Tellable } from '../rules/discretion/tellable.ts';
import type { PairStory } from '../rules/season/story.ts';
import { readPictures } from './pictures.ts';
import type { OpenRoom } from './room.ts';

/** A pair's account and its pictures, with nothing in them that was not asked for. */
export function openAccount(
  { record, room }: OpenRoom,
  journals: string,
  story: PairStory,
  asked: readonly Tellable[],
): { account: Account; pictures: Picture[] } {
  const told = new Set(asked);
  const discreet = discretionOf(record, room, told);
  const photos = photosOf(entriesOf(record.pairs, story.pair.id), story.day);
  return {
    account: accountOf(room, record.pairs, story, { discreet, told }),
    // The path of a picture is a text of the keeper's too, and its name often the pair's.
    pictures: readPictures(journals, photos).map((picture) => ({
      ...picture,
      path: '',
      note: picture.note === null || !told.has('notes') ? null : discreet(picture.note),
    })),
  };
}
