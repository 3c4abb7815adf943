/** What a form's action gives back: nothing yet, refused with what was typed, or done. */
export type FormState = {
  readonly status: 'idle' | 'refused' | 'done';
  readonly values: Readonly<Record<string, string | string[]>>;
  readonly errors: Readonly<Record<string, string>>;
  readonly formError?: string;
  readonly message?: string;
  readonly writeId: string;
};

export type FormAction = (before: FormState, form: FormData) => Promise<FormState>;
