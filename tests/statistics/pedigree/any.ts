import fc from 'fast-check';

/** A pedigree of up to thirty birds, oldest first, anyone with anyone; −1 is an unknown parent. */
export const anyParents = fc
  .array(fc.tuple(fc.nat(), fc.nat(), fc.nat(9), fc.nat(9)), { minLength: 1, maxLength: 30 })
  .map((birds) =>
    birds.map(([sire, dam, sireKnown, damKnown], one) => ({
      sire: one === 0 || sireKnown < 2 ? -1 : sire % one,
      dam: one === 0 || damKnown < 2 ? -1 : dam % one,
    })),
  );
