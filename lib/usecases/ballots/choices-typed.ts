import 'server-only';
import type { Question } from '@/lib/data/ballot';
import { refuse } from '../refusal';

const longest = 120;
const abstain = { stands: 'abstain', words: 'Abstain' } as const;

/** What hands can be raised for: for or against a motion, or what was typed, one a line; and to abstain. */
export function choicesTyped(kind: Question['kind'], text: string | null): Question['choices'] {
  if (kind === 'motion') return [{ stands: 'for', words: 'For' }, { stands: 'against', words: 'Against' }, abstain];
  const lines = (text ?? '')
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
  if (lines.length < 2 || lines.length > 8) refuse('choices-two-to-eight', { field: 'choices' });
  if (lines.some((line) => line.length > longest))
    refuse('choice-too-long', { field: 'choices', numbers: { longest } });
  const alike = new Set([...lines, abstain.words].map((line) => line.toLowerCase()));
  if (alike.size <= lines.length) refuse('choices-alike', { field: 'choices' });
  return [...lines.map((words) => ({ stands: 'choice' as const, words })), abstain];
}
