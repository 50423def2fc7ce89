// Starts the app in the page.
import { mount } from 'svelte';
import { crash } from './app/crash.svelte';
import { device } from './app/device.svelte';
import App from './screens/frame/App.svelte';
import { setLanguage } from './words';
import './styles/theme.css';
import './styles/base.css';

crash.watch();
if (new URLSearchParams(location.search).get('words') === 'pseudo') setLanguage('pseudo');

await device.open();
mount(App, { target: document.getElementById('app')! });
