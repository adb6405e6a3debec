import { describe, expect, test } from 'vitest';
import { isBirdList, isJournal, isProfile, isSettings, isYaml, nameOfFile } from '../src/file-names.ts';

describe('what the files of a room are called', () => {
  test('YAML ends in .yaml or .yml, in capitals as well', () => {
    expect(['LW-1.yaml', 'LW-1.yml', 'LW-1.YAML'].every(isYaml)).toBe(true);
    expect(['LW-1.yaml.txt', 'LW-1', 'yaml', 'LW-1.yaml~'].some(isYaml)).toBe(false);
  });

  test('a file is named after its pair, in whatever folder, on whatever machine', () => {
    expect(nameOfFile('pairs/2026/LW-1.yaml')).toBe('LW-1');
    expect(nameOfFile('pairs\\LW-1.yml')).toBe('LW-1');
    expect(nameOfFile('pairs/flight.2.yaml')).toBe('flight.2');
    expect(nameOfFile('LW-1')).toBe('LW-1');
  });

  test('the settings and the list of birds stand in the room’s own folder', () => {
    expect(['nestlog.yaml', 'Nestlog.yml'].every(isSettings)).toBe(true);
    expect(['pairs/nestlog.yaml', 'nestlog.yaml.txt', 'my-nestlog.yaml'].some(isSettings)).toBe(false);
    expect(['birds.yaml', 'Birds.YML'].every(isBirdList)).toBe(true);
    expect(['pairs/birds.yaml', 'birds-old.yaml'].some(isBirdList)).toBe(false);
  });

  test('journals are below `pairs`, own profiles in `species`', () => {
    expect(['pairs/LW-1.yaml', 'pairs/old/LW-1.yml'].every(isJournal)).toBe(true);
    expect(['LW-1.yaml', 'species/lavender-waxbill.yaml', 'pairs/notes.txt'].some(isJournal)).toBe(false);
    expect(isProfile('species/lavender-waxbill.yaml')).toBe(true);
    expect(['lavender-waxbill.yaml', 'pairs/LW-1.yaml'].some(isProfile)).toBe(false);
  });
});
