import { describe, expect, it } from 'vitest';
import { databaseAnswers } from '@/lib/usecases/health';

describe('a migrated database', () => {
  it('answers', async () => {
    expect(await databaseAnswers()).toBe(true);
  });
});
