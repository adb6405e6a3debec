/** The files of `src/species/profiles/`, read when the program is built (see `bin/build/profiles.mjs`). */
declare module 'virtual:species-profiles' {
  /** One a file, in the order of the file names; all scalars are still text. */
  export const shippedProfiles: {
    file: string;
    names: { species: string; scientific: string; also: string[] };
    /** Parsed anew each time it is asked for. */
    readonly data: unknown;
  }[];
}
