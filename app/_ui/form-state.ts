/** What a form's action gives back: nothing yet, refused with what was typed, or done. */
export type FormState = {
  readonly status: 'idle' | 'refused' | 'looked' | 'done';
  readonly values: Readonly<Record<string, string | string[]>>;
  readonly errors: Readonly<Record<string, string>>;
  readonly formError?: string;
  readonly message?: string;
  /** After a look: what sending it would do, and the word for doing so. */
  readonly preview?: Preview;
  readonly writeId: string;
};

export type Preview = {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly submit: string;
};

export type FormAction = (before: FormState, form: FormData) => Promise<FormState>;
