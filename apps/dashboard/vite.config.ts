import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  plugins: [react()],
  build: {
    // The server's policy serves faces from our own host only; an inlined one would be refused.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 800,
  },
  server: { proxy: { '/v1': 'http://127.0.0.1:8080' } },
});
