import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import './globals.css';

export const metadata: Metadata = {
  title: { default: 'Barrowmoot', template: '%s · Barrowmoot' },
  robots: { index: false },
  icons: { icon: '/icon.svg' },
};
export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: [{ media: '(prefers-color-scheme: dark)', color: '#191b17' }, { color: '#f5f1e8' }],
};

// Every page carries a nonce of its own, so none is made ahead.
export const dynamic = 'force-dynamic';

export default function RootLayout({ children }: { children: ReactNode }) {
  return (
    <html lang="en-GB">
      <body>
        <a className="skip" href="#main">
          Skip to the page
        </a>
        {children}
      </body>
    </html>
  );
}
