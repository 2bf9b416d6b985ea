import {defineConfig} from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    pool: 'forks',
    // Most tests wait for a browser or another process; vitest by itself leaves one of two cores idle.
    maxWorkers: '100%',
  },
});
