import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = fileURLToPath(new URL('.', import.meta.url));

export default defineConfig({
  root: here,
  // Relative addresses: the same build is served from app:// and from the loopback host.
  base: './',
  plugins: [react()],
  build: {
    outDir: fileURLToPath(new URL('../.out/renderer', import.meta.url)),
    emptyOutDir: true,
    target: 'chrome130',
    // The content policy allows no data: scripts or fonts, so nothing is inlined.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
  },
  worker: { format: 'es' },
});
