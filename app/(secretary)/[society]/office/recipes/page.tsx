import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { RecipeTable } from '@/app/_ui/recipe-table';
import { valueInWords } from '@/app/_ui/setting-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { allows } from '@/lib/domain/catalogue/setting-row';
import { isRecipeKey, recipeRowName, recipes as rows } from '@/lib/domain/catalogue/recipes';
import type { Units } from '@/lib/domain/quantity/length';
import { readSocietyRecipes } from '@/lib/usecases/recipes/read-recipes';
import { OnDay } from './_parts/on-day';

export const metadata: Metadata = { title: 'The society’s recipes' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ on?: string }> };

export default async function SocietyRecipesPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { on: asked = '' } = await searchParams;
  const { today, on, units, recipes, history } = await ask(readSocietyRecipes, society, { on: asked });
  return (
    <>
      <PageHead
        title="The society’s recipes"
        lead="How each crop group’s ground is made ready, for every member who has set nothing of their own. The catalogue’s values come with their sources; the society may set its own, from a day on."
      >
        <OnDay on={on} />
      </PageHead>
      <Sheet title={on === today ? 'As they hold today' : `As they hold on ${on}`} flush wide>
        <RecipeTable
          recipes={recipes}
          units={units}
          soil={null}
          whose="society"
          hrefOf={(group) => `/${society}/office/recipes/${group}${on === today ? '' : `?on=${on}`}`}
        />
      </Sheet>
      <Sheet title="What was set before" flush wide>
        {history.length === 0 ? (
          <Empty>Nothing yet: every recipe is the catalogue’s. Choose a group to change one.</Empty>
        ) : null}
        <Table
          caption="What was set before"
          columns={[{ head: 'what' }, { head: 'to' }, { head: 'from' }, { head: 'by' }]}
          rows={history.map(({ id, key, value, from, by }) => ({
            key: id,
            cells: [isRecipeKey(key) ? recipeRowName(key) : key, setTo(key, value, units), from, by],
          }))}
        />
      </Sheet>
    </>
  );
}

function setTo(key: string, value: string | number | null, units: Units): string {
  if (value === null) return 'put back';
  return isRecipeKey(key) && allows(rows[key], value) ? valueInWords(rows[key], value, units) : String(value);
}
