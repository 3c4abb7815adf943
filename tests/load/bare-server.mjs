// The least that could serve these pages: Node's own server, the same statements through pg, the same bytes.
import fs from 'node:fs';
import http from 'node:http';
import pg from 'pg';

const { port, databaseUrl, pages } = JSON.parse(fs.readFileSync(process.argv[2], 'utf8'));
const pool = new pg.Pool({ connectionString: databaseUrl, max: 10 });

const server = http.createServer(async (request, response) => {
  const page = pages[request.url];
  if (!page) {
    response.writeHead(request.url === '/' ? 200 : 404).end();
    return;
  }
  try {
    for (const { text, values } of page.queries) await pool.query({ text, values, rowMode: 'array' });
    response.writeHead(200, { 'content-type': 'text/html; charset=utf-8' }).end(page.html);
  } catch (error) {
    response.writeHead(500).end(String(error));
  }
});
// Connections wait while the others have their turn.
server.keepAliveTimeout = 600_000;
server.listen(port, '127.0.0.1');
