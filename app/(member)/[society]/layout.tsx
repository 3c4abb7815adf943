import type { ReactNode } from 'react';
import { SocietyShell } from '@/app/_server/society-shell';

export default async function Layout({
  children,
  params,
}: {
  children: ReactNode;
  params: Promise<{ society: string }>;
}) {
  const { society } = await params;
  return <SocietyShell slug={society}>{children}</SocietyShell>;
}
