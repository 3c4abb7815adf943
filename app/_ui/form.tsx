'use client';

import { createContext, type ReactNode, useActionState, useContext, useEffect, useId, useRef } from 'react';
import { useFormStatus } from 'react-dom';
import type { FormAction, FormState, Preview } from './form-state';
import { Table } from './table';

const StateContext = createContext<{ state: FormState; formId: string } | null>(null);

/** What was typed into a field of the form around, and what is wrong with it. */
export function useFieldState(name: string) {
  const form = useContext(StateContext);
  const state = form?.state;
  const isRefused = state?.status === 'refused' || state?.status === 'looked';
  const typed = isRefused ? state.values[name] : undefined;
  // Several forms of a page may hold a field of the same name.
  const id = `${form?.formId ?? 'f'}-${name}`;
  return { id, typed, error: errorBeside(name, state?.errors ?? {}), isRefused };
}

// A table's faults are numbered under its field's name; the first stands beside it, all of them in the summary.
function errorBeside(name: string, errors: FormState['errors']): string | undefined {
  return errors[name] ?? Object.entries(errors).find(([key]) => fieldOf(key) === name)?.[1];
}

function fieldOf(name: string): string {
  return name.split('.', 1)[0] ?? name;
}

type Props = {
  readonly action: FormAction;
  /** Made once by the page that serves the form, so that sending it twice changes nothing. */
  readonly writeId: string;
  readonly children?: ReactNode;
  readonly submit?: string;
  readonly danger?: boolean;
  readonly className?: string;
  readonly labels?: Readonly<Record<string, string>>;
};

/** A form that works with script off, keeps what was typed, and says what is wrong beside the field. */
export function Form({ action, writeId, children, submit, danger, className, labels }: Props) {
  const [state, send] = useActionState(action, { status: 'idle', values: {}, errors: {}, writeId });
  const summary = useRef<HTMLDivElement>(null);
  const formId = useId();
  useEffect(() => {
    if (state.status !== 'idle') summary.current?.focus();
  }, [state]);
  return (
    <StateContext value={{ state, formId }}>
      <form
        action={send}
        className={className ?? 'form'}
        key={state.status === 'done' ? state.writeId : 'form'}
        noValidate
      >
        <Summary state={state} labels={labels} formId={formId} ref={summary} />
        <input type="hidden" name="writeId" value={state.status === 'idle' ? writeId : state.writeId} />
        {children}
        {state.status === 'looked' && state.preview ? <Looked preview={state.preview} /> : null}
        {submit ? (
          <Submit danger={danger} plain={state.status === 'looked'}>
            {submit}
          </Submit>
        ) : null}
      </form>
    </StateContext>
  );
}

type AskProps = {
  /** What was asked; nothing while nothing was. */
  readonly values: FormState['values'] | null;
  readonly errors: FormState['errors'];
  readonly children: ReactNode;
  readonly submit: string;
  readonly labels?: Readonly<Record<string, string>>;
};

/** A form that asks and changes nothing: its answer stands under an address of its own, at #answer, and what was typed stays. */
export function AskForm({ values, errors, children, submit, labels }: AskProps) {
  const formId = useId();
  const status = values === null ? 'idle' : Object.keys(errors).length ? 'refused' : 'looked';
  const formError = 'There is no answer yet. Please mend this first:';
  const state: FormState = { status, values: values ?? {}, errors, formError, writeId: '' };
  return (
    <StateContext value={{ state, formId }}>
      <form method="get" action="#answer" className="form" noValidate>
        <Summary state={state} labels={labels} formId={formId} ref={null} />
        {children}
        <button type="submit" className="button first">
          {submit}
        </button>
      </form>
    </StateContext>
  );
}

/** What was found on a look, and the button that does it. */
function Looked({ preview: { columns, rows, submit } }: { preview: Preview }) {
  return (
    <>
      <Table
        caption="What it would record"
        columns={columns.map((head) => ({ head }))}
        rows={rows.map((cells, at) => ({ key: String(at), cells }))}
      />
      <Submit name="step" value="take">
        {submit}
      </Submit>
    </>
  );
}

type SummaryProps = {
  state: FormState;
  labels: Props['labels'];
  formId: string;
  ref: React.RefObject<HTMLDivElement | null> | null;
};

function Summary({ state, labels, formId, ref }: SummaryProps) {
  if ((state.status === 'done' || state.status === 'looked') && state.message)
    return (
      <div className="notice kept" role="status" tabIndex={-1} ref={ref}>
        {state.message}
      </div>
    );
  if (state.status !== 'refused') return null;
  const errors = Object.entries(state.errors);
  return (
    <div className="notice short" role="alert" tabIndex={-1} ref={ref}>
      <p>{state.formError ?? 'Nothing was saved yet. Please mend this first:'}</p>
      {errors.length ? (
        <ul>
          {errors.map(([name, error]) => (
            <li key={name}>
              <a href={`#${formId}-${fieldOf(name)}`} onClick={(event) => focusField(event, fieldOf(name))}>
                {labels?.[name] ? `${labels[name]}: ` : ''}
                {error}
              </a>
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}

// The first field of that name in this form: ticks have one id each, and other forms of the page may hold the same name.
function focusField(event: React.MouseEvent<HTMLAnchorElement>, name: string) {
  const found = event.currentTarget.closest('form')?.elements.namedItem(name);
  const several = found instanceof RadioNodeList ? [...found] : [found];
  const field = several.find((one) => one instanceof HTMLInputElement && one.checked) ?? several[0];
  if (!(field instanceof HTMLElement)) return;
  event.preventDefault();
  field.focus();
}

/** The button that sends the form around it; while it works it says so and cannot send twice. */
function Submit({
  children,
  danger,
  name,
  value,
  plain,
}: {
  children: ReactNode;
  danger?: boolean | undefined;
  name?: string;
  value?: string;
  plain?: boolean;
}) {
  const { pending } = useFormStatus();
  const look = danger ? 'button danger' : plain ? 'button' : 'button first';
  return (
    <button
      type="submit"
      className={look}
      name={name}
      value={value}
      aria-disabled={pending}
      onClick={(event) => pending && event.preventDefault()}
    >
      {pending ? 'One moment …' : children}
    </button>
  );
}
