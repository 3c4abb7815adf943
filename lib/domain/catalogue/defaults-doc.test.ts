import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { citation, type SourceKey, type Source, sources, standingOf } from './sources';

// docs/defaults.md: what stands above its first table is written by hand, the tables follow the catalogue.
// After a change of the catalogue: npx vitest run lib/domain/catalogue/defaults-doc.test.ts -u
const doc = path.resolve('docs/defaults.md');
const catalogue = path.resolve('lib/domain/catalogue');

const sections: readonly (readonly [title: string, file: string])[] = [
  ['The society’s rules for ground and manure', 'settings'],
  ['Habits', 'habits'],
  ['Ways of digging', 'digging-methods'],
  ['Soils', 'soils'],
  ['Recipes', 'recipes'],
  ['Paces', 'paces'],
  ['Manure, compost and straw: density', 'materials'],
  ['Bales', 'bales'],
  ['Old heaps: how they shrink', 'heap-shrinkage'],
  ['Standing bookings: autumn', 'autumn'],
  ['Manure and compost: nutrients', 'nutrient-contents'],
  ['Manure: nitrogen for the next crop', 'nitrogen-availability'],
  ['Nitrogen: limits', 'nitrogen-limits'],
  ['Meals', 'meals'],
  ['What crops demand and remove', 'crop-demands'],
  ['Potatoes, by soil test', 'potato-advice'],
  ['Lime', 'lime-tables'],
  ['From manure to harvest', 'harvest-intervals'],
  ['The residue test', 'bioassay-protocols'],
  ['Cautions', 'cautions'],
  ['The store: kinds', 'keepings'],
  ['The store: published lives', 'storage-lives'],
  ['The store: curing', 'curings'],
  ['The store: too cold and too warm', 'store-limits'],
  ['The store: what stands apart', 'store-apart'],
  ['The store: published losses', 'storage-losses'],
  ['The store: what forecasts assume', 'store-model'],
  ['Dates: sowing, planting and clearing, at a last frost of 1 May and a first of 20 October', 'windows'],
  ['Harvests: published yields', 'published-yields'],
  ['Seed: distances', 'spacings'],
  ['Seed: weights', 'seed-weights'],
  ['Seed: germination', 'germination-standards'],
  ['Seed: how long it lives', 'seed-lives'],
  ['Seed: soil and days to emerge', 'soil-temperatures'],
];

type Row = { readonly what: readonly string[]; readonly value: string; readonly source: SourceKey };

const isSource = (value: unknown): value is SourceKey => typeof value === 'string' && Object.hasOwn(sources, value);
const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  value !== null && typeof value === 'object';

/** Every value of a module that names a source, however deep it lies. */
function rowsIn(value: unknown, what: readonly string[]): Row[] {
  if (!isObject(value)) return [];
  const entries = Array.isArray(value)
    ? value.map((item, at): [string, unknown] => [labelOf(item, at), item])
    : Object.entries(value);
  return entries.flatMap(([key, inner]): Row[] => {
    if (key === 'sources' && isObject(inner))
      return Object.entries(inner).flatMap(([of, source]) =>
        isSource(source) ? [{ what: [...what, of], value: String(value[of as never]), source }] : [],
      );
    if (isSource(inner) && /source$/i.test(key)) {
      const of = key.slice(0, -'source'.length);
      return [{ what: of ? [...what, of] : what, value: of ? '' : valueOf(value), source: inner }];
    }
    return rowsIn(inner, [...what, key]);
  });
}

function labelOf(item: unknown, at: number): string {
  const { key, materialKey, keepingKey, name, code, soil, fromPhTenths, ...row } = isObject(item) ? item : {};
  const said = [key, materialKey, keepingKey, name, code, soil].find((one) => typeof one === 'string');
  const concerned = [row.cropKeys, row.keepingKeys, row.harmedKeys].find(Array.isArray);
  if (typeof said === 'string') return code && concerned ? `${said} ${concerned.join(', ')}` : said;
  if (concerned) return concerned.join(', ');
  return typeof fromPhTenths === 'number' ? `from pH ${fromPhTenths / 10}` : String(at + 1);
}

const texts = [
  'key',
  'name',
  'says',
  'words',
  'german',
  'unit',
  'kind',
  'materialKey',
  'keepingKey',
  'text',
  'code',
  'typedIn',
];

function valueOf(row: Readonly<Record<string, unknown>>): string {
  if ('value' in row) return [row.value, row.unit].filter((one) => one !== undefined).join(' ');
  return Object.entries(row)
    .filter(([key]) => !texts.includes(key) && !/source$/i.test(key))
    .flatMap(([key, value]) => (isObject(value) || value === undefined ? [] : [`${key} ${value}`]))
    .join(', ');
}

async function rowsOf(file: string): Promise<Row[]> {
  const exported = (await import(path.join(catalogue, `${file}.ts`))) as Readonly<Record<string, unknown>>;
  const rows = Object.entries(exported).flatMap(([name, value]) => rowsIn(value, [name]));
  // Breaks, rules and troubles have tables of their own beside what they come from.
  if (file === 'settings') return rows.filter(({ what }) => !what.join().includes('.'));
  if (file === 'recipes')
    return gathered(rows, ({ what }) => {
      const [, group = '', field = ''] = what.join('.').split('.').slice(-3);
      return [field, group];
    });
  if (file === 'keepings') return gathered(rows, ({ what: [, kind = '', field = ''] }) => [field, kind]);
  // As printed: the values are the table's own.
  return file === 'crop-demands'
    ? gathered(
        rows.map((row) => ({ ...row, value: '' })),
        ({ what: [, name = '', part = 'demand'] }) => [part, name],
      )
    : rows;
}

// What several groups or crops have alike stands once.
function gathered(rows: readonly Row[], parted: (row: Row) => readonly [field: string, whose: string]): Row[] {
  const alike = new Map<string, Row>();
  for (const row of rows) {
    const [field, whose] = parted(row);
    const key = JSON.stringify([field, row.value, row.source]);
    const before = alike.get(key)?.what[1];
    alike.set(key, { ...row, what: [field, before ? `${before}, ${whose}` : whose] });
  }
  return [...alike.values()].sort((a, b) => (a.what[0] ?? '').localeCompare(b.what[0] ?? ''));
}

function sourceText(key: SourceKey): string {
  return standingOf(key) === 'published' ? key : `**${standingOf(key)}**`;
}

function citationLine(key: SourceKey): string {
  const { table }: Source = sources[key];
  return `| ${key} | ${citation(key)} | ${table} |`;
}

function lineOf({ what, value, source }: Row): string {
  const cells = [`\`${what.join(' · ')}\``, value, sourceText(source)];
  return `| ${cells.map((cell) => cell.replaceAll('|', '/')).join(' | ')} |`;
}

async function tables(): Promise<string> {
  const parts = await Promise.all(
    sections.map(async ([title, file]) => {
      const lines = (await rowsOf(file)).map(lineOf);
      const head = [`## ${title}`, '', `\`lib/domain/catalogue/${file}.ts\``, ''];
      return [...head, '| what | default | source |', '|---|---|---|', ...lines].join('\n');
    }),
  );
  const all = (await Promise.all(sections.map(([, file]) => rowsOf(file)))).flat();
  const used = [...new Set(all.map(({ source }) => source))].filter((key) => standingOf(key) === 'published').sort();
  const list = ['## The sources', '', '| source | publisher, title, year | table |', '|---|---|---|'];
  return `${[...parts, [...list, ...used.map(citationLine)].join('\n')].join('\n\n')}\n`;
}

describe('docs/defaults.md', () => {
  it('tells of every default where it comes from', async () => {
    const [head = ''] = fs.readFileSync(doc, 'utf8').split(/^## /m);
    expect(head).toContain('# Where the defaults come from');
    await expect(`${head}${await tables()}`).toMatchFileSnapshot(doc);
  });

  it('lists all that is from memory, wherever it stands in the catalogue of ground, manure, nutrients, lime and safety', async () => {
    const text = fs.readFileSync(doc, 'utf8');
    const files = sections.map(([, file]) => file);
    const remembering = fs
      .readdirSync(catalogue)
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && name !== 'sources.ts')
      .filter((name) => fs.readFileSync(path.join(catalogue, name), 'utf8').includes("'from-memory'"))
      .map((name) => name.slice(0, -'.ts'.length));
    // Crops and troubles are told of on their own screens, each row with its source.
    expect(remembering.filter((file) => !files.includes(file))).toEqual(['crops', 'troubles']);
    for (const file of remembering.filter((one) => files.includes(one))) {
      const remembered = (await rowsOf(file)).filter(({ source }) => source === 'from-memory');
      const written = fs.readFileSync(path.join(catalogue, `${file}.ts`), 'utf8').split("'from-memory'").length - 1;
      expect([file, remembered.length]).toEqual([file, written]);
      for (const row of remembered) expect(text).toContain(lineOf(row));
    }
  });
});
