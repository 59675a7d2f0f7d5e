import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';

const place = document.getElementById('root');
if (!place) throw new Error('index.html has no #root');
createRoot(place).render(<StrictMode>Latchwork</StrictMode>);
