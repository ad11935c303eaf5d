/** Every default that help shows has a record of where it comes from, and `sources` finds every record. */

import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { FIGURES } from '../../src/figures/all-figures.ts';
import type { Cited } from '../../src/figures/cited.ts';
import { fullName, isCalculating, optionsOf } from '../../src/input/command-shape.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { TICKS_PER_INCH, TICKS_PER_MM } from '../../src/units/length.ts';
import { replyTo } from '../chat/asked.ts';

/** Defaults that take nothing for granted: something is left out, or is not known. */
const NOTHING = ['none', 'sticks', 'no', 'unknown', 'computed', 'check', 'largest', '0', '0%'];

const shown = commands.filter(isCalculating).flatMap((command) =>
  optionsOf(command).flatMap((facts) => {
    const { standard } = facts;
    if (standard === undefined || (NOTHING.includes(standard) && !facts.record)) return [];
    return [{ command, ...facts, standard }];
  }),
);

/** What `sources` can show: every record, wherever its file keeps it. */
const TRADE = new URL('../../src/figures/', import.meta.url);

function isCited(value: unknown): value is Cited<unknown> {
  return (
    typeof value === 'object' && value !== null && ['name', 'said', 'value', 'source'].every((key) => key in value)
  );
}

async function recordsOf(file: string): Promise<readonly Cited<unknown>[]> {
  const exported = Object.values((await import(new URL(file, TRADE).href)) as Record<string, unknown>);
  return exported.flatMap((one) => {
    if (isCited(one)) return [one];
    return typeof one === 'object' && one !== null ? Object.values(one).filter(isCited) : [];
  });
}

describe('every default that help shows', () => {
  it('is among many', () => expect(shown.length).toBeGreaterThan(80));

  it.each(shown.map((one) => [`${fullName(one.command)} ${one.name}`, one] as const))(
    '%s has a record that sources shows',
    (_name, { record, standard }) => {
      expect(record, standard).toBeDefined();
      expect(FIGURES).toContain(record);
    },
  );

  it('is the figure of its record, where that is one length or number', () => {
    let compared = 0;
    for (const { command, name, kind, record, standard, metric } of shown) {
      const value = (record as Cited<unknown> | undefined)?.value;
      const read = (text: string): unknown =>
        command.options.shape[name]?.parse({
          text,
          reading: { option: name, preferences: DEFAULT_PREFERENCES, note: () => undefined },
        });
      if (kind !== 'length' || typeof value !== 'number') continue;
      compared++;
      expect(read(standard), `${fullName(command)} ${name}`).toBe(value);
      if (metric === undefined) continue;
      // Round in millimeters, or to the half where boards are sold so, and near the figure in inches.
      const length = read(metric) as number;
      expect((2 * length) % TICKS_PER_MM, `${name}: ${metric}`).toBe(0);
      expect(Math.abs(length - value), `${name}: ${metric}`).toBeLessThan(Math.max(0.08 * value, TICKS_PER_INCH / 32));
    }
    expect(compared).toBeGreaterThan(20);
  });

  it('that converts to no round figure has a metric one of its own', () => {
    for (const { command, name, kind, standard, metric } of shown)
      if (kind === 'length' && standard !== '0') expect(metric, `${fullName(command)} ${name}`).toBeDefined();
  });
});

describe('every record', () => {
  const files = readdirSync(TRADE).filter((file) => file.endsWith('.ts'));

  it.each(files)('of %s is one of the figures', async (file) => {
    for (const record of await recordsOf(file)) expect(FIGURES, record.name).toContain(record);
  });

  it('has a name of its own, words and a source with its standing', () => {
    const names = FIGURES.map(({ name }) => name);
    expect([...new Set(names)]).toEqual(names);
    for (const { name, said, source } of FIGURES) {
      expect(said.length, name).toBeGreaterThan(0);
      expect(source.title.length, name).toBeGreaterThan(3);
      expect(source.standing, name).toMatch(/^(?:published|reported|common practice|from memory)$/);
    }
  });

  it('is found by its name, and by what people call it', async () => {
    const found = async (about: string) =>
      ((await replyTo(`sources about: ${about}`)).data as unknown as { figures: readonly { name: string }[] }).figures;
    for (const { name } of FIGURES)
      expect(
        (await found(name)).map((one) => one.name),
        name,
      ).toContain(name);
    for (const word of ['acclimation', 'heated', 'asbestos', 'lead', 'film', 'stagger', 'gauge', 'useful life'])
      expect((await found(word)).length, word).toBeGreaterThan(0);
  });
});
