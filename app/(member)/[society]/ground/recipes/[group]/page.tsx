import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { DiggingCaution, LimeCaution } from '@/app/_ui/ground-cautions';
import { RecipeFields } from '@/app/_ui/recipe-fields';
import { RecipeTable } from '@/app/_ui/recipe-table';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { recipeFields } from '@/lib/domain/catalogue/recipes';
import { readRecipes } from '@/lib/usecases/recipes/read-recipes';
import { changeRecipeAction } from '../actions';

export const metadata: Metadata = { title: 'Recipe' };

export default async function RecipePage({ params }: { params: Promise<{ society: string; group: string }> }) {
  const { society, group } = await params;
  const { units, recipes, behind, habits } = await ask(readRecipes, society);
  const recipe = recipes.find((one) => one.group === group);
  const others = behind.find((one) => one.group === group);
  if (!recipe || !others) notFound();
  const action = changeRecipeAction.bind(null, society, group);
  const yours = recipeFields.filter((field) => recipe[field].setBy === 'yours');
  return (
    <>
      <PageHead
        title={`Ground for ${cropGroupName(recipe.group).toLowerCase()}`}
        lead="Set here what you do your own way. The rest follows the society, and where it has set nothing the catalogue."
      >
        <Link className="button" href={`/${society}/ground/recipes`}>
          All recipes
        </Link>
      </PageHead>
      <Sheet title="As it stands" flush wide>
        <RecipeTable recipes={[recipe]} units={units} soil={habits.soil.value} whose="yours" />
        <div className="sheet-body">
          <LimeCaution recipes={[recipe]} />
          <DiggingCaution />
        </div>
      </Sheet>
      <Sheet
        title="Your way"
        wide
        aside={
          <span className="small soft">{yours.length ? `yours in ${yours.length}` : 'nothing of your own yet'}</span>
        }
      >
        <Form action={action} writeId={randomUUID()} submit="Keep my recipe">
          <p className="soft">Leave a field empty, and what stands above it holds.</p>
          <RecipeFields
            behind={others}
            own={(field) => (recipe[field].setBy === 'yours' ? recipe[field].value : null)}
            units={units}
            whose="yours"
          />
        </Form>
      </Sheet>
      {yours.length ? (
        <Sheet title="Put it back" wide>
          <Form action={action} writeId={randomUUID()} submit="Put the whole recipe back">
            <p>Takes out all that is yours in this recipe; it then follows the society. Your other recipes stay.</p>
          </Form>
        </Sheet>
      ) : null}
    </>
  );
}
