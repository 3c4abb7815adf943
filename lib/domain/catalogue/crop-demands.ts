import type { SourceKey } from './sources';

/** One row of the official tables: what a crop wants in all, and what its harvest takes away. As printed there. */
export type CropDemand = {
  readonly name: string;
  readonly german: string;
  /** Crops of the catalogue that the row speaks of; several rows may speak of one. */
  readonly cropKeys: readonly string[];
  /** Reference yield, fresh [dt/ha]. */
  readonly yieldDtPerHa: number | null;
  /** All the nitrogen that the crop must find, the soil's own to the depth included. It is no dose. */
  readonly demandKgPerHa: number | null;
  readonly soilDepthCm: number | null;
  /** What its residues leave to a following crop of the same year. */
  readonly residueKgPerHa: number | null;
  /** In the harvested part, as N and as P2O5. */
  readonly nitrogenKgPer100Dt: number | null;
  readonly phosphateKgPer100Dt: number | null;
  readonly source: SourceKey;
  readonly contentsSource: SourceKey;
};

type Row = Omit<CropDemand, 'source' | 'contentsSource'>;

/**
 * Vegetables and strawberries, all 78 rows. A crop that is not named there has none: broad and runner bean, mangetout,
 * tomato, garlic, shallot, pepper, spring cabbage, purple sprouting broccoli, pak choi and others. "Salads, other"
 * names no crop.
 */
// biome-ignore format: one row of the table a line
const vegetables: readonly Row[] = [
  { name: 'Cauliflower', german: 'Blumenkohl', cropKeys: ['cauliflower'], yieldDtPerHa: 350, demandKgPerHa: 300, soilDepthCm: 60, residueKgPerHa: 80, nitrogenKgPer100Dt: 28, phosphateKgPer100Dt: 10.3 },
  { name: 'Broccoli (calabrese)', german: 'Brokkoli', cropKeys: ['calabrese'], yieldDtPerHa: 150, demandKgPerHa: 310, soilDepthCm: 60, residueKgPerHa: 100, nitrogenKgPer100Dt: 45, phosphateKgPer100Dt: 14.9 },
  { name: 'Dwarf French bean', german: 'Buschbohnen', cropKeys: ['french-bean'], yieldDtPerHa: 120, demandKgPerHa: 110, soilDepthCm: 60, residueKgPerHa: 45, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 9.2 },
  { name: 'Chicory roots', german: 'Chicoréerüben', cropKeys: ['chicory'], yieldDtPerHa: 450, demandKgPerHa: 135, soilDepthCm: 90, residueKgPerHa: 40, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 12.1 },
  { name: 'Chinese cabbage', german: 'Chinakohl', cropKeys: ['chinese-cabbage'], yieldDtPerHa: 700, demandKgPerHa: 210, soilDepthCm: 60, residueKgPerHa: 45, nitrogenKgPer100Dt: 15, phosphateKgPer100Dt: 9.2 },
  { name: 'Dill, fresh', german: 'Dill, Frischmarkt', cropKeys: ['dill'], yieldDtPerHa: 200, demandKgPerHa: 85, soilDepthCm: 30, residueKgPerHa: 5, nitrogenKgPer100Dt: 30, phosphateKgPer100Dt: 9.2 },
  { name: 'Dill, processing', german: 'Dill, Industrieware', cropKeys: ['dill'], yieldDtPerHa: 250, demandKgPerHa: 105, soilDepthCm: 30, residueKgPerHa: 25, nitrogenKgPer100Dt: 30, phosphateKgPer100Dt: 9.2 },
  { name: 'Strawberry, planting', german: 'Erdbeeren, Pflanzung', cropKeys: ['strawberry'], yieldDtPerHa: 0, demandKgPerHa: 60, soilDepthCm: 30, residueKgPerHa: 0, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Strawberry, spring', german: 'Erdbeeren, Frühjahr', cropKeys: ['strawberry'], yieldDtPerHa: 140, demandKgPerHa: 60, soilDepthCm: 30, residueKgPerHa: 0, nitrogenKgPer100Dt: 17, phosphateKgPer100Dt: 5 },
  { name: 'Strawberry, after harvest', german: 'Erdbeeren, nach Ernte', cropKeys: ['strawberry'], yieldDtPerHa: 140, demandKgPerHa: 60, soilDepthCm: 30, residueKgPerHa: 0, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Corn salad', german: 'Feldsalat', cropKeys: ['lambs-lettuce'], yieldDtPerHa: 80, demandKgPerHa: 85, soilDepthCm: 15, residueKgPerHa: 5, nitrogenKgPer100Dt: 45, phosphateKgPer100Dt: 9.9 },
  { name: 'Corn salad, large-leaved', german: 'Feldsalat, großblättrig', cropKeys: ['lambs-lettuce'], yieldDtPerHa: 130, demandKgPerHa: 110, soilDepthCm: 15, residueKgPerHa: 5, nitrogenKgPer100Dt: 45, phosphateKgPer100Dt: 9.9 },
  { name: 'Garden pea', german: 'Gemüseerbse', cropKeys: ['pea'], yieldDtPerHa: 80, demandKgPerHa: 85, soilDepthCm: 60, residueKgPerHa: 65, nitrogenKgPer100Dt: 100, phosphateKgPer100Dt: 22.9 },
  { name: 'Curly kale', german: 'Grünkohl', cropKeys: ['kale'], yieldDtPerHa: 400, demandKgPerHa: 200, soilDepthCm: 60, residueKgPerHa: 35, nitrogenKgPer100Dt: 49, phosphateKgPer100Dt: 16.3 },
  { name: 'Pickling cucumber', german: 'Gurke, Einleger', cropKeys: ['cucumber'], yieldDtPerHa: 800, demandKgPerHa: 210, soilDepthCm: 30, residueKgPerHa: 50, nitrogenKgPer100Dt: 15, phosphateKgPer100Dt: 6.9 },
  { name: 'Florence fennel', german: 'Knollenfenchel', cropKeys: ['florence-fennel'], yieldDtPerHa: 400, demandKgPerHa: 200, soilDepthCm: 60, residueKgPerHa: 45, nitrogenKgPer100Dt: 20, phosphateKgPer100Dt: 6.9 },
  { name: 'Kohlrabi', german: 'Kohlrabi', cropKeys: ['kohlrabi'], yieldDtPerHa: 450, demandKgPerHa: 230, soilDepthCm: 30, residueKgPerHa: 30, nitrogenKgPer100Dt: 28, phosphateKgPer100Dt: 10.3 },
  { name: 'Pumpkin/winter squash', german: 'Kürbis', cropKeys: ['winter-squash', 'butternut'], yieldDtPerHa: 400, demandKgPerHa: 140, soilDepthCm: 60, residueKgPerHa: 50, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 20.6 },
  { name: 'Spring turnip (with leaf)', german: 'Mairüben (mit Laub)', cropKeys: ['turnip'], yieldDtPerHa: 650, demandKgPerHa: 170, soilDepthCm: 30, residueKgPerHa: 15, nitrogenKgPer100Dt: 17, phosphateKgPer100Dt: 10.3 },
  { name: 'Carrot, bunching', german: 'Möhren, Bund-', cropKeys: ['carrot'], yieldDtPerHa: 600, demandKgPerHa: 115, soilDepthCm: 60, residueKgPerHa: 10, nitrogenKgPer100Dt: 17, phosphateKgPer100Dt: 8.2 },
  { name: 'Carrot, processing', german: 'Möhren, Industrie', cropKeys: ['carrot'], yieldDtPerHa: 900, demandKgPerHa: 165, soilDepthCm: 90, residueKgPerHa: 45, nitrogenKgPer100Dt: 13, phosphateKgPer100Dt: 8 },
  { name: 'Carrot, washed (maincrop)', german: 'Möhren, Wasch-', cropKeys: ['carrot'], yieldDtPerHa: 700, demandKgPerHa: 125, soilDepthCm: 60, residueKgPerHa: 30, nitrogenKgPer100Dt: 13, phosphateKgPer100Dt: 8 },
  { name: 'Parsnip', german: 'Pastinake', cropKeys: ['parsnip'], yieldDtPerHa: 400, demandKgPerHa: 140, soilDepthCm: 60, residueKgPerHa: 50, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 23.6 },
  { name: 'Leaf parsley, to 1st cut', german: 'Petersilie, Blatt-, bis 1. Schnitt', cropKeys: ['parsley'], yieldDtPerHa: 240, demandKgPerHa: 160, soilDepthCm: 60, residueKgPerHa: 10, nitrogenKgPer100Dt: 45, phosphateKgPer100Dt: 11.5 },
  { name: 'Leaf parsley, per later cut', german: 'Petersilie, Blatt-, nach einem Schnitt', cropKeys: ['parsley'], yieldDtPerHa: 160, demandKgPerHa: 100, soilDepthCm: 60, residueKgPerHa: 10, nitrogenKgPer100Dt: 45, phosphateKgPer100Dt: 11.5 },
  { name: 'Hamburg (root) parsley', german: 'Petersilie, Wurzel-', cropKeys: ['parsley'], yieldDtPerHa: 400, demandKgPerHa: 130, soilDepthCm: 60, residueKgPerHa: 45, nitrogenKgPer100Dt: 42, phosphateKgPer100Dt: 13.7 },
  { name: 'Leek', german: 'Porree', cropKeys: ['leek'], yieldDtPerHa: 600, demandKgPerHa: 250, soilDepthCm: 60, residueKgPerHa: 55, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 8 },
  { name: 'Radish (small)', german: 'Radies', cropKeys: ['radish'], yieldDtPerHa: 300, demandKgPerHa: 110, soilDepthCm: 30, residueKgPerHa: 5, nitrogenKgPer100Dt: 20, phosphateKgPer100Dt: 6.9 },
  { name: 'Radish (Rettich), bunched', german: 'Rettich, Bund-', cropKeys: ['radish'], yieldDtPerHa: 500, demandKgPerHa: 140, soilDepthCm: 30, residueKgPerHa: 10, nitrogenKgPer100Dt: 17, phosphateKgPer100Dt: 7.6 },
  { name: 'Radish (Rettich), German', german: 'Rettich, deutsch', cropKeys: ['radish'], yieldDtPerHa: 550, demandKgPerHa: 175, soilDepthCm: 60, residueKgPerHa: 30, nitrogenKgPer100Dt: 14, phosphateKgPer100Dt: 8 },
  { name: 'Daikon/mooli', german: 'Rettich, japanisch', cropKeys: ['radish'], yieldDtPerHa: 1_000, demandKgPerHa: 230, soilDepthCm: 60, residueKgPerHa: 45, nitrogenKgPer100Dt: 10, phosphateKgPer100Dt: 6 },
  { name: 'Rhubarb year 1', german: 'Rhabarber 1. Standjahr', cropKeys: ['rhubarb'], yieldDtPerHa: 0, demandKgPerHa: 130, soilDepthCm: 30, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Rhubarb year 2, sprouting', german: 'Rhabarber 2. Standjahr Austrieb', cropKeys: ['rhubarb'], yieldDtPerHa: 100, demandKgPerHa: 100, soilDepthCm: 30, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Rhubarb year 3, sprouting', german: 'Rhabarber 3. Standjahr Austrieb', cropKeys: ['rhubarb'], yieldDtPerHa: 200, demandKgPerHa: 120, soilDepthCm: 60, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Rhubarb year 4+, sprouting', german: 'Rhabarber ab 4. Standjahr Austrieb', cropKeys: ['rhubarb'], yieldDtPerHa: 350, demandKgPerHa: 140, soilDepthCm: 60, residueKgPerHa: null, nitrogenKgPer100Dt: 18, phosphateKgPer100Dt: 4.8 },
  { name: 'Rhubarb year 2, after harvest', german: 'Rhabarber 2. Standjahr nach Ernte', cropKeys: ['rhubarb'], yieldDtPerHa: null, demandKgPerHa: 150, soilDepthCm: 60, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Rhubarb year 3, after harvest', german: 'Rhabarber 3. Standjahr nach Ernte', cropKeys: ['rhubarb'], yieldDtPerHa: null, demandKgPerHa: 170, soilDepthCm: 90, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Rhubarb year 4+, after harvest', german: 'Rhabarber ab 4. Standjahr nach Ernte', cropKeys: ['rhubarb'], yieldDtPerHa: null, demandKgPerHa: 140, soilDepthCm: 90, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Brussels sprouts', german: 'Rosenkohl', cropKeys: ['brussels-sprout'], yieldDtPerHa: 250, demandKgPerHa: 310, soilDepthCm: 90, residueKgPerHa: 130, nitrogenKgPer100Dt: 65, phosphateKgPer100Dt: 19.5 },
  { name: 'Beetroot', german: 'Rote Rüben', cropKeys: ['beetroot'], yieldDtPerHa: 600, demandKgPerHa: 250, soilDepthCm: 60, residueKgPerHa: 50, nitrogenKgPer100Dt: 28, phosphateKgPer100Dt: 11.5 },
  { name: 'Red cabbage', german: 'Rotkohl', cropKeys: ['winter-cabbage'], yieldDtPerHa: 600, demandKgPerHa: 260, soilDepthCm: 60, residueKgPerHa: 60, nitrogenKgPer100Dt: 22, phosphateKgPer100Dt: 8 },
  { name: 'Rocket, fine', german: 'Rucola, Feinware', cropKeys: ['rocket'], yieldDtPerHa: 175, demandKgPerHa: 150, soilDepthCm: 30, residueKgPerHa: 20, nitrogenKgPer100Dt: 40, phosphateKgPer100Dt: 10.3 },
  { name: 'Rocket, coarse', german: 'Rucola, Grobware', cropKeys: ['rocket'], yieldDtPerHa: 300, demandKgPerHa: 210, soilDepthCm: 30, residueKgPerHa: 20, nitrogenKgPer100Dt: 40, phosphateKgPer100Dt: 10.3 },
  { name: 'Baby-leaf lettuce', german: 'Salate, Baby Leaf Lettuce', cropKeys: ['lettuce'], yieldDtPerHa: 140, demandKgPerHa: 90, soilDepthCm: 30, residueKgPerHa: 0, nitrogenKgPer100Dt: 35, phosphateKgPer100Dt: 8 },
  { name: 'Leaf lettuce, green', german: 'Salate, Blatt-, grün (Lollo, Eichblatt, Krul)', cropKeys: ['lettuce'], yieldDtPerHa: 350, demandKgPerHa: 130, soilDepthCm: 30, residueKgPerHa: 10, nitrogenKgPer100Dt: 19, phosphateKgPer100Dt: 6.9 },
  { name: 'Leaf lettuce, red', german: 'Salate, Blatt-, rot (Lollo, Eichblatt, Krul)', cropKeys: ['lettuce'], yieldDtPerHa: 300, demandKgPerHa: 115, soilDepthCm: 30, residueKgPerHa: 10, nitrogenKgPer100Dt: 19, phosphateKgPer100Dt: 6.9 },
  { name: 'Iceberg lettuce', german: 'Salate, Eissalat', cropKeys: ['lettuce'], yieldDtPerHa: 600, demandKgPerHa: 175, soilDepthCm: 30, residueKgPerHa: 15, nitrogenKgPer100Dt: 14, phosphateKgPer100Dt: 5.7 },
  { name: 'Endive, frisée', german: 'Salate, Endivien, Frisée', cropKeys: ['endive'], yieldDtPerHa: 350, demandKgPerHa: 150, soilDepthCm: 60, residueKgPerHa: 15, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 6 },
  { name: 'Endive, broad', german: 'Salate, Endivien, glattblättrig', cropKeys: ['endive'], yieldDtPerHa: 600, demandKgPerHa: 190, soilDepthCm: 60, residueKgPerHa: 20, nitrogenKgPer100Dt: 20, phosphateKgPer100Dt: 6 },
  { name: 'Butterhead lettuce', german: 'Salate, Kopfsalat', cropKeys: ['lettuce'], yieldDtPerHa: 500, demandKgPerHa: 150, soilDepthCm: 30, residueKgPerHa: 10, nitrogenKgPer100Dt: 18, phosphateKgPer100Dt: 6.9 },
  { name: 'Radicchio', german: 'Salate, Radicchio', cropKeys: ['chicory'], yieldDtPerHa: 280, demandKgPerHa: 140, soilDepthCm: 60, residueKgPerHa: 30, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 9.2 },
  { name: 'Salads, other', german: 'Salate, verschiedene Arten', cropKeys: [], yieldDtPerHa: 450, demandKgPerHa: 150, soilDepthCm: 30, residueKgPerHa: 10, nitrogenKgPer100Dt: 19, phosphateKgPer100Dt: 6.9 },
  { name: 'Cos lettuce', german: 'Salate, Romana', cropKeys: ['lettuce'], yieldDtPerHa: 450, demandKgPerHa: 140, soilDepthCm: 60, residueKgPerHa: 10, nitrogenKgPer100Dt: 20, phosphateKgPer100Dt: 9.2 },
  { name: 'Cos hearts', german: 'Salate, Romana Herzen', cropKeys: ['lettuce'], yieldDtPerHa: 300, demandKgPerHa: 150, soilDepthCm: 30, residueKgPerHa: 15, nitrogenKgPer100Dt: 24, phosphateKgPer100Dt: 9.2 },
  { name: 'Sugarloaf chicory', german: 'Salate, Zuckerhut', cropKeys: ['chicory'], yieldDtPerHa: 600, demandKgPerHa: 190, soilDepthCm: 60, residueKgPerHa: 20, nitrogenKgPer100Dt: 20, phosphateKgPer100Dt: 11.5 },
  { name: 'Chives, sown, to 1st cut', german: 'Schnittlauch, gesät, bis 1. Schnitt', cropKeys: ['chives'], yieldDtPerHa: 300, demandKgPerHa: 210, soilDepthCm: 60, residueKgPerHa: 10, nitrogenKgPer100Dt: 50, phosphateKgPer100Dt: 13.7 },
  { name: 'Chives, per later cut', german: 'Schnittlauch, gesät, nach einem Schnitt', cropKeys: ['chives'], yieldDtPerHa: 200, demandKgPerHa: 180, soilDepthCm: 60, residueKgPerHa: 25, nitrogenKgPer100Dt: 50, phosphateKgPer100Dt: 13.7 },
  { name: 'Chives for forcing', german: 'Schnittlauch, Anbau für Treiberei', cropKeys: ['chives'], yieldDtPerHa: 280, demandKgPerHa: 240, soilDepthCm: 60, residueKgPerHa: 55, nitrogenKgPer100Dt: 50, phosphateKgPer100Dt: 13.7 },
  { name: 'Scorzonera', german: 'Schwarzwurzel', cropKeys: ['scorzonera'], yieldDtPerHa: 200, demandKgPerHa: 75, soilDepthCm: 90, residueKgPerHa: 25, nitrogenKgPer100Dt: 23, phosphateKgPer100Dt: 16 },
  { name: 'Celery, bunched', german: 'Sellerie, Bund-', cropKeys: ['celery'], yieldDtPerHa: 600, demandKgPerHa: 205, soilDepthCm: 30, residueKgPerHa: 10, nitrogenKgPer100Dt: 27, phosphateKgPer100Dt: 12.6 },
  { name: 'Celeriac', german: 'Sellerie, Knollen-', cropKeys: ['celeriac'], yieldDtPerHa: 650, demandKgPerHa: 220, soilDepthCm: 60, residueKgPerHa: 40, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 14.9 },
  { name: 'Celery, stalk', german: 'Sellerie, Stangen-', cropKeys: ['celery'], yieldDtPerHa: 500, demandKgPerHa: 230, soilDepthCm: 30, residueKgPerHa: 40, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 11.5 },
  { name: 'Asparagus year 1', german: 'Spargel 1. Standjahr', cropKeys: ['asparagus'], yieldDtPerHa: 0, demandKgPerHa: 140, soilDepthCm: 60, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Asparagus year 2', german: 'Spargel 2. Standjahr', cropKeys: ['asparagus'], yieldDtPerHa: 20, demandKgPerHa: 160, soilDepthCm: 90, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Asparagus year 3', german: 'Spargel 3. Standjahr', cropKeys: ['asparagus'], yieldDtPerHa: 80, demandKgPerHa: 160, soilDepthCm: 90, residueKgPerHa: null, nitrogenKgPer100Dt: null, phosphateKgPer100Dt: null },
  { name: 'Asparagus year 4+', german: 'Spargel ab 4. Standjahr', cropKeys: ['asparagus'], yieldDtPerHa: 100, demandKgPerHa: 80, soilDepthCm: 90, residueKgPerHa: null, nitrogenKgPer100Dt: 26, phosphateKgPer100Dt: 8.2 },
  { name: 'Spinach, baby leaf', german: 'Spinat, Blatt-, FM, Baby', cropKeys: ['spinach'], yieldDtPerHa: 100, demandKgPerHa: 100, soilDepthCm: 30, residueKgPerHa: 10, nitrogenKgPer100Dt: 45, phosphateKgPer100Dt: 11.5 },
  { name: 'Spinach, leaf standard', german: 'Spinat, Blatt-, Standard', cropKeys: ['spinach'], yieldDtPerHa: 250, demandKgPerHa: 190, soilDepthCm: 30, residueKgPerHa: 30, nitrogenKgPer100Dt: 40, phosphateKgPer100Dt: 11.5 },
  { name: 'Spinach, chopped', german: 'Spinat, Hack, Standard', cropKeys: ['spinach'], yieldDtPerHa: 300, demandKgPerHa: 205, soilDepthCm: 30, residueKgPerHa: 30, nitrogenKgPer100Dt: 36, phosphateKgPer100Dt: 11.5 },
  { name: 'Climbing French bean', german: 'Stangenbohne, Standard', cropKeys: ['french-bean'], yieldDtPerHa: 250, demandKgPerHa: 100, soilDepthCm: 60, residueKgPerHa: 70, nitrogenKgPer100Dt: 25, phosphateKgPer100Dt: 9.2 },
  { name: 'Teltow turnip (autumn)', german: 'Teltower Rübchen (Herbstanbau)', cropKeys: ['turnip'], yieldDtPerHa: 150, demandKgPerHa: 110, soilDepthCm: 60, residueKgPerHa: 30, nitrogenKgPer100Dt: 45, phosphateKgPer100Dt: 24.1 },
  { name: 'White cabbage, fresh', german: 'Weißkohl, Frischmarkt', cropKeys: ['summer-cabbage', 'winter-cabbage'], yieldDtPerHa: 700, demandKgPerHa: 260, soilDepthCm: 60, residueKgPerHa: 75, nitrogenKgPer100Dt: 20, phosphateKgPer100Dt: 7.3 },
  { name: 'White cabbage, processing', german: 'Weißkohl, Industrie', cropKeys: ['winter-cabbage'], yieldDtPerHa: 1_000, demandKgPerHa: 320, soilDepthCm: 90, residueKgPerHa: 75, nitrogenKgPer100Dt: 20, phosphateKgPer100Dt: 7.3 },
  { name: 'Savoy cabbage', german: 'Wirsing', cropKeys: ['winter-cabbage'], yieldDtPerHa: 400, demandKgPerHa: 285, soilDepthCm: 60, residueKgPerHa: 80, nitrogenKgPer100Dt: 35, phosphateKgPer100Dt: 11.5 },
  { name: 'Courgette', german: 'Zucchini', cropKeys: ['courgette'], yieldDtPerHa: 650, demandKgPerHa: 250, soilDepthCm: 60, residueKgPerHa: 85, nitrogenKgPer100Dt: 16, phosphateKgPer100Dt: 6 },
  { name: 'Sweetcorn', german: 'Zuckermais', cropKeys: ['sweetcorn'], yieldDtPerHa: 200, demandKgPerHa: 160, soilDepthCm: 90, residueKgPerHa: 60, nitrogenKgPer100Dt: 35, phosphateKgPer100Dt: 16 },
  { name: 'Spring (bunching) onion', german: 'Zwiebel, Bund-', cropKeys: ['spring-onion'], yieldDtPerHa: 680, demandKgPerHa: 210, soilDepthCm: 30, residueKgPerHa: 15, nitrogenKgPer100Dt: 20, phosphateKgPer100Dt: 6 },
  { name: 'Bulb onion (dry)', german: 'Zwiebel, Trocken-', cropKeys: ['onion'], yieldDtPerHa: 600, demandKgPerHa: 155, soilDepthCm: 60, residueKgPerHa: 30, nitrogenKgPer100Dt: 18, phosphateKgPer100Dt: 8 },
];

/** Potatoes stand among the arable crops. Of swede only the contents are given. */
// biome-ignore format: one row of the table a line
const arable: readonly Row[] = [
  { name: 'Potato, maincrop', german: 'Kartoffel', cropKeys: ['maincrop-potato'], yieldDtPerHa: 450, demandKgPerHa: 180, soilDepthCm: null, residueKgPerHa: null, nitrogenKgPer100Dt: 35, phosphateKgPer100Dt: 14 },
  { name: 'Potato, early', german: 'Frühkartoffel', cropKeys: ['early-potato'], yieldDtPerHa: 400, demandKgPerHa: 220, soilDepthCm: null, residueKgPerHa: null, nitrogenKgPer100Dt: 35, phosphateKgPer100Dt: 14 },
];
const contentsAlone: readonly Row[] = [
  {
    name: 'Swede',
    german: 'Kohlrübe',
    cropKeys: ['swede'],
    yieldDtPerHa: null,
    demandKgPerHa: null,
    soilDepthCm: null,
    residueKgPerHa: null,
    nitrogenKgPer100Dt: 26,
    phosphateKgPer100Dt: 11.5,
  },
];

export const cropDemands: readonly CropDemand[] = [
  ...vegetables.map((row) => ({
    ...row,
    source: 'duev-vegetables' as const,
    contentsSource: 'duev-contents' as const,
  })),
  ...arable.map((row) => ({ ...row, source: 'duev-arable' as const, contentsSource: 'duev-arable' as const })),
  ...contentsAlone.map((row) => ({
    ...row,
    source: 'duev-contents' as const,
    contentsSource: 'duev-contents' as const,
  })),
];

/** The official rows that speak of a crop; none where it is not in the tables. */
export function cropDemandsOf(cropKey: string): readonly CropDemand[] {
  return cropDemands.filter(({ cropKeys }) => cropKeys.includes(cropKey));
}
