import http from 'node:http';

export type Answer = { readonly status: number; readonly body: Buffer };
type Asked = { readonly cookie?: string; readonly headers?: http.OutgoingHttpHeaders; readonly body?: Buffer };

// Connections are kept: each loop has one request under way at a time, so as many are open as there are loops.
const agent = new http.Agent({ keepAlive: true, maxSockets: Number.POSITIVE_INFINITY });

/** Ask once, as a browser without script does, uncompressed unless the headers say otherwise. */
export function ask(url: string, { cookie, headers = {}, body }: Asked = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const request = http.request(
      url,
      { agent, method: body ? 'POST' : 'GET', headers: { ...headers, ...(cookie ? { cookie } : {}) } },
      (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk) => chunks.push(chunk));
        response.on('error', reject);
        response.on('end', () => resolve({ status: response.statusCode ?? 0, body: Buffer.concat(chunks) }));
      },
    );
    request.on('error', reject);
    request.end(body);
  });
}

/** Ask for a page and take nothing but the page for an answer. */
export async function page(url: string, cookie?: string): Promise<Buffer> {
  const { status, body } = await ask(url, cookie ? { cookie } : {});
  if (status !== 200) throw new Error(`${url} answered ${status}: ${body.toString('utf8', 0, 300)}`);
  return body;
}

/** Let go of the connections. */
export function hangUp(): void {
  agent.destroy();
}
