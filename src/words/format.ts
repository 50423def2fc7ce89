// Numbers, dates and file sizes as people read them, all by Intl.
import { locale } from './language';

const numberFormats = new Map<number, Intl.NumberFormat>();

/** At most `digits` decimals, never trailing zeros: 1.5, not 1.50. */
export function formatNumber(value: number, digits = 2): string {
  let format = numberFormats.get(digits);
  if (!format) {
    format = new Intl.NumberFormat(locale(), { maximumFractionDigits: digits });
    numberFormats.set(digits, format);
  }
  return format.format(value);
}

/** Always `digits` decimals, for columns and live readings that must not jump in width. */
export function formatFixed(value: number, digits: number): string {
  return new Intl.NumberFormat(locale(), { minimumFractionDigits: digits, maximumFractionDigits: digits }).format(
    value,
  );
}

export function formatPercent(share_frac: number): string {
  return new Intl.NumberFormat(locale(), { style: 'percent', maximumFractionDigits: 0 }).format(share_frac);
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
