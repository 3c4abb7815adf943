import { describe, expect, test } from 'vitest';
import { cropDemands } from '@/lib/domain/catalogue/crop-demands';
import { demandOf, demandOfRow } from '@/lib/domain/nutrients/demand';

// Germany, Düngeverordnung of 2017 as of 2021, Anlage 4 Tabelle 4 (yield, nitrogen demand) and Anlage 7 Tabelle 2
// (contents of what is harvested): all 78 rows, for a square metre. Yield [kg], demand [g N], and what the harvest
// removes [g N, g P2O5], each by arithmetic on the printed row and to a tenth; null where the law prints none.
// biome-ignore format: one row of the law a line
const printed: readonly [german: string, yieldKg: number | null, demandG: number | null, nitrogenG: number | null, phosphateG: number | null][] = [
  ['Blumenkohl', 3.5, 30, 9.8, 3.6],
  ['Brokkoli', 1.5, 31, 6.8, 2.2],
  ['Buschbohnen', 1.2, 11, 3, 1.1],
  ['Chicoréerüben', 4.5, 13.5, 11.2, 5.4],
  ['Chinakohl', 7, 21, 10.5, 6.4],
  ['Dill, Frischmarkt', 2, 8.5, 6, 1.8],
  ['Dill, Industrieware', 2.5, 10.5, 7.5, 2.3],
  ['Erdbeeren, Pflanzung', null, 6, null, null],
  ['Erdbeeren, Frühjahr', 1.4, 6, 2.4, 0.7],
  ['Erdbeeren, nach Ernte', 1.4, 6, null, null],
  ['Feldsalat', 0.8, 8.5, 3.6, 0.8],
  ['Feldsalat, großblättrig', 1.3, 11, 5.9, 1.3],
  ['Gemüseerbse', 0.8, 8.5, 8, 1.8],
  ['Grünkohl', 4, 20, 19.6, 6.5],
  ['Gurke, Einleger', 8, 21, 12, 5.5],
  ['Knollenfenchel', 4, 20, 8, 2.8],
  ['Kohlrabi', 4.5, 23, 12.6, 4.6],
  ['Kürbis', 4, 14, 10, 8.2],
  ['Mairüben (mit Laub)', 6.5, 17, 11.1, 6.7],
  ['Möhren, Bund-', 6, 11.5, 10.2, 4.9],
  ['Möhren, Industrie', 9, 16.5, 11.7, 7.2],
  ['Möhren, Wasch-', 7, 12.5, 9.1, 5.6],
  ['Pastinake', 4, 14, 10, 9.4],
  ['Petersilie, Blatt-, bis 1. Schnitt', 2.4, 16, 10.8, 2.8],
  ['Petersilie, Blatt-, nach einem Schnitt', 1.6, 10, 7.2, 1.8],
  ['Petersilie, Wurzel-', 4, 13, 16.8, 5.5],
  ['Porree', 6, 25, 15, 4.8],
  ['Radies', 3, 11, 6, 2.1],
  ['Rettich, Bund-', 5, 14, 8.5, 3.8],
  ['Rettich, deutsch', 5.5, 17.5, 7.7, 4.4],
  ['Rettich, japanisch', null, 23, null, null],
  ['Rhabarber 1. Standjahr', null, 13, null, null],
  ['Rhabarber 2. Standjahr Austrieb', 1, 10, null, null],
  ['Rhabarber 3. Standjahr Austrieb', 2, 12, null, null],
  ['Rhabarber ab 4. Standjahr Austrieb', 3.5, 14, 6.3, 1.7],
  ['Rhabarber 2. Standjahr nach Ernte', null, 15, null, null],
  ['Rhabarber 3. Standjahr nach Ernte', null, 17, null, null],
  ['Rhabarber ab 4. Standjahr nach Ernte', null, 14, null, null],
  ['Rosenkohl', 2.5, 31, 16.2, 4.9],
  ['Rote Rüben', 6, 25, 16.8, 6.9],
  ['Rotkohl', 6, 26, 13.2, 4.8],
  ['Rucola, Feinware', 1.75, 15, 7, 1.8],
  ['Rucola, Grobware', 3, 21, 12, 3.1],
  ['Salate, Baby Leaf Lettuce', 1.4, 9, 4.9, 1.1],
  ['Salate, Blatt-, grün (Lollo, Eichblatt, Krul)', 3.5, 13, 6.7, 2.4],
  ['Salate, Blatt-, rot (Lollo, Eichblatt, Krul)', 3, 11.5, 5.7, 2.1],
  ['Salate, Eissalat', 6, 17.5, 8.4, 3.4],
  ['Salate, Endivien, Frisée', 3.5, 15, 8.8, 2.1],
  ['Salate, Endivien, glattblättrig', 6, 19, 12, 3.6],
  ['Salate, Kopfsalat', 5, 15, 9, 3.5],
  ['Salate, Radicchio', 2.8, 14, 7, 2.6],
  ['Salate, verschiedene Arten', 4.5, 15, 8.6, 3.1],
  ['Salate, Romana', 4.5, 14, 9, 4.1],
  ['Salate, Romana Herzen', 3, 15, 7.2, 2.8],
  ['Salate, Zuckerhut', 6, 19, 12, 6.9],
  ['Schnittlauch, gesät, bis 1. Schnitt', 3, 21, 15, 4.1],
  ['Schnittlauch, gesät, nach einem Schnitt', 2, 18, 10, 2.7],
  ['Schnittlauch, Anbau für Treiberei', 2.8, 24, 14, 3.8],
  ['Schwarzwurzel', 2, 7.5, 4.6, 3.2],
  ['Sellerie, Bund-', 6, 20.5, 16.2, 7.6],
  ['Sellerie, Knollen-', 6.5, 22, 16.2, 9.7],
  ['Sellerie, Stangen-', 5, 23, 12.5, 5.8],
  ['Spargel 1. Standjahr', null, 14, null, null],
  ['Spargel 2. Standjahr', 0.2, 16, null, null],
  ['Spargel 3. Standjahr', 0.8, 16, null, null],
  ['Spargel ab 4. Standjahr', 1, 8, 2.6, 0.8],
  ['Spinat, Blatt-, FM, Baby', 1, 10, 4.5, 1.2],
  ['Spinat, Blatt-, Standard', 2.5, 19, 10, 2.9],
  ['Spinat, Hack, Standard', 3, 20.5, 10.8, 3.5],
  ['Stangenbohne, Standard', 2.5, 10, 6.2, 2.3],
  ['Teltower Rübchen (Herbstanbau)', 1.5, 11, 6.8, 3.6],
  ['Weißkohl, Frischmarkt', 7, 26, 14, 5.1],
  ['Weißkohl, Industrie', null, 32, null, null],
  ['Wirsing', 4, 28.5, 14, 4.6],
  ['Zucchini', 6.5, 25, 10.4, 3.9],
  ['Zuckermais', 2, 16, 7, 3.2],
  ['Zwiebel, Bund-', 6.8, 21, 13.6, 4.1],
  ['Zwiebel, Trocken-', 6, 15.5, 10.8, 4.8],
];

const rowOf = (german: string) => cropDemands.find((row) => row.german === german) ?? expect.fail(german);

describe('the official demand and removal of vegetables', () => {
  test('every row of the law is in the catalogue, and no other vegetable', () => {
    const vegetables = cropDemands.filter(({ source }) => source === 'duev-vegetables');
    expect(vegetables.map(({ german }) => german)).toEqual(printed.map(([german]) => german));
    expect(printed).toHaveLength(78);
  });

  test.each(printed)('%s', (german, yieldKg, demandG, nitrogenG, phosphateG) => {
    const demand = demandOfRow(rowOf(german));
    const pairs = [
      [demand.yieldGPerM2, yieldKg],
      [demand.totalNitrogenMgPerM2, demandG],
      [demand.removedNitrogenMgPerM2, nitrogenG],
      [demand.removedPhosphateMgPerM2, phosphateG],
    ] as const;
    // The list leaves a yield of 0, and of 1,000 dt/ha, out.
    for (const [thousandths, expected] of pairs)
      if (expected !== null)
        expect(Math.abs((thousandths ?? Number.NaN) / 1000 - expected)).toBeLessThanOrEqual(0.0501);
  });
});

describe('the same figures elsewhere', () => {
  const figures = (cropKey: string, name: string) => {
    const { yieldGPerM2, totalNitrogenMgPerM2 } =
      demandOf(cropKey).demands.find((demand) => demand.name === name) ?? expect.fail(name);
    // In dt/ha and kg/ha, as they are printed.
    return [(yieldGPerM2 ?? 0) / 10, (totalNitrogenMgPerM2 ?? 0) / 100];
  };

  // Landesbetrieb Landwirtschaft Hessen, page on the nitrogen demand of crops: sweetcorn 200/160, potato 450/180, early
  // potato 400/220.
  test('Hesse', () => {
    expect(figures('sweetcorn', 'Sweetcorn')).toEqual([200, 160]);
    expect(figures('maincrop-potato', 'Potato, maincrop')).toEqual([450, 180]);
    expect(figures('early-potato', 'Potato, early')).toEqual([400, 220]);
  });

  // Landwirtschaftskammer Schleswig-Holstein, sheet on vegetables: endive 600/190, frisée 350/150.
  test('Schleswig-Holstein', () => {
    expect(figures('endive', 'Endive, broad')).toEqual([600, 190]);
    expect(figures('endive', 'Endive, frisée')).toEqual([350, 150]);
  });

  // Düngeverordnung, Anlage 7 Tabelle 1: tubers hold 0.35 kg N and 0.14 kg P2O5 a dt, so 450 dt remove 157.5 and 63
  // kg/ha.
  test('maincrop potatoes remove 157.5 kg N and 63 kg P2O5 a hectare', () =>
    expect(demandOf('maincrop-potato').demands[0]).toMatchObject({
      removedNitrogenMgPerM2: 15_750,
      removedPhosphateMgPerM2: 6300,
    }));
});

// GOV.UK, Using nitrogen fertilisers in nitrate vulnerable zones, most nitrogen by crop [kg/ha].
test.each([
  ['maincrop-potato', 270],
  ['pea', 0],
  ['field-bean', 0],
  ['asparagus', 180],
  ['carrot', 180],
  ['radish', 180],
  ['swede', 180],
  ['celery', 280],
  ['courgette', 280],
  ['french-bean', 280],
  ['lettuce', 280],
  ['onion', 280],
  ['parsnip', 280],
  ['runner-bean', 280],
  ['sweetcorn', 280],
  ['turnip', 280],
])('the most nitrogen for %s is %s kg/ha', (cropKey, kgPerHa) =>
  expect(demandOf(cropKey).ceiling).toEqual({ mgPerM2: kgPerHa * 100, source: 'nvz-crops' }),
);
