const PRIVATE = /^[\s\p{P}\p{S}\p{Cf}]*private\s*[:：;,.–—-]/iu;

/**
 * Whether a keeper marked a text as their own: it begins with `private:`. Such a text never stands in what is handed
 * over. Read generously, because what is shown by mistake cannot be taken back.
 */
export function isPrivate(text: string): boolean {
  return PRIVATE.test(text);
}
