import { expect, test } from 'vitest';
import { commitmentOf } from '@/lib/domain/sharing/lot';

// NIST, Cryptographic Algorithm Validation Program, SHA-256 short messages for bytes (SHA256ShortMsg), Len = 256.
test('what is published when a delivery opens is the SHA-256 of its 32 bytes', () =>
  expect(commitmentOf('09fc1accc230a205e4a208e64a8f204291f581a12756392da4b8c0cf5ef02b95')).toBe(
    '4f44c1c7fbebb6f9601829f3897bfd650c56fa07844be76489076356ac1886a4',
  ));
