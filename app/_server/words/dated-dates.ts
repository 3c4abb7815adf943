import { stepWords } from '@/app/_ui/date-words';
import type { Step } from '@/lib/domain/catalogue/windows';
import type { Dated } from '@/lib/domain/reminders/dated';
import type { DatedTable } from './dated-shape';

/** What the dates of sowing, planting and clearing are called in a calendar. */
export const datesDated: DatedTable = {
  sow: (facts) => ({
    title: `${capital(stepWords(facts.step as Step))}: ${crop(facts)}`,
    note: `${place(facts)}, for ${facts.season}.`,
    path: '/dates',
  }),
  plant: (facts) => ({
    title: `Plant: ${crop(facts)}`,
    note: `${place(facts)}, for ${facts.season}.`,
    path: '/dates',
  }),
  clear: (facts) => ({
    title: `Clear ${crop(facts)} for ${String(facts.next).toLowerCase()}`,
    note: `${place(facts)}: the next crop is to go in.`,
    path: '/dates',
  }),
};

function crop(facts: Dated['facts']): string {
  return String(facts.crop).toLowerCase();
}

function place({ plot, bed }: Dated['facts']): string {
  return `Plot ${plot}, bed ${bed}`;
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
