// Which language the app speaks now. One per page: it is read from the address when the page opens.

export type Language = 'en' | 'pseudo';

let language: Language = 'en';

export function setLanguage(next: Language): void {
  language = next;
}

export function currentLanguage(): Language {
  return language;
}

/** The locale for numbers, plurals and dates; the pseudo-locale keeps English ones. */
export function locale(): string {
  return 'en';
}
