import { randomUUID } from 'node:crypto';

export type Field = readonly [name: string, value: string];

/** The fields of the form that holds a field, as a browser without script would send them. */
export function fieldsOfForm(html: string, having: string): Field[] {
  const forms = html.match(/<form[\s\S]*?<\/form>/g) ?? [];
  const form = forms.find((one) => one.includes(`name="${having}"`));
  if (!form) throw new Error(`there is no form with a field ${having}`);
  return (form.match(/<input[^>]*>/g) ?? []).flatMap((tag): Field[] => {
    const name = attribute(tag, 'name');
    const isTick = attribute(tag, 'type') === 'checkbox';
    return name === null || (isTick && !/ checked/.test(tag)) ? [] : [[name, attribute(tag, 'value') ?? '']];
  });
}

function attribute(tag: string, name: string): string | null {
  const found = new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1];
  return (
    found
      ?.replaceAll('&quot;', '"')
      .replaceAll('&#x27;', "'")
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&amp;', '&') ?? null
  );
}

/** Fields as the body that a browser posts. */
export function multipart(fields: readonly Field[]): { body: Buffer; headers: Record<string, string> } {
  const edge = `----${randomUUID()}`;
  const parts = fields.map(
    ([name, value]) => `--${edge}\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${value}\r\n`,
  );
  const body = Buffer.from(`${parts.join('')}--${edge}--\r\n`);
  return {
    body,
    headers: { 'content-type': `multipart/form-data; boundary=${edge}`, 'content-length': String(body.length) },
  };
}
