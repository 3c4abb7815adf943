import type { SourceKey } from './sources';

/** The deliveries of autumn, by the day they come [MM-DD]: in time to be dug in before the year is out. */
export const autumn = { from: '09-01', to: '12-31', source: 'common-practice' } as const satisfies {
  from: string;
  to: string;
  source: SourceKey;
};
