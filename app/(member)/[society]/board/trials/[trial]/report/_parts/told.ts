import type { readTrialReport } from '@/lib/usecases/trials/read-report';

export type Read = Awaited<ReturnType<typeof readTrialReport.run>>;
export type Report = NonNullable<Read['report']>;
export type ToldReport = NonNullable<Report['told']>;
