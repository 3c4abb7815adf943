// Loaded into a service before anything else: notes every statement that goes to PostgreSQL, with its values.
import fs from 'node:fs';
import pg from 'pg';

const plain = pg.Client.prototype.query;
pg.Client.prototype.query = function query(...args) {
  const [first, second] = args;
  const text = typeof first === 'string' ? first : first?.text;
  const values = (typeof first === 'string' ? second : (first?.values ?? second)) ?? [];
  // The job queue asks by the clock, not for a page.
  if (text && !text.includes('graphile_worker'))
    fs.appendFileSync(
      process.env.BENCH_QUERIES,
      `${JSON.stringify({ text, values: Array.isArray(values) ? values : [] }, plainly)}\n`,
    );
  return plain.apply(this, args);
};

function plainly(_, value) {
  return typeof value === 'bigint' ? String(value) : value;
}
