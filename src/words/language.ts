// Which language the app speaks now. One per page: it is read from the address when the page opens.

export type Language = 'en' | 'pseudo';

let language: Language = 'en';

export function setLanguage(next: Language): void {
  language = next;
}

export function currentLanguage(): Language {
  return language;
}

/** The locale for numbers, plurals and dates: English as it is written in most of the world. The pseudo-locale keeps it. */
export function locale(): string {
  return 'en-GB';
}
