import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { DiggingCaution, LimeCaution } from '@/app/_ui/ground-cautions';
import { RecipeFields } from '@/app/_ui/recipe-fields';
import { RecipeTable } from '@/app/_ui/recipe-table';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { type RecipeField, recipes as rows } from '@/lib/domain/catalogue/recipes';
import { allows } from '@/lib/domain/catalogue/setting-row';
import { readStanding } from '@/lib/usecases/members/read-standing';
import { readSocietyRecipes } from '@/lib/usecases/recipes/read-recipes';
import { OnDay } from '../_parts/on-day';
import { changeSocietyRecipeAction } from '../actions';

export const metadata: Metadata = { title: 'The society’s recipe' };

type Props = { params: Promise<{ society: string; group: string }>; searchParams: Promise<{ on?: string }> };

export default async function SocietyRecipePage({ params, searchParams }: Props) {
  const { society, group } = await params;
  const { on: asked = '' } = await searchParams;
  const [read, { roles }] = await Promise.all([
    ask(readSocietyRecipes, society, { on: asked }),
    ask(readStanding, society),
  ]);
  const { today, on, units, kept } = read;
  const recipe = read.recipes.find((one) => one.group === group);
  const behind = read.behind.find((one) => one.group === group);
  if (!recipe || !behind) notFound();
  const own = (field: RecipeField) => {
    const key = `recipe.${recipe.group}.${field}` as const;
    const value = kept[key];
    return allows(rows[key], value) ? (value as string | number) : null;
  };
  const sets = roles.includes('secretary') && on >= today;
  return (
    <>
      <PageHead
        title={`Ground for ${cropGroupName(recipe.group).toLowerCase()}`}
        lead="For every member who has set nothing of their own. What you leave empty is the catalogue’s."
      >
        <OnDay on={on} />
        <Link className="button" href={`/${society}/office/recipes${on === today ? '' : `?on=${on}`}`}>
          All recipes
        </Link>
      </PageHead>
      <Sheet title={on === today ? 'As it holds today' : `As it holds on ${on}`} flush wide>
        <RecipeTable recipes={[recipe]} units={units} soil={null} whose="society" />
        <div className="sheet-body">
          <LimeCaution recipes={[recipe]} />
          <DiggingCaution />
        </div>
      </Sheet>
      <Sheet title={on === today ? 'From today on' : `From ${on} on`} wide>
        {sets ? (
          <Form
            action={changeSocietyRecipeAction.bind(null, society, recipe.group, on)}
            writeId={randomUUID()}
            submit="Set it for the society"
          >
            <p className="soft">Leave a field empty, and what stands above it holds.</p>
            <RecipeFields behind={behind} own={own} units={units} whose="society" />
          </Form>
        ) : (
          <Empty>
            {on < today
              ? 'What held in the past stays as it was. Choose today or a later day to change it.'
              : 'The secretary sets the society’s recipes; your own are under “My ground”.'}
          </Empty>
        )}
      </Sheet>
    </>
  );
}
