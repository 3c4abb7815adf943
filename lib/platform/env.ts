import 'server-only';
import { z } from 'zod';

const shape = z.object({
  DATABASE_URL: z.string().min(1),
  DB_POOL: z.coerce.number().int().min(1).max(100).default(10),
  NEXTAUTH_SECRET: z.string().min(16),
  NEXTAUTH_URL: z.url(),
  SMTP_URL: z.string().optional(),
  MAIL_FROM: z.string().default('Barrowmoot <barrowmoot@localhost>'),
  BARROWMOOT_STATE: z.string().default('.data'),
  BARROWMOOT_DEMO: z.string().optional(),
  BARROWMOOT_TEST: z.string().optional(),
  BARROWMOOT_FIXED_NOW: z.string().optional(),
  COURSE_SECONDS: z.coerce.number().min(1).max(3600).default(60),
  BARROWMOOT_BENCH: z.string().optional(),
});

type Env = {
  readonly databaseUrl: string;
  readonly dbPool: number;
  readonly nextAuthSecret: string;
  readonly nextAuthUrl: string;
  readonly smtpUrl: string | undefined;
  readonly mailFrom: string;
  /** Where this installation keeps what is its own: the demo's sign-ins. */
  readonly stateDir: string;
  /** The demo society was loaded: its sign-ins and its mailbox are shown. */
  readonly demo: boolean;
  /** How long the planner may work at one course [s]. */
  readonly courseSeconds: number;
  readonly fixedNow: string | undefined;
  /** Pages answer from what they read first: the measurements' own floor. */
  readonly holdsAnswers: boolean;
};

let read: Env | undefined;

/** The environment, read and checked once, on first use: building needs none of it. */
export function env(): Env {
  read ??= readEnv();
  return read;
}

function readEnv(): Env {
  const given = shape.parse(process.env);
  return {
    databaseUrl: given.DATABASE_URL,
    dbPool: given.DB_POOL,
    nextAuthSecret: given.NEXTAUTH_SECRET,
    nextAuthUrl: given.NEXTAUTH_URL,
    smtpUrl: given.SMTP_URL || undefined,
    mailFrom: given.MAIL_FROM,
    stateDir: given.BARROWMOOT_STATE,
    demo: given.BARROWMOOT_DEMO === '1',
    courseSeconds: given.COURSE_SECONDS,
    // A clock that stands still is for tests alone, and so are answers that do.
    fixedNow: given.BARROWMOOT_TEST === '1' ? given.BARROWMOOT_FIXED_NOW : undefined,
    holdsAnswers: given.BARROWMOOT_TEST === '1' && given.BARROWMOOT_BENCH === '1',
  };
}
