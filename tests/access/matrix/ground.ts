import { importPlantings, lookAtPlantings } from '@/lib/usecases/ground/import-plantings';
import { judgePlanting } from '@/lib/usecases/ground/judge-planting';
import { addBeds, changeBed, joinBeds, retireBed, splitBed } from '@/lib/usecases/ground/keep-beds';
import { listCrops, saveCrop } from '@/lib/usecases/ground/keep-crops';
import {
  fillGrid,
  logManuring,
  recordPlanting,
  retireManuring,
  retirePlanting,
} from '@/lib/usecases/ground/keep-plantings';
import { readBed, readGrid, readGround } from '@/lib/usecases/ground/read-ground';
import { readPlot } from '@/lib/usecases/ground/read-plot';
import { readWeek } from '@/lib/usecases/ground/read-week';
import { importPlots, lookAtPlots } from '@/lib/usecases/plots/import-plots';
import { halvePlot, joinPlots } from '@/lib/usecases/plots/halve-and-join';
import { addPlot, addSite, drawPlot } from '@/lib/usecases/plots/keep-plots';
import { changeHolders, endTenancy, letPlot, nameBooker } from '@/lib/usecases/plots/keep-tenancies';
import { listPlots, readPlotForOffice } from '@/lib/usecases/plots/read-plots';
import { readSite } from '@/lib/usecases/site/read-site';
import { once } from '../../fixtures/society';
import type { Row } from '../deny';

// A neighbour is a member who holds other ground.
const others = ['neighbour', 'treasurer', 'gate_helper'] as const;
const all = ['member', ...others] as const;
const from = '2026-11-01';

export const ground: readonly Row[] = [
  { operation: readWeek, input: () => ({}), deny: [] },
  { operation: readGround, input: ({ holdingId }) => ({ holdingId }), deny: others },
  { operation: readGrid, input: ({ plotId }) => ({ plotId }), deny: others },
  { operation: readPlot, input: ({ plotId }) => ({ plotId }), deny: others },
  { operation: readBed, input: ({ bedId }) => ({ bedId }), deny: others },
  { operation: judgePlanting, input: ({ bedId }) => ({ bedId, cropKey: 'onion', season: '2027' }), deny: others },
  {
    operation: addBeds,
    input: ({ plotId }) => once({ plotId, name: 'new', count: '1', width: '1 m', length: '1 m', x: '1 m', y: '18 m' }),
    deny: others,
  },
  {
    operation: changeBed,
    input: ({ bedId }) => once({ bedId, name: 'x', width: '6 m', length: '2 m', x: '0.6 m', y: '0.6 m' }),
    deny: others,
  },
  {
    operation: splitBed,
    input: ({ bedId }) => once({ bedId, across: 'length', at: '1 m', firstName: 'a', secondName: 'b', from }),
    deny: others,
  },
  {
    operation: joinBeds,
    input: ({ bedId, otherBedId }) => once({ bedId, otherId: otherBedId, name: 'ab', from }),
    deny: others,
  },
  { operation: retireBed, input: ({ bedId }) => once({ bedId, from }), deny: others },
  { operation: recordPlanting, input: ({ bedId }) => once({ bedId, cropKey: 'leek', season: '2025' }), deny: others },
  { operation: retirePlanting, input: ({ plantingId }) => once({ plantingId }), deny: others },
  {
    operation: fillGrid,
    input: ({ plotId, bedId }) => once({ plotId, cells: [{ bedId, season: 2023, cropKey: 'kale' }] }),
    deny: others,
  },
  {
    operation: lookAtPlantings,
    input: ({ plotId }) => ({ plotId, table: 'bed,crop,season\n1,leek,2022' }),
    deny: others,
  },
  {
    operation: importPlantings,
    input: ({ plotId }) => once({ plotId, table: 'bed,crop,season\n1,leek,2022' }),
    deny: others,
  },
  { operation: logManuring, input: ({ bedId }) => once({ bedId, season: '2026' }), deny: others },
  { operation: retireManuring, input: ({ bedId, workId }) => once({ bedId, workId }), deny: others },
  { operation: listCrops, input: () => ({}), deny: [] },
  {
    operation: saveCrop,
    input: () => once({ name: 'Skirret', family: 'Apiaceae', cropGroup: 'roots', life: 'perennial' }),
    deny: all,
  },
  { operation: readSite, input: () => ({}), deny: [] },
  { operation: listPlots, input: () => ({}), deny: ['member', 'neighbour', 'gate_helper'] },
  { operation: readPlotForOffice, input: ({ plotId }) => ({ plotId }), deny: all },
  { operation: addSite, input: () => once({ name: 'Another site' }), deny: all },
  { operation: addPlot, input: ({ siteId }) => once({ siteId, number: 'Z9', rods: '5' }), deny: all },
  { operation: lookAtPlots, input: ({ siteId }) => ({ siteId, table: 'plot,rods\nZ1,5' }), deny: all },
  { operation: importPlots, input: ({ siteId }) => once({ siteId, table: 'plot,rods\nZ1,5', from }), deny: all },
  {
    operation: drawPlot,
    input: ({ plotId }) => once({ plotId, east: '200 m', south: '0 m', width: '9 m', length: '21 m' }),
    deny: all,
  },
  {
    operation: halvePlot,
    input: ({ otherPlotId }) =>
      once({ plotId: otherPlotId, across: 'length', at: '10 m', firstNumber: 'Ya', secondNumber: 'Yb', from }),
    deny: all,
  },
  {
    operation: joinPlots,
    input: ({ plotId, otherPlotId }) => once({ plotId, otherId: otherPlotId, number: 'XY', from }),
    deny: all,
  },
  { operation: letPlot, input: ({ plotId, memberId }) => once({ plotId, memberIds: memberId, from }), deny: all },
  { operation: endTenancy, input: ({ plotId }) => once({ plotId, from, sure: 'yes' }), deny: all },
  { operation: nameBooker, input: ({ holdingId, memberId }) => once({ holdingId, memberId }), deny: all },
  {
    operation: changeHolders,
    input: ({ holdingId, memberId }) => once({ holdingId, memberIds: memberId, from }),
    deny: all,
  },
];
