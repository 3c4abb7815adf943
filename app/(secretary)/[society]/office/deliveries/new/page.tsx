import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { listMembers } from '@/lib/usecases/members/list-members';
import { readPaths } from '@/lib/usecases/site/read-paths';
import { FactsFields } from '../_parts/facts-fields';
import { planAction } from '../actions';

export const metadata: Metadata = { title: 'Plan a delivery' };

export default async function NewDeliveryPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const [everybody, { dropPoints }] = await Promise.all([ask(listMembers, society), ask(readPaths, society)]);
  const members = everybody.filter(({ isHere }) => isHere);
  return (
    <>
      <PageHead title="Plan a delivery" lead="Nobody sees it before you open it for booking." />
      <Sheet title="The load">
        <Form action={planAction.bind(null, society)} writeId={randomUUID()} submit="Plan it">
          <FactsFields given={{ closesAt: '' }} members={members} dropPoints={dropPoints} />
        </Form>
      </Sheet>
    </>
  );
}
