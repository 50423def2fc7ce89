// A length of time as ISO 8601 writes it, to a hundredth of a second.

const hundredths = (time_s: number): number => Math.round(time_s * 100) / 100;

/** Hours, minutes and seconds only: a day is not always 24 hours long. Worked values: 5040 -> PT1H24M, 0 -> PT0S, 61.5 -> PT1M1.5S. */
export function isoDuration(time_s: number): string {
  const whole_s = hundredths(Math.max(0, time_s));
  const hours = Math.floor(whole_s / 3600);
  const minutes = Math.floor((whole_s - hours * 3600) / 60);
  const seconds = hundredths(whole_s - hours * 3600 - minutes * 60);
  const parts = [hours > 0 ? `${hours}H` : '', minutes > 0 ? `${minutes}M` : '', seconds > 0 ? `${seconds}S` : ''];
  return `PT${parts.join('') || '0S'}`;
}
