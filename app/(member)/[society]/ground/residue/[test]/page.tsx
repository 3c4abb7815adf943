import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { readTest } from '@/lib/usecases/residue/read-tests';
import { TestPage } from '../../../_parts/residue-test';

export const metadata: Metadata = { title: 'Residue test' };

type Props = { params: Promise<{ society: string; test: string }>; searchParams: Promise<{ said?: string }> };

export default async function OwnTestPage({ params, searchParams }: Props) {
  const { society, test: testId } = await params;
  const { said } = await searchParams;
  return <TestPage society={society} read={await ask(readTest, society, { testId })} said={said} />;
}
