// Numbers, dates and file sizes as people read them, all by Intl.
import { locale } from './language';

/** Making a format costs a hundred times what using it does: each is made once. */
const numberFormats = new Map<string, Intl.NumberFormat>();

function numberFormat(key: string, options: () => Intl.NumberFormatOptions): Intl.NumberFormat {
  let format = numberFormats.get(key);
  if (!format) numberFormats.set(key, (format = new Intl.NumberFormat(locale(), options())));
  return format;
}

/** At most `digits` decimals, never trailing zeros: 1.5, not 1.50. */
export function formatNumber(value: number, digits = 2): string {
  return numberFormat(`most ${digits}`, () => ({ maximumFractionDigits: digits })).format(value);
}

/** Always `digits` decimals, for columns and live readings that must not jump in width. */
export function formatFixed(value: number, digits: number): string {
  const fixed = (): Intl.NumberFormatOptions => ({ minimumFractionDigits: digits, maximumFractionDigits: digits });
  return numberFormat(`fixed ${digits}`, fixed).format(value);
}

export function formatPercent(share_frac: number): string {
  return numberFormat('percent', () => ({ style: 'percent', maximumFractionDigits: 0 })).format(share_frac);
}

export function formatDate(time_ms: number): string {
  return new Intl.DateTimeFormat(locale(), {
    day: 'numeric',
    month: 'short',
    hour: '2-digit',
    minute: '2-digit',
  }).format(time_ms);
}

/** A day without its hour. */
export function formatDay(time_ms: number): string {
  return new Intl.DateTimeFormat(locale(), { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' }).format(
    time_ms,
  );
}

/** A file's size in the largest fitting unit of kB, MB. */
export function formatSize(size_bytes: number): string {
  const mega = size_bytes >= 1e6;
  return new Intl.NumberFormat(locale(), {
    style: 'unit',
    unit: mega ? 'megabyte' : 'kilobyte',
    maximumFractionDigits: mega ? 1 : 0,
  }).format(mega ? size_bytes / 1e6 : size_bytes / 1e3);
}
