// The model behaves by a soil's parameters, never by its name.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { branchesOnKind } from './kinds';
import { programOf } from './program';

it('nothing in sim outside sim/materials branches on the name of a soil', () => {
  expect(branchesOnKind(programOf())).toEqual([]);
});

describe('on planted lines', () => {
  const head = `
    import type { SoilKind, KindWord } from '../materials/soils';
    import { SOILS } from '../materials/soils';
    import { ODDS } from '../ground/odds';
    export type SizeId = 'clay' | 'silt' | 'mediumGravel';
    const LOCAL: Record<SoilKind, number> = {} as Record<SoilKind, number>;
    const CLAY = 'softClay';
    interface Layer { kind: SoilKind; K_ms: number }
    export const rate = (layer: Layer, other: Layer, word: KindWord, size: SizeId, text: string): unknown =>`;
  const caught = [
    "layer.kind === 'softClay' ? 1 : 2",
    "'softClay' !== layer.kind",
    'layer.kind === CLAY',
    "(layer.kind as string) === 'softClay'",
    "word === 'gravel'",
    "text === 'lateriticCrust'",
    'LOCAL[layer.kind]',
    'ODDS[layer.kind]',
    "new Set<SoilKind>(['softClay']).has(layer.kind)",
    "(['softClay', 'stiffClay'] as SoilKind[]).includes(layer.kind)",
    "layer.kind.endsWith('Clay')",
    "(() => { switch (layer.kind) { case 'peat': return 1; default: return 2; } })()",
  ];
  const free = [
    'SOILS[layer.kind]',
    'layer.kind === other.kind',
    'layer.K_ms > 1e-5',
    "size === 'clay'",
    "['silt'].includes(text)",
    "text === 'none'",
  ];
  const lines = [...caught, ...free];
  let root: string;
  let places: string[];

  beforeAll(() => {
    root = mkdtempSync(join(tmpdir(), 'kinds-'));
    const kinds = "'topsoil' | 'softClay' | 'stiffClay' | 'silt' | 'fineSand' | 'peat' | 'cobbles' | 'lateriticCrust'";
    write(
      'sim/materials/soils.ts',
      `export type SoilKind = ${kinds};\nexport type KindWord = 'clay' | 'gravel' | 'silt' | 'unknown';
       export const SOILS: Record<SoilKind, number> = {} as Record<SoilKind, number>;
       export const inMaterials = (kind: SoilKind): boolean => kind === 'peat';`,
    );
    write(
      'sim/ground/odds.ts',
      `import type { SoilKind } from '../materials/soils';
       export const ODDS: Record<SoilKind, Record<SoilKind, number>> = {} as Record<SoilKind, Record<SoilKind, number>>;
       export const odds = (above: SoilKind, below: SoilKind): number => ODDS[above][below];`,
    );
    lines.forEach((line, index) => write(`sim/fluid/line${index}.ts`, `${head}\n${line};\n`));
    mkdirSync(join(root, 'lessons'));
    places = branchesOnKind(programOf(root), root);
  });
  afterAll(() => rmSync(root, { recursive: true }));

  function write(path: string, text: string): void {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  const foundFor = (line: string) =>
    places.filter((place) => place.startsWith(`sim/fluid/line${lines.indexOf(line)}.ts`));

  it.each(caught)('catches: %s', (line) => expect(foundFor(line)).toHaveLength(1));
  it.each(free)('leaves alone: %s', (line) => expect(foundFor(line)).toEqual([]));
  it('leaves the tables of soils alone where they lie', () => {
    expect(places.filter((place) => /^sim\/(materials|ground)\//.test(place))).toEqual([]);
  });
});
