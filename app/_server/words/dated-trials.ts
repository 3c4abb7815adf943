import type { DatedTable } from './dated-shape';

export const trialsDated: DatedTable = {
  'trial-joining-closes': ({ trialId, question }) => ({
    title: `Joining closes: ${question}`,
    note: 'The last day to join this trial with two beds of a plot. The lot is drawn the day after.',
    path: `/board/trials/${trialId}`,
  }),
  'trial-results-due': ({ trialId, question }) => ({
    title: `Results due: ${question}`,
    note: 'The last day to say what both of your pieces of ground gave in this trial.',
    path: `/board/trials/${trialId}`,
  }),
};
