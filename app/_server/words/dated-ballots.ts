import type { DatedTable } from './dated-shape';

export const ballotsDated: DatedTable = {
  'hands-close': ({ ballotId, title, at }) => ({
    title: `Count of hands closes: ${title}`,
    note: `Until ${at} a hand can be raised, or raised for something else.`,
    path: `/board/decisions/${ballotId}`,
  }),
};
