import { observation } from '../grammar/observation.ts';
import { oneOrMore, text } from '../grammar/values.ts';

export const photo = observation({
  value: oneOrMore(text),
  order: 200,
  look: false,
  example: 'photo: pictures/nest.jpg',
  takes: 'path, or list of paths, beside the journal',
  alsoSaid: ['picture', 'pictures', 'image'],
  doc: 'a picture; pages show it',
});
