import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { DiggingCaution, LimeCaution } from '@/app/_ui/ground-cautions';
import { RecipeTable } from '@/app/_ui/recipe-table';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { soilOf } from '@/lib/domain/catalogue/soils';
import { readRecipes } from '@/lib/usecases/recipes/read-recipes';
import { HabitFields } from './_parts/habit-fields';
import { changeHabitsAction } from './actions';

export const metadata: Metadata = { title: 'Recipes and habits' };

export default async function RecipesPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { units, recipes, habits, habitsBehind } = await ask(readRecipes, society);
  const soil = soilOf(habits.soil.value);
  const assumed = habits.soil.setBy === 'catalogue' ? ', assumed until you say' : '';
  return (
    <>
      <PageHead
        title="Recipes and habits"
        lead="How each crop group’s ground is made ready, and how you dig. Set it once to your own way: every bed’s quantities and days follow."
      >
        <Link className="button" href={`/${society}/ground`}>
          Back to the ground
        </Link>
      </PageHead>
      <Sheet
        title="What each group wants"
        flush
        wide
        aside={
          <span className="small soft">{`${soil?.name.toLowerCase()} soil${assumed}: dug in ${soil?.diggingSeason}`}</span>
        }
      >
        <RecipeTable
          recipes={recipes}
          units={units}
          soil={habits.soil.value}
          whose="yours"
          hrefOf={(group) => `/${society}/ground/recipes/${group}`}
        />
        <div className="sheet-body">
          <p className="small soft">Choose a group for why, for the sources, and to change it to your own way.</p>
          <LimeCaution recipes={recipes} />
          <DiggingCaution />
        </div>
      </Sheet>
      <Sheet title="Your habits" wide aside={<span className="small soft">nobody else sees them</span>}>
        <Form action={changeHabitsAction.bind(null, society)} writeId={randomUUID()} submit="Keep my habits">
          <p className="soft">Leave a field empty, and what stands above it holds.</p>
          <HabitFields habits={habits} behind={habitsBehind} units={units} />
        </Form>
      </Sheet>
    </>
  );
}
