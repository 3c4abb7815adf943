'use client';

import { useState } from 'react';
import { SelectField, TextField } from '@/app/_ui/field';
import { Reason } from '@/app/_ui/sheet';
import { Stepper } from '@/app/_ui/stepper';
import { badWhyWords } from '@/app/_ui/store-words';
import { ThumbButton } from '@/app/_ui/thumb-button';
import type { Units } from '@/lib/domain/quantity/length';
import { badWhys } from '@/lib/domain/store/lot';
import { formatAmount, readAmount } from '@/lib/domain/store/lot-amount';
import { typedMass } from './typed-mass';

type Props = {
  readonly lotId: string;
  readonly measure: 'pieces' | 'grams';
  readonly units: Units;
  /** What − and + go by: a piece, or so many grams. */
  readonly step: number;
  readonly there: number;
  readonly justDone: boolean;
  readonly isDue: boolean;
};

/** What was found at a lot. Nothing said: all of it is sound, in one press. */
export function RoundFields({ lotId, measure, units, step, there, justDone, isDue }: Props) {
  const [used, setUsed] = useState('');
  const [bad, setBad] = useState('');
  const read = (typed: string) => (typed.trim() === '' ? 0 : readAmount(typed, measure, units));
  const stepped = (typed: string, steps: 1 | -1) => {
    const next = Math.min(there, Math.max(0, (read(typed) ?? 0) + steps * step));
    if (next === 0) return '';
    return measure === 'pieces' ? String(next) : typedMass(Math.round(next), units);
  };
  const suffix = measure === 'pieces' ? {} : { suffix: units === 'metric' ? 'kg' : 'lb' };
  const told = (typed: string, word: string) => {
    const amount = read(typed);
    return amount ? [`${formatAmount(amount, measure, units)} ${word}`] : [];
  };
  const found = [...told(used, 'used'), ...told(bad, 'bad')];
  return (
    <>
      <input type="hidden" name="there" value={there} />
      <div className="steppers">
        <Stepper name="used" label="Used since" unit="used" stepped={stepped} onValue={setUsed} {...suffix} />
        <Stepper name="bad" label="Taken out bad" unit="bad" stepped={stepped} onValue={setBad} {...suffix} />
      </div>
      <SelectField
        name="badWhy"
        label="Why bad"
        empty="not said"
        choices={badWhys.map((value) => ({ value, label: badWhyWords[value] }))}
        className="short-field"
      />
      <Reason ask={measure === 'grams' ? 'On another day, or weighed' : 'On another day'}>
        <TextField name="on" type="date" label="Gone over on" value="" hint="Empty: today." />
        {measure === 'grams' ? (
          <TextField
            name="sound"
            label="Sound by the scales"
            inputMode="decimal"
            className="short-field"
            hint="Empty: what is neither used nor bad. What is missing dried away."
            {...suffix}
          />
        ) : null}
      </Reason>
      <p className="script-off">The button saves the numbers above; where there are none, all is sound.</p>
      <div className="heap-thumb wide">
        <ThumbButton does={lotId} justDone={justDone}>
          {found.length ? `Save: ${found.join(', ')}` : isDue ? 'All sound' : 'All sound, though not due'}
        </ThumbButton>
      </div>
    </>
  );
}
