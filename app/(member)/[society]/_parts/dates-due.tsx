import { dayAndMonth, spanWords, stepOfCrop, stepOfWay } from '@/app/_ui/date-words';
import { dayWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import { leastSoilWords } from '@/app/_ui/soil-words';
import type { Units } from '@/lib/domain/quantity/length';
import type { DatesDue, InWindow } from '@/lib/usecases/dates/due-dates';
import type { PlantingPlace } from '@/lib/usecases/dates/read-dates';

/** A sowing, a planting, a clearing or ground to finish, as a line of the week. */
export function datesItem(due: DatesDue, society: string, units: Units): DueItem {
  const dates = `/${society}/dates`;
  if (due.code === 'sow') return sowItem(due, dates, units);
  if (due.code === 'also-in-window')
    return {
      key: 'also in window',
      when: 'in season',
      what: `In window too: ${due.crops.map(({ cropName, step }) => `${cropName.toLowerCase()} till ${dayAndMonth(step.to)}`).join(', ')}`,
      action: { href: dates, label: 'See the dates' },
    };
  if (due.code === 'clear-for')
    return {
      key: `clear ${due.before.id}`,
      ...whenOf(due.daysLeft),
      what: `Clear ${due.before.cropName.toLowerCase()} from bed ${due.before.bedName} for ${due.next.cropName.toLowerCase()}`,
      why: `Plot ${due.before.plotNumber}. The next crop has to go in by ${dayWords(due.by)}.`,
      action: { href: dates, label: 'Say it is cleared' },
    };
  if (due.code === 'ready-ground')
    return {
      key: `ground ${due.sheetId} ${due.next.id}`,
      ...whenOf(due.daysLeft),
      what: `Finish the ground of bed ${due.next.bedName} for ${due.next.cropName.toLowerCase()}: ${due.trenchesLeft} ${due.trenchesLeft === 1 ? 'trench' : 'trenches'} left`,
      why: `Plot ${due.next.plotNumber}. The crop has to go in by ${dayWords(due.by)}.`,
      action: { href: `/${society}/ground/sheets/${due.sheetId}`, label: 'Open the sheet' },
    };
  return {
    key: 'dates clash',
    when: 'your plan',
    late: true,
    what: `The dates of ${listed(due.plantings)} do not fit`,
    why: 'What stands in the way, and what would help, stands on the page of dates.',
    action: { href: dates, label: 'See why' },
  };
}

function sowItem(due: InWindow, dates: string, units: Units): DueItem {
  const { cropName, season, step, otherwise, trenchesLeft, standing, plantings, daysLeft } = due;
  const soil = step.step === 'in-place' ? leastSoilWords(due.cropKey, units) : null;
  const notes = [
    `For ${season}: ${spanWords(step)}.`,
    soil ? `The soil wants ${soil} at least.` : '',
    trenchesLeft ? `First finish its ground: ${trenchesLeft} ${trenchesLeft === 1 ? 'trench' : 'trenches'} left.` : '',
    standing.length ? `${standing.join(' and ')} ${standing.length === 1 ? 'stands' : 'stand'} there yet.` : '',
    otherwise ? `Or ${stepOfWay(due.cropKey, otherwise)}, ${spanWords(otherwise)}.` : '',
  ];
  return {
    key: `sow ${due.cropKey} ${season} ${step.way} ${step.step}`,
    ...whenOf(daysLeft),
    what: `${capital(stepOfCrop(due.cropKey, step))}: ${cropName.toLowerCase()}, ${bedsOf(plantings)}`,
    why: notes.filter(Boolean).join(' '),
    action: { href: dates, label: step.step === 'plant-out' ? 'Planted? Say when' : 'Sown? Say when' },
  };
}

function whenOf(daysLeft: number): Pick<DueItem, 'when' | 'late'> {
  if (daysLeft < 0) return { when: `${-daysLeft} ${daysLeft === -1 ? 'day' : 'days'} late`, late: true };
  return { when: daysLeft === 0 ? 'last day' : `${daysLeft + 1} days left` };
}

function bedsOf(plantings: readonly PlantingPlace[]): string {
  const names = plantings.map(({ bedName, plotNumber }) => `${plotNumber}/${bedName}`);
  return `${names.length === 1 ? 'bed' : 'beds'} ${names.join(', ')}`;
}

function listed(plantings: readonly PlantingPlace[]): string {
  return plantings.map(({ cropName, bedName }) => `${cropName.toLowerCase()} on bed ${bedName}`).join(' and ');
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
