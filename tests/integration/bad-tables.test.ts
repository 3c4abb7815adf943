import { beforeAll, describe, expect, it } from 'vitest';
import { wordsFor } from '@/app/_server/words';
import { db } from '@/lib/data/db';
import { importPlantings } from '@/lib/usecases/ground/import-plantings';
import type { Outcome } from '@/lib/usecases/refusal';
import { importPlots } from '@/lib/usecases/plots/import-plots';
import { fingerprint } from '../access/answers';
import { makeBed, makeMember, makePlot, makeSociety, once, type TestSociety } from '../fixtures/society';

let society: TestSociety;
let plotId: string;
const from = '2026-11-01';
const tenMegabytes = 10 * 1024 * 1024;
const lines = (count: number, line: (nth: number) => string) =>
  Array.from({ length: count }, (_, nth) => line(nth)).join('\n');

beforeAll(async () => {
  society = await makeSociety();
  const holder = await makeMember(society);
  const plot = await makePlot(society, 'P1', [holder.id]);
  plotId = plot.plotId;
  await makeBed(society, plot);
});

const plots = (table: string) =>
  importPlots.run(society.secretary.caller, once({ siteId: society.siteId, table, from }));
const plantings = (table: string) => importPlantings.run(society.secretary.caller, once({ plotId, table }));

/** What a table was refused with, each fault in a line; fails where it was taken or anything was written. */
async function refusalOf(taking: (table: string) => Promise<Outcome<unknown>>, table: string): Promise<string> {
  const before = await fingerprint();
  const outcome = await taking(table);
  expect(outcome.ok, table.slice(0, 80)).toBe(false);
  expect(await fingerprint()).toBe(before);
  const words = outcome.ok ? [] : outcome.refusals.map(wordsFor);
  expect(
    words.filter((sentence) => /invalid|received|undefined|\[object|\bNaN\b/i.test(sentence) || sentence.length > 600),
  ).toEqual([]);
  return words.join('\n');
}

describe('a list of plots', () => {
  it.each([
    ['a byte-order mark and line ends of Windows', '\uFEFFplot,rods\r\nA1,10\r\n'],
    ['line ends of an old Mac', 'plot,rods\rA2,10\r'],
    ['semicolons and decimal commas', 'plot;rods\nA3;2,5'],
    ['tabs', 'plot\trods\tholders\nA4\t10\tAda Moss'],
    ['columns in another order and another case', 'HOLDER,Size,Plot Number\nAda Moss,10,A5'],
    ['empty lines, and lines of commas alone, at either end', '\n\nplot,rods,holders\n\nA6,10,\n,,\n,,\n'],
    ['cells left off at the end of a line', 'plot,rods,holders,email\nA7,10'],
    ['quoted cells with spaces around them', 'plot,rods,holders\n A8 , "10" ,"  Ada Moss "'],
  ])('takes %s', async (_, table) => {
    expect(await plots(table)).toMatchObject({ ok: true, value: { plots: 1 } });
  });

  it.each(['=1+1', '+44', '-2', '@SUM(A1)', '=HYPERLINK("x")'])('takes %s as the text it is', async (cell) => {
    const quoted = `"${cell.replaceAll('"', '""')}"`;
    expect(await plots(`plot,rods,holders\n${quoted},10,${quoted}`)).toMatchObject({ ok: true });
    expect(await db().plot.count({ where: { societyId: society.id, number: cell } })).toBe(1);
    expect(await db().member.count({ where: { societyId: society.id, name: cell } })).toBe(1);
  });

  it('keeps other scripts exactly', async () => {
    const name = 'عائشة 🌱 e\u0301';
    expect(await plots(`plot,rods,holders\n７号,10,${name}`)).toMatchObject({ ok: true });
    expect(await db().plot.count({ where: { societyId: society.id, number: '７号' } })).toBe(1);
    expect(await db().member.count({ where: { societyId: society.id, name } })).toBe(1);
  });

  it('is counted in lines however its line ends are written', async () => {
    for (const end of ['\n', '\r\n', '\r']) {
      const table = ['plot,rods,holders', 'B1,10,"Ada', 'Moss"', '', 'B2,ten,'].join(end);
      const words = await refusalOf(plots, table);
      expect(words).toMatch(/Line 2, column “holders”: Keep the holder’s name to one line/);
      expect(words).toMatch(/Line 5, column “rods”: Give the size in rods/);
    }
  });

  it.each([
    ['nothing', '', /table is empty/],
    ['only spaces and line ends', ' \n\t\r\n ', /table is empty/],
    ['no heading line', 'B1,10', /Line 1: The heading line lacks “plot” and “rods”/],
    ['a heading misspelt', 'plot,rods,holdrs\nB1,10,Ada', /Line 1, column “holdrs”: No column of that name/],
    ['a heading twice', 'plot,rods,plot\nB1,10,B2', /Line 1, column “plot”: The column “plot” is there twice/],
    [
      'two headings for one column',
      'plot,number,rods\nB1,B2,10',
      /Line 1, column “number”: The column “plot” is there twice/,
    ],
    ['a column lacking', 'plot,holders\nB1,Ada', /Line 1: The heading line lacks “rods”/],
    ['a cell too many', 'plot,rods\nB1,10\nB2,10,more', /Line 3: It has more cells than the heading line/],
    ['a cell under an empty heading', 'plot,rods,\nB1,10,more', /Line 2: It has more cells/],
    ['a cell too few', 'plot,rods\nB1,10\nB2', /Line 3, column “rods”: Give the size in rods/],
    ['a plot twice', 'plot,rods\nB1,10\n" b1 ",10', /Line 3, column “plot”: Plot b1 stands on line 2 already/],
    ['a plot that is there', 'plot,rods\np1,10', /Line 2, column “plot”: Plot p1 is there already/],
    ['31 February', 'plot,rods,from\nB1,10,31/02/2020', /Line 2, column “from”: Give a real day from 1900 on/],
    ['a day before 1900', 'plot,rods,from\nB1,10,1899-12-31', /Line 2, column “from”: Give a real day from 1900 on/],
    ['digits of another script', 'plot,rods\nB1,٧', /Line 2, column “rods”/],
    ['a number that is none', 'plot,rods\nB1,1e308', /Line 2, column “rods”/],
    ['half a character', 'plot,rods\nB\ud83d,10', /Line 2: A sign here could not be read/],
    ['what was no UTF-8', 'plot,rods,holders\nB1,10,Zo\ufffd', /Line 2: A sign here could not be read/],
    ['a NUL', 'plot,rods,phone\nB1,10,0\u00007', /Line 2, column “phone”/],
    ['an address that is none', 'plot,rods,holders,email\nB1,10,Ada,nobody', /Line 2, column “email”/],
    ['a quotation mark left open', 'plot,rods\nB1,10\n"B2,10', /Line 3: A quotation mark/],
    ['a heading of JavaScript’s own', '__proto__,plot,rods\nx,B1,10', /Line 1, column “__proto__”: No column/],
    [
      'a cell without end',
      `plot,rods,holders\nB1,10,${'&x'.repeat(300_000)}`,
      /Line 2, column “holders”: Keep a cell to 500/,
    ],
    [
      '10 MB in one cell',
      `plot,rods\n${'x'.repeat(tenMegabytes - 20)},10`,
      /Line 2, column “plot”: Keep a cell to 500/,
    ],
    ['more than 10 MB', `plot,rods\n${'x'.repeat(tenMegabytes)}`, /larger than 10 MB/],
    ['more than 10 MB in other scripts', `plot,rods\n${'号'.repeat(tenMegabytes / 2)}`, /larger than 10 MB/],
    ['100,000 lines', `plot,rods\n${lines(100_000, (nth) => `B${nth},10`)}`, /more than 5,000 lines/],
  ])('refuses %s, by line, column and reason', async (_, table, words) => {
    expect(await refusalOf(plots, table)).toMatch(words);
  });

  it('names every bad cell, not the first alone, and what is there already beside them', async () => {
    expect(await refusalOf(plots, 'plot,rods\nP1,10\nB1,x')).toMatch(/Line 2, column “plot”.*\nLine 3, column “rods”/);
    const words = await refusalOf(plots, 'plot,rods,holders,email,from\n,0,Ada,no,2020-02-30\nB1,10,Ada,,\nB1,x,Bo,,');
    for (const cell of [
      'Line 2, column “plot”',
      'Line 2, column “rods”',
      'Line 2, column “email”',
      'Line 2, column “from”',
    ])
      expect(words).toContain(cell);
    expect(words).toContain('Line 4, column “rods”');
    expect(words).toContain('Plot B1 stands on line 3 already');
  });

  it('takes in as many lines as it says it does, and says which is one too many', async () => {
    const table = (count: number) => `plot,rods,holders\n${lines(count, (nth) => `C${nth},10,Holder ${nth}`)}`;
    await refusalOf(plots, table(5001));
    expect(await plots(table(5000))).toMatchObject({ ok: true, value: { plots: 5000, members: 5000 } });
  });
});

describe('a table of plantings', () => {
  it.each([
    ['a byte-order mark, semicolons and line ends of Windows', '\uFEFFbed;crop;season\r\n1;Leek;2001\r\n'],
    ['line ends of an old Mac', 'bed,crop,season\r1,leek,2002\r'],
    ['columns in another order and another case', 'YEAR,Vegetable,Bed Name\n2003,LEEK,1'],
    ['a day written day first', 'bed,crop,sown\n1,leek,21/3/2004'],
  ])('takes %s', async (_, table) => {
    expect(await plantings(table)).toMatchObject({ ok: true, value: { recorded: 1 } });
  });

  it.each(['=1+1', '+1', '-1', '@x', 'عائشة 🌱'])('keeps the variety %s as the text it is', async (variety) => {
    expect(await plantings(`bed,crop,season,variety\n1,leek,2005,${variety}`)).toMatchObject({ ok: true });
    expect(await db().planting.count({ where: { societyId: society.id, variety } })).toBe(1);
  });

  it.each([
    ['no heading line', '1,leek,2001', /Line 1: The heading line lacks “bed” and “crop”/],
    ['a heading misspelt', 'bed,crop,saeson\n1,leek,2001', /Line 1, column “saeson”: No column/],
    ['a bed that is not there', 'bed,crop,season\n9,leek,2001', /Line 2, column “bed”: There is no bed 9 on this plot/],
    [
      'a crop that nobody knows',
      'bed,crop,season\n1,=1+1,2001',
      /Line 2, column “crop”: There is no crop called =1\+1/,
    ],
    ['a season of words', 'bed,crop,season\n1,leek,last', /Line 2, column “season”: Give the season as a year/],
    ['a season before 1900', 'bed,crop,season\n1,leek,1899', /Line 2, column “season”/],
    ['a season too far off', 'bed,crop,season\n1,leek,2199', /Line 2, column “season”: Give a season from 1900 to/],
    ['no season and no day', 'bed,crop\n1,leek', /Line 2, column “season”: Give the season, or the day/],
    ['31 February', 'bed,crop,sown\n1,leek,31/2/2001', /Line 2, column “sown”: Give a real day from 1900 on/],
    ['a day before 1900', 'bed,crop,planted\n1,leek,1899-12-31', /Line 2, column “planted”/],
    [
      'cleared before sown',
      'bed,crop,sown,cleared\n1,leek,2001-05-01,2001-04-01',
      /Line 2, column “cleared”: It cannot be cleared before/,
    ],
    ['a length that is none', 'bed,crop,season,from\n1,leek,2001,-1', /Line 2, column “from”: That is not a length/],
    [
      'a part outside its bed',
      'bed,crop,season,length\n1,leek,2001,9 m',
      /Line 2, column “length”: That part reaches past/,
    ],
    [
      'a variety too long',
      `bed,crop,season,variety\n1,leek,2001,${'x'.repeat(61)}`,
      /Line 2, column “variety”: Keep the variety to 60/,
    ],
    ['a cell too many', 'bed,crop,season\n1,leek,2001,more', /Line 2: It has more cells/],
    ['10 MB in one cell', `bed,crop\n1,${'x'.repeat(tenMegabytes - 20)}`, /Line 2, column “crop”: Keep a cell to 500/],
    ['100,000 lines', `bed,crop,season\n${lines(100_000, () => '1,leek,2001')}`, /more than 5,000 lines/],
  ])('refuses %s, by line, column and reason', async (_, table, words) => {
    expect(await refusalOf(plantings, table)).toMatch(words);
  });
});
