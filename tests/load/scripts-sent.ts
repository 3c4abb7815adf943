import fs from 'node:fs';
import { say } from '../../scripts/start/steps.mjs';
import { ask, page } from './http';
import { serve } from './service';
import { figure, type Section } from './table';
import { mainPages, type Visitor, visitorOf } from './visitors';

const drawing = {
  name: 'Drawing beds',
  pathFor: ({ slug, plotId }: Visitor) => `/${slug}/ground/plots/${plotId}/beds`,
};
const limits = { reading: 20, drawing: 60 };

/** The script that each page refers to, compressed as it is sent, beside what the framework sends with every page. */
export async function measureScripts(databaseUrl: string, visitors: readonly Visitor[]): Promise<Section> {
  say('scripts');
  const service = await serve(databaseUrl);
  try {
    const sizes = new Map<string, number>();
    const sent = async (files: readonly string[]) => {
      let bytes = 0;
      for (const file of files) {
        if (!sizes.has(file)) sizes.set(file, await compressedBytes(`${service.address}${file}`));
        bytes += sizes.get(file) ?? 0;
      }
      return bytes / 1000;
    };
    const floor = await sent(frameworkScripts());
    const rows: string[][] = [];
    for (const one of [...mainPages, drawing]) {
      const visitor = visitorOf(visitors, 'forSecretary' in one ? one.forSecretary : false, 0);
      const html = (await page(`${service.address}${one.pathFor(visitor)}`, visitor.cookie)).toString();
      const kilobytes = await sent(scriptsOf(html));
      const limit = one === drawing ? limits.drawing : limits.reading;
      const excess = kilobytes - floor;
      rows.push([
        one.name,
        figure(kilobytes, 1),
        figure(floor, 1),
        figure(excess, 1),
        `${limit}${excess > limit ? ', missed' : ''}`,
      ]);
    }
    return {
      title: 'Script sent with a page',
      heads: ['page', 'kB', 'framework alone, kB', 'above it, kB', 'limit above, kB'],
      rows,
      notes: [
        'Compressed by the service’s own server. The framework alone: the scripts that this build sends with every page, be it empty. Scripts for browsers without modules are left out of both: no browser in use loads them.',
      ],
    };
  } finally {
    await service.stop();
  }
}

/** Every script a page refers to: as an element, or as a chunk named in its data. */
function scriptsOf(html: string): string[] {
  const old = (html.match(/<script[^>]*noModule[^>]*>/gi) ?? []).flatMap((tag) => tag.match(chunk) ?? []);
  return [...new Set(html.match(chunk) ?? [])].filter((file) => !old.includes(file));
}

const chunk = /\/_next\/static\/[\w~./-]+\.js/g;

function frameworkScripts(): string[] {
  const { rootMainFiles } = JSON.parse(fs.readFileSync('.next/build-manifest.json', 'utf8'));
  return rootMainFiles.map((file: string) => `/_next/${file}`);
}

async function compressedBytes(url: string): Promise<number> {
  const { status, body } = await ask(url, { headers: { 'accept-encoding': 'gzip' } });
  if (status !== 200) throw new Error(`${url} answered ${status}`);
  return body.length;
}
