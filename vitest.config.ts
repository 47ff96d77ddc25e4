import { defineConfig } from 'vitest/config';

// Two projects: `unit` is everything that runs in plain Node; `e2e` needs a built app and Chromium.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: [
            'engine/**/*.test.ts',
            'formats/**/*.test.ts',
            'server/**/*.test.ts',
            'cli/**/*.test.ts',
            'web/src/**/*.test.{ts,tsx}',
            'scripts/**/*.test.ts',
          ],
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'e2e',
          include: ['web/e2e/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
