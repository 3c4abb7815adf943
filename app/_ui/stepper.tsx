'use client';

import { useState } from 'react';
import { useFieldState } from './form';

type Props = {
  readonly name: string;
  readonly label: string;
  /** What − and + are called to whoever cannot see them. */
  readonly unit: string;
  readonly suffix?: string;
  /** A value after so many steps up or down, as it is typed. */
  readonly stepped: (typed: string, steps: 1 | -1) => string;
  readonly onValue: (typed: string) => void;
};

/** A number that a gloved thumb makes with − and +, or that is typed; without script it is typed. */
export function Stepper({ name, label, unit, suffix, stepped, onValue }: Props) {
  const { id, typed, error } = useFieldState(name);
  const [value, setValue] = useState(typeof typed === 'string' ? typed : '');
  const change = (next: string) => {
    setValue(next);
    onValue(next);
  };
  return (
    <div className="field">
      <label htmlFor={id}>
        {label}
        {suffix ? <span className="soft">, {suffix}</span> : null}
      </label>
      <span className="stepper">
        <button type="button" className="button" aria-label={`Less ${unit}`} onClick={() => change(stepped(value, -1))}>
          −
        </button>
        <input
          id={id}
          name={name}
          value={value}
          inputMode="decimal"
          placeholder="0"
          autoComplete="off"
          onChange={(event) => change(event.target.value)}
          aria-describedby={error ? `${id}-error` : undefined}
          aria-invalid={error ? true : undefined}
        />
        <button type="button" className="button" aria-label={`More ${unit}`} onClick={() => change(stepped(value, 1))}>
          +
        </button>
      </span>
      {error ? (
        <p className="field-error" id={`${id}-error`}>
          {error}
        </p>
      ) : null}
    </div>
  );
}
