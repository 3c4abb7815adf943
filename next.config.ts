import type { NextConfig } from 'next';

const config: NextConfig = {
  poweredByHeader: false,
  // A table of 10 MB is taken in, and what is larger refused in words.
  experimental: { serverActions: { bodySizeLimit: '24mb' }, proxyClientMaxBodySize: '24mb' },
  // Title and icon come in the head of every page and never after it, so that no browser looks for an icon of its own.
  htmlLimitedBots: /.*/,
  redirects: async () => [{ source: '/favicon.ico', destination: '/icon.svg', permanent: true }],
  serverExternalPackages: ['@node-rs/argon2', 'graphile-worker', 'highs', 'pg'],
  headers: async () => [
    {
      source: '/:path*',
      headers: [
        { key: 'X-Content-Type-Options', value: 'nosniff' },
        { key: 'Referrer-Policy', value: 'same-origin' },
        { key: 'X-Robots-Tag', value: 'noindex' },
      ],
    },
  ],
};

export default config;
