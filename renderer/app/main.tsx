import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { z } from 'zod';
import { App } from './app';
import { connect } from './bridge';
import { hostStore } from './host';
import { startUp } from './start-up';

// zod would try eval for speed, which the content policy refuses.
z.config({ jitless: true });

const place = document.getElementById('root');
if (!place) throw new Error('index.html has no #root');
const root = createRoot(place);
// The canvas bench drives the same window with a scene of its own; its code is fetched only then.
if (new URLSearchParams(location.search).has('bench'))
  void import('../bench/start-bench').then(({ startBench }) => startBench(root));
else {
  root.render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
  void connect()
    .catch(() => null)
    .then((client) => {
      hostStore.setState({ client });
      return startUp();
    });
}
