/// <reference types="svelte" />
/// <reference types="vite/client" />

/** Name of the self-contained form of the app, served beside the page so that the page can offer it to save. */
declare const __APP_FILE__: string;
