import '@fontsource-variable/bitter/wght.css';
import '@fontsource-variable/source-sans-3/wght.css';
import './style/index.css';
import { render } from 'preact';
import { App } from './app.tsx';
import { unfoldForPrint } from './parts/unfold-for-print.ts';

render(<App />, document.getElementById('app')!);

unfoldForPrint(window);
