import type { Row } from '../row';
import { deliveries } from './deliveries';
import { ground } from './ground';
import { members } from './members';

/** Every operation there is, with who may; a missing one fails the suite. */
export const rows: readonly Row[] = [...members, ...ground, ...deliveries];
