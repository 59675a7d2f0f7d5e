import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { chromiumFlags, findChromium } from '../electron/start/chromium.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Many tests try hundreds of random cases; on a machine that does other things besides, that takes its time. */
const PATIENCE_MS = 60_000;

export default defineConfig({
  root,
  cacheDir: '.out/vite',
  test: {
    coverage: {
      provider: 'v8',
      reportsDirectory: '.out/coverage',
      include: ['core/**/*.ts', 'electron/**/*.ts'],
    },
    projects: [
      {
        test: {
          root,
          name: 'core',
          environment: 'node',
          include: ['tests/core/**/*.test.ts'],
          testTimeout: PATIENCE_MS,
        },
      },
      {
        test: {
          root,
          name: 'electron',
          environment: 'node',
          include: ['tests/electron/**/*.test.ts'],
          testTimeout: PATIENCE_MS,
        },
      },
      {
        test: {
          root,
          name: 'architecture',
          environment: 'node',
          include: ['tests/architecture/**/*.test.ts'],
          // These run the linters themselves.
          testTimeout: 60_000,
        },
      },
      {
        root,
        cacheDir: '.out/vite-renderer',
        plugins: [react()],
        // Named here so that a first import does not reload the page in the middle of a test.
        optimizeDeps: {
          include: [
            'react',
            'react/jsx-runtime',
            'react/jsx-dev-runtime',
            'react-dom',
            'react-dom/client',
            'konva',
            'react-konva',
            'immer',
            'zod',
            'zustand',
            'zustand/vanilla',
            'rbush',
            'minisearch',
            'react-aria-components',
            '@tanstack/react-virtual',
            'react-resizable-panels',
            'cmdk',
            'lucide-react',
            'tinykeys',
            'axe-core',
            'fast-check',
            'bwip-js/generic',
            'pdfjs-dist/legacy/build/pdf.mjs',
            'pdfjs-dist/legacy/build/pdf.worker.mjs',
            'csv-parse/browser/esm/sync',
            'vitest-browser-react',
          ],
        },
        test: {
          name: 'renderer',
          include: ['tests/renderer/**/*.test.{ts,tsx}'],
          testTimeout: 20_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            viewport: { width: 1280, height: 800 },
            provider: playwright({
              launchOptions: { executablePath: findChromium() ?? undefined, args: chromiumFlags },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        test: {
          root,
          name: 'e2e',
          environment: 'node',
          include: ['tests/e2e/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
