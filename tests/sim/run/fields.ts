// Every single value in a state: where it stands, what it is, and how to put another in its place.

export type Plain = null | boolean | number | string;

export interface Field {
  /** Where it stands, such as hole.wall.cake_m[17]. */
  readonly path: string;
  /** The same without the place in a list, such as hole.wall.cake_m[]. */
  readonly kind: string;
  get(): Plain;
  set(value: Plain): void;
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

function walk(holder: Record<string, unknown>, path: string, kind: string, out: Field[]): void {
  const list = Array.isArray(holder) || ArrayBuffer.isView(holder);
  for (const key of Object.keys(holder)) {
    const here = list ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`;
    const one = list ? `${kind}[]` : kind === '' ? key : `${kind}.${key}`;
    const value = holder[key];
    if (isRecord(value)) walk(value, here, one, out);
    else
      out.push({
        path: here,
        kind: one,
        get: () => holder[key] as Plain,
        set: (other) => {
          holder[key] = other;
        },
      });
  }
}

/** All single values of plain data with typed arrays, in a fixed order. */
export function fieldsOf(root: object): Field[] {
  const out: Field[] = [];
  walk(root as Record<string, unknown>, '', '', out);
  return out;
}

/** The kinds of field there are, empty lists and nulls included, each once, in order. */
export function kindsOf(root: object): string[] {
  return [...new Set(fieldsOf(root).map(({ kind }) => kind))].sort();
}

const bits = new DataView(new ArrayBuffer(8));

/** The number with its last bit turned over. */
export function lastBitFlipped(value: number): number {
  bits.setFloat64(0, value === 0 ? 0 : value);
  bits.setUint8(7, bits.getUint8(7) ^ 1);
  return bits.getFloat64(0);
}

/** The least change there is of a value. */
export function changedLeast(value: Plain): Plain {
  if (typeof value === 'number') return lastBitFlipped(value);
  if (typeof value === 'string') return `${value}x`;
  return value === null ? 0 : !value;
}
