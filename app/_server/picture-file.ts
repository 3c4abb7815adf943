import 'server-only';

const largestBytes = 20 * 1024 * 1024;

/** The chosen picture of a form as bytes, and the form without it; nothing chosen is no bytes. */
export async function withPicture(form: FormData): Promise<{ form: FormData; file: Uint8Array }> {
  const file = form.get('file');
  form.delete('file');
  if (!(file instanceof File)) return { form, file: new Uint8Array() };
  // What is too large is refused beside the field; no need to read it all for that.
  return { form, file: new Uint8Array(await file.slice(0, largestBytes + 1).arrayBuffer()) };
}
