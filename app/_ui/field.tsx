'use client';

import { createContext, type ReactNode, useContext } from 'react';
import { useFieldState } from './form';

type Common = {
  readonly name: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly value?: string | undefined;
  readonly className?: string | undefined;
};

type TextProps = Common & {
  readonly type?: 'text' | 'email' | 'password' | 'date' | 'tel' | 'search' | 'datetime-local';
  readonly autoComplete?: string;
  readonly inputMode?: 'numeric' | 'decimal' | 'text' | 'email';
  readonly list?: string;
  readonly placeholder?: string;
  readonly suffix?: string;
};

/** One line of text, a number, a day. */
export function TextField({ name, label, hint, value, className, suffix, ...input }: TextProps) {
  const { id, typed, error } = useFieldState(name);
  return (
    <Labelled {...{ id, name, label, hint, error, className }}>
      <span className="with-suffix">
        <input id={id} name={name} defaultValue={one(typed) ?? value} {...described(id, hint, error)} {...input} />
        {suffix ? <span className="soft">{suffix}</span> : null}
      </span>
    </Labelled>
  );
}

/** Several lines of text. */
export function NoteField({ name, label, hint, value, className, rows = 3 }: Common & { readonly rows?: number }) {
  const { id, typed, error } = useFieldState(name);
  return (
    <Labelled {...{ id, name, label, hint, error, className }}>
      <textarea id={id} name={name} rows={rows} defaultValue={one(typed) ?? value} {...described(id, hint, error)} />
    </Labelled>
  );
}

/** A file to send instead of pasting its text. */
export function FileField({ name, label, hint, accept }: Omit<Common, 'value' | 'className'> & { accept: string }) {
  const { id, error } = useFieldState(name);
  return (
    <Labelled {...{ id, name, label, hint, error }}>
      <input id={id} name={name} type="file" accept={accept} {...described(id, hint, error)} />
    </Labelled>
  );
}

export type Choice = { readonly value: string; readonly label: string; readonly group?: string };

/** One of a list. */
export function SelectField({
  name,
  label,
  hint,
  value,
  className,
  choices,
  empty,
}: Common & { readonly choices: readonly Choice[]; readonly empty?: string }) {
  const { id, typed, error } = useFieldState(name);
  return (
    <Labelled {...{ id, name, label, hint, error, className }}>
      {/* React resets a form after its action, and a select only to what it was first made with: so it is made anew. */}
      <select key={one(typed)} id={id} name={name} defaultValue={one(typed) ?? value} {...described(id, hint, error)}>
        <Options choices={choices} {...(empty === undefined ? {} : { empty })} />
      </select>
    </Labelled>
  );
}

/** The options of a select, under their groups. */
export function Options({ choices, empty }: { readonly choices: readonly Choice[]; readonly empty?: string }) {
  const groups = [...new Set(choices.map(({ group }) => group ?? ''))];
  const options = (group: string) =>
    choices
      .filter((choice) => (choice.group ?? '') === group)
      .map(({ value, label }) => (
        <option key={value} value={value}>
          {label}
        </option>
      ));
  return (
    <>
      {empty === undefined ? null : <option value="">{empty}</option>}
      {groups.map((group) =>
        group ? (
          <optgroup key={group} label={group}>
            {options(group)}
          </optgroup>
        ) : (
          options(group)
        ),
      )}
    </>
  );
}

const GroupContext = createContext<string | null>(null);

/** Boxes or round ones that share a name, under their legend; what is wrong stands beside them all, once. */
export function TickGroup({
  name,
  legend,
  kind = 'radio',
  className,
  children,
}: Pick<Common, 'name' | 'className'> & {
  readonly legend: ReactNode;
  readonly kind?: 'checkbox' | 'radio';
  readonly children: ReactNode;
}) {
  const { id, error } = useFieldState(name);
  return (
    <GroupContext value={name}>
      <fieldset
        id={id}
        tabIndex={-1}
        className={className}
        aria-describedby={error ? `${id}-error` : undefined}
        {...(kind === 'radio' ? { role: 'radiogroup', 'aria-invalid': error ? true : undefined } : {})}
      >
        <legend>{legend}</legend>
        {children}
        <FieldError id={id} error={error} />
      </fieldset>
    </GroupContext>
  );
}

/** A box to tick, or one of a group of the same name. */
export function TickField({
  name,
  label,
  hint,
  value = 'yes',
  ticked,
  kind = 'checkbox',
}: Common & { readonly ticked?: boolean; readonly kind?: 'checkbox' | 'radio' }) {
  const { id: nameId, typed, error, isRefused } = useFieldState(name);
  const inGroup = useContext(GroupContext) === name;
  const was = isRefused ? (Array.isArray(typed) ? typed.includes(value) : typed === value) : ticked;
  const id = inGroup ? `${nameId}-${value}` : nameId;
  return (
    <div className="field tick">
      <input
        key={String(was)}
        type={kind}
        id={id}
        name={name}
        value={value}
        defaultChecked={was}
        {...(kind === 'checkbox' ? described(nameId, null, error) : {})}
      />
      <label htmlFor={id}>
        {label}
        {hint ? <span className="hint">{hint}</span> : null}
      </label>
      {inGroup ? null : <FieldError id={nameId} error={error} />}
    </div>
  );
}

function Labelled({
  id,
  label,
  hint,
  error,
  className,
  children,
}: Common & { readonly id: string; readonly error: string | undefined; readonly children: ReactNode }) {
  return (
    <div className={`field ${className ?? ''}`}>
      <label htmlFor={id}>{label}</label>
      {hint ? (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {children}
      <FieldError id={id} error={error} />
    </div>
  );
}

function FieldError({ id, error }: { readonly id: string; readonly error: string | undefined }) {
  return error ? (
    <p className="field-error" id={`${id}-error`}>
      {error}
    </p>
  ) : null;
}

function described(id: string, hint: ReactNode, error: string | undefined) {
  const by = [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ');
  return { ...(by ? { 'aria-describedby': by } : {}), ...(error ? { 'aria-invalid': true as const } : {}) };
}

function one(typed: string | string[] | undefined): string | undefined {
  return Array.isArray(typed) ? typed[0] : typed;
}
