import '@fontsource/atkinson-hyperlegible/latin-400.css';
import '@fontsource/atkinson-hyperlegible/latin-700.css';
import './drawing-sheet.css';
import { mount } from 'svelte';
import App from './app.svelte';
import { keepThePage } from './offline/keep-the-page.ts';

const target = document.getElementById('app');
if (target === null) throw new Error('the page has no place for the program: an element with the id app is missing');
mount(App, { target });
keepThePage();
