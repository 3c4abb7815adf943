import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { keptSettingsOn } from '@/lib/data/setting';
import { settingValues } from '@/lib/domain/catalogue/settings';
import { windowsOf } from '@/lib/domain/dates/windows-of';
import { canEnter } from '@/lib/domain/policy/standing';
import { cropDatesInput } from '@/lib/schemas/dates/dates';
import { seasonServed } from '../ground/holding-need';
import { query } from '../operation';

/** The windows of every crop that the society knows, or of one group, moved to its frosts, for the season to come. */
export const readCropDates = query({
  name: 'read-crop-dates',
  allow: canEnter,
  input: cropDatesInput,
  read: async ({ db, scope, today }, { group }) => {
    const [crops, kept] = await Promise.all([cropsOf(db, scope), keptSettingsOn(db, scope, today)]);
    const { lastFrost, firstFrost } = settingValues(kept);
    const frosts = { lastFrost, firstFrost };
    const season = seasonServed(today);
    const asked = [...crops.values()].filter(
      ({ key, cropGroup }) => key !== cropGroup && (!group || cropGroup === group),
    );
    return {
      today,
      season,
      group,
      frosts,
      units: scope.units,
      areFrostsOwn: [kept.lastFrost, kept.firstFrost].some((one) => one !== undefined && one !== null),
      crops: asked
        .map(({ key, name }) => ({ key, name, ways: windowsOf(key, season, frosts) }))
        .sort((a, b) => a.name.localeCompare(b.name, 'en-GB')),
    };
  },
});
