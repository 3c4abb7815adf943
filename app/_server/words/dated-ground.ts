import { cropGroupName, isCropGroup } from '@/lib/domain/catalogue/crop-groups';
import type { DatedTable } from './dated-shape';

export const groundDated: DatedTable = {
  dig: ({ sheetId, bedName, plotNumber, group, left }) => {
    const what = typeof group === 'string' && isCropGroup(group) ? cropGroupName(group).toLowerCase() : 'the crop';
    return {
      title: `Dig bed ${bedName}, plot ${plotNumber}, for ${what}`,
      note: `Trenches left: ${left}. A few a day, and never when the ground sticks to the spade.`,
      path: `/ground/sheets/${sheetId}`,
    };
  },
  pots: ({ testId, deliveryId, name, next }) => ({
    title: `${next === 'sow' ? 'Sow' : 'Read'} the pots of ${name}`,
    note: 'Residue test: how many are up, how many distorted, how far grown.',
    path: deliveryId ? `/deliveries/${deliveryId}/residue/${testId}` : `/ground/residue/${testId}`,
  }),
};
