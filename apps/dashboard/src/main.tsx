import '@fontsource/ibm-plex-sans/400.css';
import '@fontsource/ibm-plex-sans/500.css';
import '@fontsource/ibm-plex-sans/600.css';
import '@fontsource-variable/source-serif-4/wght-italic.css';
import './ui/tokens.css';
import './ui/base.css';
import './ui/marks.css';
import './ui/controls.css';
import './ui/form.css';
import './ui/page.css';
import { ApiProblem } from '@garboard/client/api-problem.ts';
import { HeadlessMantineProvider } from '@mantine/core';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { router } from './routes.tsx';
import './ui/print.css';

/** An answer given on purpose is not asked for again; a silence is, once. */
const queries = new QueryClient({
  defaultOptions: {
    queries: { staleTime: 30_000, retry: (failures, error) => failures < 1 && !(error instanceof ApiProblem) },
  },
});

const place = document.getElementById('root');
if (!place) throw new Error('index.html has no #root');
createRoot(place).render(
  <StrictMode>
    <HeadlessMantineProvider>
      <QueryClientProvider client={queries}>
        <RouterProvider router={router} />
      </QueryClientProvider>
    </HeadlessMantineProvider>
  </StrictMode>,
);
