import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { tablesFor } from '@/lib/domain/export/export-table';
import { exportTables } from '@/lib/domain/export/export-tables';
import { exportSociety, readOwnArchive, readSocietyArchive } from '@/lib/usecases/export/export-society';
import { readBook } from '@/lib/usecases/book/read-book';
import { fillSociety, type FilledSociety } from '../access/society';
import { done, once } from '../fixtures/society';
import { bytesOf, unzipped } from '../fixtures/unzip';

let society: FilledSociety;
let zip: Buffer;
let files: Map<string, string>;
type Rows = Record<string, string>[];
const rowsIn = (name: string, from = files): Rows => parse(from.get(name) ?? '', { bom: true, columns: true });

beforeAll(async () => {
  society = await fillSociety();
  // As many as are read in several portions, one of them with everything that a table must stand.
  const { id: societyId, ids } = society;
  const plain = { societyId, frameId: (await db().plot.findFirstOrThrow({ where: { id: ids.plotId } })).frameId };
  const data = {
    ...plain,
    bedId: ids.bedId,
    xCm: 0,
    yCm: 0,
    widthCm: 10,
    lengthCm: 10,
    firstSeason: 1990,
    lastSeason: 1990,
  };
  await db().planting.createMany({ data: Array.from({ length: 2500 }, () => ({ ...data, cropKey: 'leek' })) });
  await db().member.update({
    where: { id: ids.noAccountId },
    data: { name: '=HYPERLINK("x","y"), of "both"', postal: 'One\nTwo, Zoë 🌱', phone: '+44 1234' },
  });
  const read = await readSocietyArchive.run(society.callers.secretary, {});
  expect(read.name).toMatch(new RegExp(`^${society.slug}-\\d{4}-\\d\\d-\\d\\d\\.zip$`));
  zip = await bytesOf(read.archive);
  expect(zip.length).toBe(read.archive.size);
  files = unzipped(zip);
});

describe('the society’s archive', () => {
  it('is read alike by another program and by the one that wrote it', () => {
    const other = Object.entries(unzipSync(zip)).map(([name, bytes]) => [name, Buffer.from(bytes).toString('utf8')]);
    expect(new Map(other as [string, string][])).toEqual(files);
  });

  it.each(tablesFor(exportTables, 'society').map((one) => [one.table, one] as const))(
    'has every row of %s',
    async (table, { file, societyWhere }) => {
      const own = table === 'Society' ? '"id"' : '"societyId"';
      const [counted] = await db().$queryRawUnsafe<{ count: bigint }[]>(
        `SELECT count(*) AS "count" FROM "${table}" WHERE ${own} = '${society.id}'${societyWhere ? ` AND "${societyWhere}" IS NOT NULL` : ''}`,
      );
      expect(rowsIn(file)).toHaveLength(Number(counted?.count));
    },
  );

  it('keeps what was typed, and lets no cell begin a formula', async () => {
    const member = rowsIn('members.csv').find(({ id }) => id === society.ids.noAccountId);
    expect(member).toMatchObject({
      name: `'=HYPERLINK("x","y"), of "both"`,
      postal: 'One\nTwo, Zoë 🌱',
      phone: "'+44 1234",
      joinedOn: '2019-10-01',
      leftOn: '',
    });
    expect(member?.createdAt).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/);
    const credits = rowsIn('credits.csv').map(({ changeMillionths }) => Number(changeMillionths));
    expect(Math.min(...credits)).toBeLessThan(0);
    expect(credits.reduce((sum, one) => sum + one, 0)).toBe(0);
    expect(files.get('members.csv')).toContain('\r\n');
  });

  it('has links that lead somewhere', () => {
    const idsOf = (name: string) => new Set(rowsIn(name).map(({ id }) => id));
    const links: [string, string, string][] = [
      ['bookings.csv', 'holdingId', 'holdings.csv'],
      ['bookings.csv', 'deliveryId', 'deliveries.csv'],
      ['collections.csv', 'bookingId', 'bookings.csv'],
      ['plantings.csv', 'bedId', 'beds.csv'],
      ['beds.csv', 'plotId', 'plots.csv'],
      ['tenancies.csv', 'holdingId', 'holdings.csv'],
      ['holders.csv', 'memberId', 'members.csv'],
    ];
    for (const [file, column, to] of links) {
      const there = idsOf(to);
      const rows = rowsIn(file);
      expect(rows.length).toBeGreaterThan(0);
      expect([file, column, rows.filter((row) => !there.has(row[column] ?? ''))]).toEqual([file, column, []]);
    }
  });

  it('says of every file and column what it is, and has the drawing and the rules', () => {
    const readMe = files.get('README.txt') ?? '';
    for (const [name, text] of files) {
      if (name.endsWith('.csv'))
        for (const head of parse(text, { bom: true })[0] as string[]) expect(readMe).toContain(`  ${head}: `);
      if (name !== 'README.txt') expect(readMe).toContain(`\n${name}\n`);
    }
    const ground = JSON.parse(files.get('ground.json') ?? '');
    expect(ground.sites[0].plots.map(({ id }: { id: string }) => id)).toContain(society.ids.plotId);
    const { rules } = JSON.parse(files.get('settings.json') ?? '') as { rules: { key: string; value: unknown }[] };
    expect(rules.find(({ key }) => key === 'barrowLitres')).toMatchObject({ value: 85, default: 85, unit: 'L' });
  });

  it('leaves no file behind', () =>
    expect
      .poll(() => fs.readdirSync(os.tmpdir()).filter((name) => name.startsWith('barrowmoot-archive-')))
      .toEqual([]));
});

describe('taking it out', () => {
  it('is noted in the book, once however often the form is sent', async () => {
    const input = once({});
    for (let times = 0; times < 2; times++) await done(exportSociety.run(society.callers.secretary, input));
    const noted = await db().auditRow.findMany({ where: { societyId: society.id, verb: 'exported' } });
    expect(noted).toMatchObject([{ thing: 'society', writeId: input.writeId }]);
    expect(JSON.stringify(await readBook.run(society.callers.chair, {}))).toContain('exported');
  });

  it('is refused without the form’s number', async () =>
    expect((await exportSociety.run(society.callers.secretary, { writeId: `${randomUUID()}x` })).ok).toBe(false));
});

describe('a member’s own archive', () => {
  it('has their plantings with the notes, their bookings and their account, and no row of anybody else’s', async () => {
    const read = await readOwnArchive.run(society.callers.holder, {});
    const own = unzipped(await bytesOf(read.archive));
    const { ids } = society;
    expect(rowsIn('plantings.csv', own)).toMatchObject([
      { id: ids.plantingId, notes: expect.stringContaining('holder notes') },
    ]);
    const bookings = rowsIn('bookings.csv', own);
    expect(new Set(bookings.map(({ holdingId }) => holdingId))).toEqual(new Set([ids.holdingId]));
    expect(bookings).toHaveLength(await db().booking.count({ where: { holdingId: ids.holdingId } }));
    expect(rowsIn('members.csv', own).map(({ id }) => id)).toEqual([ids.holderId]);
    expect(rowsIn('deliveries.csv', own)).toHaveLength(bookings.length);
    expect(rowsIn('trenches.csv', own)).toHaveLength(1);
    expect(rowsIn('collections.csv', own).every(({ bookingId }) => bookings.some(({ id }) => id === bookingId))).toBe(
      true,
    );
    expect(JSON.parse(own.get('account.json') ?? '')).toMatchObject({ email: expect.stringContaining('sign-in') });
    expect([...own.keys()]).not.toContain('suppliers.csv');
  });
});
