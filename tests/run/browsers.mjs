// Finds the browsers that the tests drive, and on Debian as root installs those that are missing.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { argv, env, getuid, platform } from 'node:process';
import { pathToFileURL } from 'node:url';

/**
 * @typedef {'chromium' | 'firefox'} BrowserName
 * @typedef {{variable: string, names: string[], places: string[], debianPackage: string, title: string}} BrowserFacts
 */

/** @type {Record<BrowserName, BrowserFacts>} */
const BROWSERS = {
  chromium: {
    title: 'Chromium',
    variable: 'CHROMIUM_PATH',
    names: ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'microsoft-edge'],
    places: [
      '/usr/lib/chromium/chromium',
      '/snap/bin/chromium',
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
      'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
    ],
    debianPackage: 'chromium',
  },
  firefox: {
    title: 'Firefox',
    variable: 'FIREFOX_PATH',
    names: ['firefox-esr', 'firefox'],
    places: [
      '/usr/lib/firefox-esr/firefox-esr',
      '/usr/lib/firefox/firefox',
      '/Applications/Firefox.app/Contents/MacOS/firefox',
      'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
    ],
    debianPackage: 'firefox-esr',
  },
};

/** @type {BrowserName[]} */
export const BROWSER_NAMES = ['chromium', 'firefox'];

/**
 * The path of a browser's program, or null where none is found. A path set in the environment is taken at its word:
 * where nothing lies there, that is an error, not a reason to look elsewhere.
 * @param {BrowserName} name
 * @param {Record<string, string | undefined>} [environment]
 * @returns {string | null}
 */
export function findBrowser(name, environment = env) {
  const facts = BROWSERS[name];
  const told = environment[facts.variable];
  if (told) {
    if (isProgram(told)) return told;
    throw new Error(`${facts.variable} is set to ${told}, but there is no program at that place.`);
  }
  const folders = (environment.PATH ?? '').split(delimiter).filter(Boolean);
  const suffixes = platform === 'win32' ? ['.exe'] : [''];
  const onPath = facts.names.flatMap((program) =>
    folders.flatMap((folder) => suffixes.map((suffix) => join(folder, program + suffix))),
  );
  return [...onPath, ...facts.places].find(isProgram) ?? null;
}

/** Installs the browsers that are missing; throws with a plain sentence where that cannot be done. */
export function ensureBrowsers() {
  const missing = () => BROWSER_NAMES.filter((name) => findBrowser(name) === null);
  let left = missing();
  if (left.length > 0 && canInstall()) {
    const packages = left.map((name) => BROWSERS[name].debianPackage);
    console.log(`Installing for the browser tests: ${packages.join(', ')}.`);
    runAptGet(['update', '-qq']);
    runAptGet(['install', '-y', '-qq', '--no-install-recommends', ...packages]);
    left = missing();
  }
  if (left.length > 0) {
    const wants = left.map((name) => `${BROWSERS[name].title} (or set ${BROWSERS[name].variable} to its program)`);
    throw new Error(`The browser tests need ${wants.join(' and ')}. Please install what is missing and run again.`);
  }
}

/** Chromium's sandbox refuses to run as root; the rest keeps it from looking for a network. */
export const CHROMIUM_ARGS = [
  ...(getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

function canInstall() {
  return getuid?.() === 0 && isProgram('/usr/bin/apt-get');
}

/** @param {string[]} args */
function runAptGet(args) {
  // A failure is not reported here: whether the browsers are there afterwards is what counts.
  spawnSync('/usr/bin/apt-get', args, {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...env, DEBIAN_FRONTEND: 'noninteractive' },
  });
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

if (argv[1] && import.meta.url === pathToFileURL(argv[1]).href) {
  try {
    ensureBrowsers();
    for (const name of BROWSER_NAMES) console.log(`${BROWSERS[name].title}: ${findBrowser(name)}`);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
