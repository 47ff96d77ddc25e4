import '@fontsource-variable/bitter/wght.css';
import '@fontsource-variable/source-sans-3/wght.css';
import './style/index.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { unfoldForPrint } from './parts/unfold-for-print.ts';

createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);

unfoldForPrint(window);
