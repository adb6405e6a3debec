/** How names are compared: small letters and digits only, without accents, and with British spelling. */
export function comparable(name: string): string {
  const plain = name
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '');
  return plain.replaceAll('gray', 'grey').replaceAll('color', 'colour');
}

/** Every name of a species, its common name first. */
export function namesOf(bird: {
  id: string;
  species: string;
  scientific: string;
  also: readonly string[];
}): string[] {
  return [bird.species, bird.scientific, ...bird.also, bird.id].filter((name) => name !== '');
}

/** The file that a profile of this species is kept in, without `.yaml`: `Jameson's firefinch` is `jamesons-firefinch`. */
export function idFor(species: string): string {
  return species.trim().toLowerCase().replaceAll("'", '').replaceAll(/\s+/g, '-');
}
