// The headless command by its verbs: what it prints, where, and its exit codes. Once also as a real process.

import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { call, files } from './headlessCall';

describe('ground', () => {
  test('gives version, layers with their parameters, and heads', () => {
    const { code, err, json } = call('ground', '--setting', 'flood-plain', '--seed', '7');
    expect([code, err]).toEqual([0, '']);
    expect(json).toMatchObject({
      setting: 'flood-plain',
      seed: 7,
      version: expect.any(Number),
      heads: expect.any(Array),
    });
    const layers = json.layers as {
      kind: string;
      top_m: number;
      bottom_m: number;
      parameters: Record<string, number>;
    }[];
    expect(layers[0]!.top_m).toBe(0);
    layers.forEach((layer, i) => expect(layer.top_m).toBe(i === 0 ? 0 : layers[i - 1]!.bottom_m));
    expect(layers[0]!.parameters.porosity_frac).toBeGreaterThan(0);
  });
  test('takes the smallest and the largest seed, and --seed=N as well', () => {
    expect(call('ground', '--setting', 'delta', '--seed', '0').code).toBe(0);
    expect(call('ground', '--setting', 'delta', '--seed=4294967295').json).toMatchObject({ seed: 4294967295 });
  });
});

test('lessons lists id and title', () => {
  const { code, json } = call('lessons');
  expect(code).toBe(0);
  expect(json.lessons).toContainEqual({ id: 'first-rods', title: 'The first rods' });
});

describe('play, replay, trace', () => {
  test('a played run is written, reproduced and traced', () => {
    const played = call('play', '--lesson', 'first-rods', '--crew', 'careful', '--seed', '21', '--out', 'run.json');
    expect([played.code, played.err]).toEqual([0, '']);
    expect(Object.keys(played.json)).toEqual([
      'lesson',
      'seed',
      'crew',
      'ticks',
      'hash',
      'score',
      'categories',
      'outcome',
      'ledger',
      'wall_ms',
    ]);
    const categories = played.json.categories as Record<string, { points: number; max: number }>;
    expect(Object.values(categories).reduce((sum, { max }) => sum + max, 0)).toBe(100);
    expect(Object.values(categories).reduce((sum, { points }) => sum + points, 0)).toBeCloseTo(
      played.json.score as number,
      6,
    );
    for (const error of Object.values(played.json.ledger as Record<string, number>))
      expect(Math.abs(error)).toBeLessThanOrEqual(1e-9);

    const replayed = call('replay', 'run.json');
    expect(replayed).toMatchObject({
      code: 0,
      err: '',
      json: { reproduced: true, hash: played.json.hash, score: played.json.score },
    });

    const traced = call('trace', 'run.json');
    expect(traced.code).toBe(0);
    const series = traced.json.series as Record<string, number[]>;
    const lengths = new Set(Object.values(series).map(({ length }) => length));
    expect(lengths.size).toBe(1);
    expect(series.time_s!.length).toBeGreaterThan(100);
    for (const name of [
      'bit_m',
      'flow_m3s',
      'suctionLevel_m',
      'returns_frac',
      'mouth_fineSand_frac',
      'mouth_coarseGravel_frac',
    ])
      expect(series).toHaveProperty(name);
    expect(Math.max(...series.depth_m!)).toBeGreaterThan(4.3);
    expect(Math.max(...series.mouth_fineSand_frac!)).toBeGreaterThan(0);

    const altered = JSON.parse(files.get('run.json')!) as { claimed: { score: number } };
    altered.claimed.score = 100;
    files.set('altered.json', JSON.stringify(altered));
    for (const verb of ['replay', 'trace']) {
      const result = call(verb, 'altered.json');
      expect(result).toMatchObject({ code: 1, json: { reproduced: false } });
      expect(result.err).toContain('not reproduced');
    }
    files.set('old.json', files.get('run.json')!.replace(/"sim":"[^"]*"/, '"sim":"0.0.0"'));
    expect(call('replay', 'old.json')).toMatchObject({ code: 1, json: { reproduced: false, hash: null, score: null } });
    files.set('cut.json', files.get('run.json')!.slice(0, 500));
    expect(call('replay', 'cut.json')).toMatchObject({ code: 2, out: '' });
  });
});

describe('open-hole', () => {
  const play = (...more: string[]) =>
    call('play', '--lesson', 'open-hole', '--crew', 'green', '--seed', '4', '--out', 'hole.json', ...more);

  test('a whole hole of the asked depth has no score, is reproduced and traced', () => {
    const played = play('--depth', '7.5', '--setting', 'coastal');
    expect([played.code, played.err]).toEqual([0, '']);
    expect(played.json).toMatchObject({ lesson: 'open-hole', score: null, categories: {} });
    expect(played.json.outcome).toMatchObject({ key: 'outcome.depthReached', text: expect.stringContaining(' m ') });
    expect(played.json.depth_m).toBeGreaterThanOrEqual(7.5);
    expect(call('replay', 'hole.json')).toMatchObject({
      code: 0,
      err: '',
      json: { reproduced: true, hash: played.json.hash, score: null },
    });
    const traced = call('trace', 'hole.json');
    expect(traced).toMatchObject({ code: 0, json: { lesson: 'open-hole', reproduced: true } });
    expect(Math.max(...(traced.json.series as Record<string, number[]>).depth_m!)).toBeGreaterThanOrEqual(7.5);
  });

  test('without options it is 20 m on the flood plain', () => {
    expect(play()).toMatchObject({ code: 0 });
    expect(JSON.parse(files.get('hole.json')!)).toMatchObject({ asked: { depth_m: 20, setting: 'flood-plain' } });
  });

  test('lessons lists it among the practices, not among the lessons', () => {
    const { json } = call('lessons');
    expect(json.practices).toEqual([{ id: 'open-hole', title: 'A whole hole' }]);
    expect(JSON.stringify(json.lessons)).not.toContain('open-hole');
  });

  test.each([
    ['2.9', '"2.9"'],
    ['40.1', '"40.1"'],
    ['-5', '"-5"'],
    ['1e1', '"1e1"'],
    ['deep', '"deep"'],
  ])('a depth of %s is turned away', (depth, part) => {
    expect(play(`--depth=${depth}`)).toMatchObject({ code: 2, out: '', err: expect.stringContaining(part) });
  });

  test('an unknown setting is turned away, and both options with another lesson', () => {
    expect(play('--setting', 'moon')).toMatchObject({ code: 2, out: '', err: expect.stringContaining('"moon"') });
    for (const [option, value] of [
      ['--depth', '20'],
      ['--setting', 'delta'],
    ] as const)
      expect(call('play', '--lesson', 'first-rods', '--crew', 'green', '--seed', '1', option, value)).toMatchObject({
        code: 2,
        out: '',
        err: expect.stringContaining(option),
      });
  });
});

describe('bad input', () => {
  test.each([
    [[], 'Verbs:'],
    [['dig'], '"dig"'],
    [['toString'], '"toString"'],
    [['lessons', 'all'], '"all"'],
    [['lessons', '--all', '1'], '--all'],
    [['ground', '--setting', 'delta'], '--seed'],
    [['ground', '--seed', '1'], '--setting'],
    [['ground', '--setting', 'moon', '--seed', '1'], '"moon"'],
    [['ground', '--setting', '--seed', '1'], '--setting'],
    [['ground', '--setting', 'delta', '--seed'], '--seed'],
    [['ground', '--setting', 'delta', '--seed', ''], '--seed'],
    [['ground', '--setting', 'delta', '--seed', '1', '--seed', '2'], 'twice'],
    [['ground', '--setting', 'delta', '--seed', '-1'], '"-1"'],
    [['ground', '--setting', 'delta', '--seed', '1.5'], '"1.5"'],
    [['ground', '--setting', 'delta', '--seed', '1e3'], '"1e3"'],
    [['ground', '--setting', 'delta', '--seed', '4294967296'], '"4294967296"'],
    [['ground', '--setting', 'delta', '--seed', 'NaN'], '"NaN"'],
    [['play', '--lesson', 'first-rods', '--crew', 'careful'], '--seed'],
    [['play', '--lesson', 'no-such', '--crew', 'careful', '--seed', '1'], '"no-such"'],
    [['play', '--lesson', 'first-rods', '--crew', 'toString', '--seed', '1'], '"toString"'],
    [['play', '--lesson', 'first-rods', '--crew', 'careful', '--seed', 'x'], '"x"'],
    [['replay'], 'name of a file'],
    [['replay', 'a.json', 'b.json'], '"b.json"'],
    [['replay', 'absent.json'], '"absent.json"'],
    [['replay', 'locked.json'], '"locked.json"'],
    [['trace', 'absent.json'], '"absent.json"'],
    [['replay', 'huge.json'], '100 MB'],
    [['replay', 'text.json'], 'JSON'],
  ])('%j ends with exit code 2, one sentence, and nothing on standard output', (args, part) => {
    files.set('locked.json', 'x');
    files.set('text.json', 'not a run');
    const { code, out, err } = call(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(part);
    expect(err).not.toMatch(/[{}]/);
  });

  test('a run that cannot be written is said so', () => {
    expect(
      call('play', '--lesson', 'first-rods', '--crew', 'green', '--seed', '1', '--out', '/nowhere/run.json'),
    ).toMatchObject({ code: 2, out: '' });
  });
});

describe('as a process', () => {
  const folder = mkdtempSync(join(tmpdir(), 'headless-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const npm = (...args: string[]) => spawnSync('npm', ['run', '-s', 'headless', '--', ...args], { encoding: 'utf8' });

  test('one JSON object on standard output, sentences and exit codes as promised', () => {
    const path = join(folder, 'run.json');
    const played = JSON.parse(
      execFileSync(
        'npm',
        [
          'run',
          '-s',
          'headless',
          '--',
          'play',
          '--lesson',
          'first-rods',
          '--crew',
          'green',
          '--seed',
          '2',
          '--out',
          path,
        ],
        { encoding: 'utf8' },
      ),
    ) as { hash: string };
    expect(JSON.parse(npm('replay', path).stdout)).toMatchObject({ reproduced: true, hash: played.hash });
    writeFileSync(path, readFileSync(path, 'utf8').replace(played.hash, '0123456789abcdef'));
    const altered = npm('replay', path);
    expect([altered.status, JSON.parse(altered.stdout)]).toMatchObject([1, { reproduced: false }]);
    const bad = npm('ground', '--setting', 'moon', '--seed', '1');
    expect([bad.status, bad.stdout]).toEqual([2, '']);
    expect(bad.stderr).toContain('moon');
  }, 60000);
});
