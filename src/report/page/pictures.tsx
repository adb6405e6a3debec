import type { Picture } from '../pictures/picture.ts';
import { fullDate } from '../terminal/dates.ts';
import { visible } from '../terminal/visible.ts';

/** Rules for pages that show pictures. */
export const PICTURE_STYLE = `
.pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr)); gap: 1rem; list-style: none; padding: 0; margin: 0; }
.pictures figure { margin: 0; }
.pictures img { display: block; width: 100%; height: auto; max-height: 26rem; object-fit: contain; background: var(--raised); }
.pictures figcaption { font-weight: 400; font-size: 0.875rem; color: var(--quiet); margin-top: 0.3rem; }
@media print { .pictures { grid-template-columns: repeat(2, 1fr); } .pictures img { max-height: 80mm; } }
`;

interface PicturesParts {
  pictures: readonly Picture[];
  /** What they show, for whoever cannot see them: `the bird LW-24-01`. */
  of: string;
  /** Whether the files of those that cannot be shown are named, with the reason. */
  files: boolean;
}

/** Pictures with their day and note, and a line for each that cannot be shown. Nothing without pictures. */
export function Pictures({ pictures, of, files }: PicturesParts) {
  if (pictures.length === 0) return null;
  return (
    <section>
      <h2>Photos</h2>
      <ul class="pictures">
        {pictures.map((picture) => (
          <li>
            {'uri' in picture ? (
              <Shown picture={picture} of={of} />
            ) : (
              <Missing picture={picture} files={files} />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function captionOf({ day, note }: Picture): string {
  return [fullDate(day), ...(note === null ? [] : [visible(note)])].join(': ');
}

function Shown({ picture, of }: { picture: Picture & { uri: string }; of: string }) {
  return (
    <figure>
      <img src={picture.uri} alt={`${visible(of)}, ${captionOf(picture)}`} />
      <figcaption>{captionOf(picture)}</figcaption>
    </figure>
  );
}

function Missing({ picture, files }: { picture: Picture & { missing: string }; files: boolean }) {
  const why = files ? ` (${visible(picture.path)}: ${picture.missing})` : '';
  return (
    <p class="quiet">
      {captionOf(picture)}: a photo that cannot be shown{why}
    </p>
  );
}
