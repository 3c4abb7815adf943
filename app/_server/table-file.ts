import 'server-only';

const largestBytes = 10 * 1024 * 1024;

/**
 * Put a chosen file's text into the form's field for pasted text, so that both take the same way on. Spreadsheets
 * write UTF-8 or, older ones, Windows-1252.
 */
export async function withTableFile(form: FormData): Promise<FormData> {
  const file = form.get('file');
  form.delete('file');
  if (!(file instanceof File) || file.size === 0) return form;
  // What is too large is refused beside the field; no need to read it all for that.
  const bytes = await file.slice(0, largestBytes + 1).arrayBuffer();
  form.set('table', decoded(bytes));
  return form;
}

function decoded(bytes: ArrayBuffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
