// The job clock as it is written: hours, minutes, seconds.

/** The parts of 1:04:09, with two digits for minutes and seconds. */
export function clockParts(time_s: number): { h: string; min: string; s: string } {
  const whole_s = Math.max(0, Math.floor(time_s));
  const two = (value: number): string => String(value).padStart(2, '0');
  return { h: String(Math.floor(whole_s / 3600)), min: two(Math.floor(whole_s / 60) % 60), s: two(whole_s % 60) };
}
