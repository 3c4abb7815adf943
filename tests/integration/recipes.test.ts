import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import type { RecipeGroup } from '@/lib/domain/catalogue/recipes';
import { todayIn } from '@/lib/platform/clock';
import { readBook } from '@/lib/usecases/book/read-book';
import { eraseMember, memberLeaves } from '@/lib/usecases/members/keep-members';
import { changeHabits } from '@/lib/usecases/recipes/change-habits';
import { changeRecipe, changeSocietyRecipe } from '@/lib/usecases/recipes/change-recipe';
import { readRecipes, readSocietyRecipes } from '@/lib/usecases/recipes/read-recipes';
import { recipesFor } from '@/lib/usecases/recipes/recipes-for';
import { changeSetting, readSettings } from '@/lib/usecases/settings/settings';
import {
  done,
  makeMember,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

let society: TestSociety;
let expert: TestMember;
let other: TestMember;
const today = todayIn('Europe/London');

beforeAll(async () => {
  society = await makeSociety();
  [expert, other] = [await makeMember(society), await makeMember(society)];
});

const recipeOf = async ({ caller }: TestMember, group: RecipeGroup) => {
  const recipe = (await readRecipes.run(caller, {})).recipes.find((one) => one.group === group);
  if (!recipe) throw new Error(`no recipe for ${group}`);
  return recipe;
};
const setFor = (change: object) =>
  done(changeSocietyRecipe.run(society.secretary.caller, once({ group: 'alliums', ...change })));
const set = ({ caller }: TestMember, change: object) => changeRecipe.run(caller, once({ group: 'alliums', ...change }));
const rowsOf = ({ id }: TestMember) => db().memberSetting.count({ where: { memberId: id } });

describe('a recipe', () => {
  it('is the member’s over the society’s over the catalogue’s, and follows again when it is put back', async () => {
    expect(await recipeOf(expert, 'alliums')).toMatchObject({
      method: { value: 'double-digging', setBy: 'catalogue' },
      rateGPerM2: { value: 5000, setBy: 'catalogue', source: 'thrive' },
    });
    await setFor({ from: today, method: 'single-digging', strawGPerM2: '600' });
    expect(await recipeOf(expert, 'alliums')).toMatchObject({ method: { value: 'single-digging', setBy: 'society' } });
    expect(await done(set(expert, { method: 'double-digging', meal: 'bone-meal', rateGPerM2: '7 kg' }))).toEqual({
      group: 'alliums',
      changed: 3,
    });
    expect(await recipeOf(expert, 'alliums')).toMatchObject({
      method: { value: 'double-digging', setBy: 'yours' },
      meal: { value: 'bone-meal', setBy: 'yours' },
      mealGPerM2: { value: 70, setBy: 'catalogue' },
      rateGPerM2: { value: 7000, setBy: 'yours' },
      strawGPerM2: { value: 600, setBy: 'society' },
    });
    expect(await recipeOf(expert, 'leaves')).toMatchObject({ method: { value: 'forking', setBy: 'catalogue' } });
    expect(await recipeOf(other, 'alliums')).toMatchObject({
      method: { setBy: 'society' },
      meal: { setBy: 'catalogue' },
    });
    expect(await done(set(expert, {}))).toMatchObject({ changed: 3 });
    expect(await recipeOf(expert, 'alliums')).toEqual(await recipeOf(other, 'alliums'));
  });

  it('says what stands behind one’s own', async () => {
    await done(set(expert, { method: 'mulch' }));
    const { behind } = await readRecipes.run(expert.caller, {});
    expect(behind.find(({ group }) => group === 'alliums')?.method).toMatchObject({
      value: 'single-digging',
      setBy: 'society',
    });
    await done(set(expert, {}));
  });

  it('follows the society’s general dressing from the day on which that changes', async () => {
    const rule = once({ key: 'manureRateGPerM2', value: '4000', from: today });
    await done(changeSetting.run(society.secretary.caller, rule));
    expect((await recipeOf(other, 'potatoes')).rateGPerM2).toEqual({ value: 4000, setBy: 'society', source: 'thrive' });
    expect((await recipeOf(other, 'roots')).rateGPerM2).toMatchObject({ value: 0, setBy: 'catalogue' });
  });

  it('is appended: sent twice it is written once, and what is not different is not written at all', async () => {
    const before = await rowsOf(other);
    const sent = once({ group: 'roots', springFinishCm: '4 in' });
    await done(changeRecipe.run(other.caller, sent));
    await done(changeRecipe.run(other.caller, sent));
    expect(await done(changeRecipe.run(other.caller, once({ group: 'roots', springFinishCm: '10 cm' })))).toMatchObject(
      {
        changed: 0,
      },
    );
    expect(await rowsOf(other)).toBe(before + 1);
    const row = await db().memberSetting.findFirstOrThrow({ where: { memberId: other.id } });
    await expect(db().memberSetting.update({ where: { id: row.id }, data: { value: 1 } })).rejects.toThrow(
      /never changed/,
    );
  });

  it('is read and shown in feet and inches by whoever measures so', async () => {
    const imperial = await makeMember(society);
    await db().member.update({ where: { id: imperial.id }, data: { units: 'imperial' } });
    await done(set(imperial, { springFinishCm: '3', mealGPerM2: '4', rateGPerM2: '10' }));
    expect(await recipeOf(imperial, 'alliums')).toMatchObject({
      springFinishCm: { value: 8 },
      mealGPerM2: { value: 136 },
      rateGPerM2: { value: 5425 },
    });
    // What is shown back is what was typed, and sending it changes nothing.
    const same = { springFinishCm: '3 in', mealGPerM2: '4 oz/sq yd', rateGPerM2: '10 lb/sq yd' };
    expect(await done(set(imperial, same))).toMatchObject({ changed: 0 });
  });

  it('refuses all that cannot be read together, and days that end before they begin', async () => {
    const before = await rowsOf(expert);
    const wrong = { rateGPerM2: 'lots', startHeavy: '31 June', method: 'ploughing', limeTargetPhTenths: '9' };
    expect(await refusedWith(set(expert, wrong))).toEqual([
      'value-not-offered',
      'value-out-of-range',
      'value-out-of-range',
      'month-day-wrong',
    ]);
    expect(await refusedWith(set(expert, { startHeavy: '20 December' }))).toEqual(['finish-before-start']);
    expect(await set(expert, { startLight: '1 May' })).toMatchObject({ refusals: [{ field: 'startLight' }] });
    expect(await set(expert, { finishLight: '1 January' })).toMatchObject({ refusals: [{ field: 'finishLight' }] });
    expect(await rowsOf(expert)).toBe(before);
  });
});

describe('the society’s recipes', () => {
  const onDay = async (on: string) => {
    const { recipes, history } = await readSocietyRecipes.run(other.caller, { on });
    const recipe = recipes.find(({ group }) => group === 'brassicas');
    return { rate: recipe?.rateGPerM2, lime: recipe?.lime, history };
  };

  it('hold from a day on, and what is due to change is seen on its day', async () => {
    const later = addDays(today, 30);
    await setFor({ group: 'brassicas', from: later, rateGPerM2: '0' });
    expect((await onDay(today)).rate).toMatchObject({ value: 4000 });
    expect((await onDay(later)).rate).toMatchObject({ value: 0, setBy: 'society' });
    // Changed for today, seen as it is today: what is due later stays due.
    await setFor({ group: 'brassicas', from: today, lime: 'none' });
    expect(await onDay(later)).toMatchObject({ rate: { value: 0 }, lime: { value: 'none', setBy: 'society' } });
    await setFor({ group: 'brassicas', from: later, lime: 'none' });
    expect((await onDay(later)).rate).toMatchObject({ value: 4000 });
    expect((await onDay(addDays(later, -1))).rate).toMatchObject({ value: 4000 });
  });

  it('have a history of their own, beside that of the rules', async () => {
    const { history } = await onDay(today);
    expect(history.map(({ key }) => key)).toContain('recipe.brassicas.rateGPerM2');
    expect(history.map(({ value }) => value)).toContain(null);
    expect(history.every(({ key }) => key.startsWith('recipe.'))).toBe(true);
    const rules = (await readSettings.run(other.caller, {})).history;
    expect(rules.map(({ key }) => key)).toEqual(['manureRateGPerM2']);
  });

  it('are not set in the past', async () => {
    const late = once({ group: 'alliums', from: addDays(today, -1), lime: 'none' });
    expect(await refusedWith(changeSocietyRecipe.run(society.secretary.caller, late))).toEqual(['setting-in-the-past']);
  });

  it('may move past a member’s own day: the member’s days then fall back together', async () => {
    await done(set(other, { startHeavy: '25 November' }));
    await setFor({ from: today, finishHeavy: '20 November', method: 'single-digging', strawGPerM2: '600' });
    expect(await recipeOf(other, 'alliums')).toMatchObject({
      startHeavy: { value: '10-01', setBy: 'catalogue' },
      finishHeavy: { value: '11-20', setBy: 'society' },
    });
  });
});

describe('habits', () => {
  it('are set once, hold for all ground, and are nobody else’s to read', async () => {
    const own = {
      trenchWidthCm: '18 in',
      layout: 'straight-through',
      soil: 'clayey',
      ageBand: '60-or-over',
      bodyMassKg: '83',
    };
    await done(changeHabits.run(expert.caller, once(own)));
    const { habits } = await readRecipes.run(expert.caller, {});
    expect(habits).toMatchObject({
      trenchWidthCm: { value: 46, setBy: 'yours' },
      layout: { value: 'straight-through' },
      ageBand: { value: '60-or-over' },
      sessionMinutes: { value: 45, setBy: 'catalogue' },
    });
    const [mine, secretarys] = [
      await openScopeOfMember(db(), expert.id),
      await openScopeOfMember(db(), society.secretary.id),
    ];
    expect((await recipesFor(db(), mine, expert.id, today)).habits).toEqual(habits);
    const seen = await recipesFor(db(), secretarys, expert.id, today);
    expect(Object.values(seen.habits).filter(({ setBy }) => setBy === 'yours')).toEqual([]);
    expect(seen.recipes).toEqual((await readRecipes.run(expert.caller, {})).recipes);
  });

  it('stand in the book by their names alone', async () => {
    const { rows } = await readBook.run(society.secretary.caller, { thing: 'habits' });
    expect(rows).toMatchObject([
      {
        verb: 'changed',
        before: null,
        after: {
          changed: ['habit.trenchWidthCm', 'habit.layout', 'habit.soil', 'habit.ageBand', 'habit.bodyMassKg'],
        },
      },
    ]);
  });

  it('follow the society’s barrow until one’s own is named', async () => {
    await done(changeSetting.run(society.secretary.caller, once({ key: 'barrowLitres', value: '100', from: today })));
    const barrow = async () => (await readRecipes.run(other.caller, {})).habits.barrowLitres;
    expect(await barrow()).toMatchObject({ value: 100, setBy: 'society' });
    await done(changeHabits.run(other.caller, once({ barrowLitres: '60' })));
    expect(await barrow()).toMatchObject({ value: 60, setBy: 'yours' });
    await done(changeHabits.run(other.caller, once({})));
    expect(await barrow()).toMatchObject({ value: 100, setBy: 'society' });
  });

  it('pass over what is kept and no longer allowed', async () => {
    const data = { societyId: society.id, memberId: other.id, key: 'habit.pace', value: 'furious' };
    await db().memberSetting.create({ data });
    expect((await readRecipes.run(other.caller, {})).habits.pace).toMatchObject({
      value: 'gentle',
      setBy: 'catalogue',
    });
    expect(await done(changeHabits.run(other.caller, once({})))).toEqual({ changed: 0 });
  });

  it('are gone when a member is erased', async () => {
    const { secretary } = society;
    await done(memberLeaves.run(secretary.caller, once({ memberId: expert.id, on: today, sure: 'yes' })));
    expect(await rowsOf(expert)).toBeGreaterThan(0);
    await done(eraseMember.run(secretary.caller, once({ memberId: expert.id, sure: 'yes' })));
    expect(await rowsOf(expert)).toBe(0);
  });
});

it('a row of another society’s member is refused by the database', async () => {
  const elsewhere = await makeSociety();
  const data = { societyId: society.id, memberId: elsewhere.secretary.id, key: 'habit.pace', value: 'brisk' };
  await expect(db().memberSetting.create({ data })).rejects.toThrow();
});
