/** A page's markup with its codes as flowing text again, for tests of its words. */
export function flowing(markup: string): string {
  return markup.replace(/<span class="whole">([^<]*)<\/span>/g, '$1');
}
