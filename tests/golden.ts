import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect } from 'vitest';

/** Compares a text with the one kept in a file beside the test; `UPDATE_GOLDEN=1` writes the file instead. */
export function expectGolden(url: URL, text: string): void {
  if (process.env.UPDATE_GOLDEN) {
    mkdirSync(new URL('.', url), { recursive: true });
    writeFileSync(url, text);
  }
  expect(text).toBe(readFileSync(url, 'utf8'));
}
