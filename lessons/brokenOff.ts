// Tells a JSON text that was cut off from one that never was JSON.

/** True when at the end of the text a bracket or a string is still open. */
export function brokenOff(text: string): boolean {
  if (!text.startsWith('{')) return false;
  let open = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const sign = text[i];
    if (quoted) {
      if (sign === '\\') i++;
      else if (sign === '"') quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === '{' || sign === '[') open++;
    else if (sign === '}' || sign === ']') open--;
  }
  return open > 0 || quoted;
}
