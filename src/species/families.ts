/** Groups of birds whose breeding differs so much that the same number is right for one and wrong for another. */
export type Family = 'estrildids' | 'parrots' | 'doves' | 'quails' | 'other';

const genera: Record<Exclude<Family, 'other'>, string> = {
  estrildids: `Aegintha Aidemosyne Amadina Amandava Bathilda Brunhilda Chloebia Clytospiza Coccopygia Cryptospiza
    Emblema Erythrura Estrilda Euodice Euschistospiza Glaucestrilda Granatina Heteromunia Hypargos Lagonosticta
    Lemuresthes Lepidopygia Lonchura Mandingoa Mayrimunia Neochmia Nesocharis Nigrita Odontospiza Oreostruthus
    Ortygospiza Padda Paludipasser Parmoptila Poephila Pyrenestes Pytilia Spermestes Spermophaga Stagonopleura
    Stizoptera Taeniopygia Uraeginthus`,
  parrots: `Agapornis Aratinga Barnardius Bolborhynchus Cyanoramphus Forpus Lathamus Melopsittacus Neophema
    Neopsephotus Northiella Nymphicus Platycercus Polytelis Poicephalus Psephotellus Psephotus Psittacula Psittacus
    Pyrrhura Trichoglossus`,
  doves: `Chalcophaps Columba Columbina Geopelia Metriopelia Oena Spilopelia Streptopelia Turtur Zenaida`,
  quails: `Callipepla Colinus Coturnix Excalfactoria Perdicula Synoicus`,
};

const byGenus = new Map<string, Family>(
  Object.entries(genera).flatMap(([family, names]) =>
    names.split(/\s+/).map((genus) => [genus, family as Family] as const),
  ),
);

/** The family by the genus of a scientific name; `other` for every other perching bird, and where it is unknown. */
export function familyOf(scientific: string): Family {
  return byGenus.get(scientific.trim().split(/\s+/)[0] ?? '') ?? 'other';
}
