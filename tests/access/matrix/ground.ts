import { askCourse, cancelCourse, moveOneOn } from '@/lib/usecases/course/ask-course';
import { changeBoard, takeOnCourse } from '@/lib/usecases/course/keep-course';
import { readCourse, readCourseForm } from '@/lib/usecases/course/read-course';
import { importPlantings, lookAtPlantings } from '@/lib/usecases/ground/import-plantings';
import { judgePlanting } from '@/lib/usecases/ground/judge-planting';
import { addBeds, changeBed, joinBeds, retireBed, splitBed } from '@/lib/usecases/ground/keep-beds';
import { listCrops, saveCrop } from '@/lib/usecases/ground/keep-crops';
import { fillGrid, recordPlanting, retirePlanting } from '@/lib/usecases/ground/keep-plantings';
import { recordTrouble, retireTrouble } from '@/lib/usecases/ground/keep-troubles';
import { logWork, retireWork } from '@/lib/usecases/ground/keep-works';
import { readFeeding } from '@/lib/usecases/ground/read-feeding';
import { readBed, readGrid, readGround } from '@/lib/usecases/ground/read-ground';
import { readPlot } from '@/lib/usecases/ground/read-plot';
import { readSiteNeed } from '@/lib/usecases/ground/read-site-need';
import { readWeek } from '@/lib/usecases/week/read-week';
import { importPlots, lookAtPlots } from '@/lib/usecases/plots/import-plots';
import { halvePlot, joinPlots } from '@/lib/usecases/plots/halve-and-join';
import { addPlot, addSite, drawPlot } from '@/lib/usecases/plots/keep-plots';
import { changeHolders, endTenancy, letPlot, nameBooker } from '@/lib/usecases/plots/keep-tenancies';
import { listPlots, readPlotForOffice } from '@/lib/usecases/plots/read-plots';
import { readRotation, readRotationCsv } from '@/lib/usecases/site/read-rotation';
import { readSite } from '@/lib/usecases/site/read-site';
import { readTroubles } from '@/lib/usecases/site/read-troubles';
import { once } from '../../fixtures/society';
import { thisYear } from '../fill/ground';
import { committee, everybody, keepers, type Row, secretary } from '../row';

const from = '2026-11-01';

export const ground: readonly Row[] = [
  { operation: readWeek, input: () => ({}), allow: everybody },
  { operation: readGround, input: ({ holdingId }) => ({ holdingId }), allow: keepers },
  { operation: readGrid, input: ({ plotId }) => ({ plotId }), allow: keepers },
  { operation: readPlot, input: ({ plotId }) => ({ plotId }), allow: keepers },
  { operation: readBed, input: ({ bedId }) => ({ bedId }), allow: keepers },
  { operation: judgePlanting, input: ({ bedId }) => ({ bedId, cropKey: 'onion', season: '2027' }), allow: keepers },
  {
    operation: addBeds,
    input: ({ plotId }) => once({ plotId, name: 'new', count: '1', width: '1 m', length: '1 m', x: '1 m', y: '18 m' }),
    allow: keepers,
  },
  {
    operation: changeBed,
    input: ({ bedId }) => once({ bedId, name: 'x', width: '6 m', length: '2 m', x: '0.6 m', y: '0.6 m' }),
    allow: keepers,
  },
  {
    operation: splitBed,
    input: ({ bedId }) => once({ bedId, across: 'length', at: '1 m', firstName: 'a', secondName: 'b', from }),
    allow: keepers,
  },
  {
    operation: joinBeds,
    input: ({ bedId, nextBedId }) => once({ bedId, otherId: nextBedId, name: 'ab', from }),
    allow: keepers,
  },
  { operation: retireBed, input: ({ bedId }) => once({ bedId, from }), allow: keepers },
  { operation: recordPlanting, input: ({ bedId }) => once({ bedId, cropKey: 'leek', season: '2025' }), allow: keepers },
  { operation: retirePlanting, input: ({ plantingId }) => once({ plantingId }), allow: keepers },
  {
    operation: fillGrid,
    input: ({ plotId, bedId }) => once({ plotId, cells: [{ bedId, season: 2023, cropKey: 'kale' }] }),
    allow: keepers,
  },
  {
    operation: lookAtPlantings,
    input: ({ plotId }) => ({ plotId, table: 'bed,crop,season\n1,leek,2022' }),
    allow: keepers,
  },
  {
    operation: importPlantings,
    input: ({ plotId, bedName }) => once({ plotId, table: `bed,crop,season\n${bedName},leek,2022` }),
    allow: keepers,
  },
  { operation: logWork, input: ({ bedId }) => once({ bedId, season: '2026', amount: '3' }), allow: keepers },
  { operation: retireWork, input: ({ bedId, workId }) => once({ bedId, workId }), allow: keepers },
  { operation: readFeeding, input: ({ bedId }) => ({ bedId, ph: '6.0' }), allow: keepers },
  { operation: readCourseForm, input: ({ holdingId }) => ({ holdingId }), allow: keepers },
  { operation: readCourse, input: ({ courseId }) => ({ courseId }), allow: keepers },
  {
    operation: askCourse,
    input: ({ otherHoldingId, otherBedId }) =>
      once({
        holdingId: otherHoldingId,
        firstSeason: String(thisYear() + 1),
        years: '1',
        wanted: [{ key: 'alliums', area: '' }],
        bedIds: [otherBedId],
        cells: [],
      }),
    allow: ['secretary', 'neighbour'],
  },
  { operation: cancelCourse, input: ({ waitingCourseId }) => once({ courseId: waitingCourseId }), allow: keepers },
  { operation: moveOneOn, input: ({ holdingId }) => once({ holdingId }), allow: keepers },
  {
    operation: changeBoard,
    input: ({ courseId, bedId }) => once({ courseId, cells: [{ bedId, season: thisYear() + 1, key: 'open' }] }),
    allow: keepers,
  },
  { operation: takeOnCourse, input: ({ courseId }) => once({ courseId, which: 'first' }), allow: keepers },
  {
    operation: recordTrouble,
    input: ({ bedId }) => once({ bedId, troubleKey: 'clubroot', certainty: 'sure', foundOn: '2026-05-01' }),
    allow: keepers,
  },
  { operation: retireTrouble, input: ({ troubleId }) => once({ troubleId, sure: 'yes' }), allow: keepers },
  { operation: readRotation, input: ({ siteId }) => ({ siteId, group: 'allium-kin', more: '1' }), allow: committee },
  { operation: readRotationCsv, input: ({ siteId }) => ({ siteId }), allow: committee },
  { operation: readTroubles, input: () => ({}), allow: secretary },
  { operation: readSiteNeed, input: () => ({}), allow: committee },
  { operation: listCrops, input: () => ({}), allow: everybody },
  {
    operation: saveCrop,
    input: () => once({ name: 'Skirret', family: 'Apiaceae', cropGroup: 'roots', life: 'perennial' }),
    allow: secretary,
  },
  { operation: readSite, input: ({ siteId }) => ({ siteId }), allow: everybody },
  { operation: listPlots, input: () => ({}), allow: committee },
  { operation: readPlotForOffice, input: ({ plotId }) => ({ plotId }), allow: secretary },
  { operation: addSite, input: () => once({ name: 'Another site' }), allow: secretary },
  { operation: addPlot, input: ({ siteId }) => once({ siteId, number: 'Z9', rods: '5' }), allow: secretary },
  { operation: lookAtPlots, input: ({ siteId }) => ({ siteId, table: 'plot,rods\nZ1,5' }), allow: secretary },
  { operation: importPlots, input: ({ siteId }) => once({ siteId, table: 'plot,rods\nZ1,5', from }), allow: secretary },
  {
    operation: drawPlot,
    input: ({ plotId }) => once({ plotId, east: '200 m', south: '0 m', width: '9 m', length: '21 m' }),
    allow: secretary,
  },
  {
    operation: halvePlot,
    input: ({ plotId }) => once({ plotId, across: 'length', at: '10 m', firstNumber: 'Ya', secondNumber: 'Yb', from }),
    allow: secretary,
  },
  {
    operation: joinPlots,
    input: ({ plotId, sparePlotId }) => once({ plotId, otherId: sparePlotId, number: 'XY', from }),
    allow: secretary,
  },
  {
    operation: letPlot,
    input: ({ sparePlotId, holderId }) => once({ plotId: sparePlotId, memberIds: holderId, from }),
    allow: secretary,
  },
  { operation: endTenancy, input: ({ plotId }) => once({ plotId, from, sure: 'yes' }), allow: secretary },
  {
    operation: nameBooker,
    input: ({ holdingId, holderId }) => once({ holdingId, memberId: holderId }),
    allow: secretary,
  },
  {
    operation: changeHolders,
    input: ({ holdingId, holderId, spareMemberId }) => once({ holdingId, memberIds: [holderId, spareMemberId], from }),
    allow: secretary,
  },
];
