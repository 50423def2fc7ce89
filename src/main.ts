// Starts the app in the page.
import { mount } from 'svelte';
import { crash } from './app/crash.svelte';
import { carriedIn } from './app/carried';
import { device } from './app/device.svelte';
import App from './screens/frame/App.svelte';
import { setLanguage } from './words';
import './styles/theme.css';
import './styles/base.css';

crash.watch();
if (new URLSearchParams(location.search).get('words') === 'pseudo') setLanguage('pseudo');

await device.open();
// The page was saved with an exercise in it: opened plainly, it begins there. Where one was on the way to is left alone.
const carried = carriedIn(document);
if (carried !== null && location.hash.replace(/^#\/?/, '') === '') location.replace(carried);
mount(App, { target: document.getElementById('app')! });
