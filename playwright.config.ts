import { defineConfig, devices } from '@playwright/test';

const executablePath = process.env.CHROMIUM_PATH;

// The service under test is started by the test command: npm test -- browser
export default defineConfig({
  testDir: 'tests/browser',
  workers: 1,
  timeout: 180_000,
  expect: { timeout: 10_000 },
  forbidOnly: Boolean(process.env.CI),
  use: {
    baseURL: process.env.NEXTAUTH_URL ?? 'http://127.0.0.1:3000',
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  projects: [
    { name: 'desktop', use: { ...devices['Desktop Chrome'], viewport: { width: 1280, height: 900 } } },
    { name: 'phone', use: { ...devices['Pixel 5'] } },
  ],
});
