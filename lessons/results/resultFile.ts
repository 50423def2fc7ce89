// A result as a file, and as letters for messages and pictures.

import { pack } from '../exercises/packed';
import { logText } from './logText';
import { resultCheck } from './resultOf';
import { ResultFields, type Result } from './resultSchema';

type FieldName = keyof typeof ResultFields;
export const FIELD_NAMES = Object.keys(ResultFields) as readonly FieldName[];

/** The result as a file's content. Whoever opens it can read whose it is; the log is packed. */
export function writeResult(result: Result): string {
  const { log, altered: _altered, ...fields } = result;
  const text = logText(log);
  return `${JSON.stringify({ ...fields, log: pack(text), check: resultCheck(fields, text) }, null, 2)}\n`;
}

/** The same as letters (A-Z, a-z, 0-9, - and _). Fields by their place; [] stands for one that is left out. */
export function packResult(result: Result): string {
  const values = FIELD_NAMES.map((name) => {
    const value = result[name];
    return value === undefined ? [] : value;
  });
  return pack([result.version, ...values, logText(result.log)]);
}
