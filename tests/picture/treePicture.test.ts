import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { KeepersSet } from '../../src/advice/keepers/keepers.js';
import { message } from '../../src/advice/message.js';
import type { Proposal } from '../../src/contract/types.generated.js';
import { treePicture } from '../../src/picture/treePicture.js';
import { SparebudError } from '../../src/knowledge/error.js';
import { inventedTree } from '../structure/keepers/inventedTree.js';
import { advisor, root, shipped } from '../shipped.js';
import { all, type Element, named, readXml } from './readXml.js';

type Tree = Proposal['tree'];

const wording = (id: string, params: Readonly<Record<string, string>> = {}): string => message(shipped, id, params).text;
const demo = (name: string): { readonly tree: Tree } => parse(readFileSync(`${root}docs/demo/keepers-${name}.yaml`, 'utf8')) as { readonly tree: Tree };
const draw = (tree: Tree, set?: KeepersSet): Element => readXml(treePicture(tree, wording, set));
const texts = (svg: Element): readonly string[] => named(svg, 'text').map(({ text }) => text);

const sets = new Map<string, KeepersSet>();
beforeAll(async () => { for (const name of ['pine', 'twin']) sets.set(name, (await advisor.keepers(demo(name))).sets[0]!); }, 60_000);

const holds = (svg: Element): void => {
  const [width, height] = [Number(svg.attributes['width']), Number(svg.attributes['height'])];
  expect(width).toBe(800);
  for (const one of all(svg)) {
    for (const [key, value] of Object.entries(one.attributes)) {
      expect(value).not.toMatch(/NaN|undefined|Infinity/);
      if (!['x', 'x1', 'x2', 'cx', 'y', 'y1', 'y2', 'cy'].includes(key)) continue;
      expect(Number(value), `${one.name} ${key}`).toBeGreaterThanOrEqual(0);
      expect(Number(value), `${one.name} ${key}`).toBeLessThanOrEqual(key.includes('y') ? height : width);
    }
  }
  for (const text of named(svg, 'text')) {
    const reach = text.text.length * Number(text.attributes['font-size']) * 0.58;
    const x = Number(text.attributes['x']);
    const [from, to] = text.attributes['text-anchor'] === 'end' ? [x - reach, x] : text.attributes['text-anchor'] === 'middle' ? [x - reach / 2, x + reach / 2] : [x, x + reach];
    expect(from, text.text).toBeGreaterThanOrEqual(-1);
    expect(to, text.text).toBeLessThanOrEqual(width + 1);
  }
};

describe.each(['pine', 'twin'])('the picture of the demo %s', (name) => {
  it('is an image with a title and a text that tells what is kept and what goes', () => {
    const set = sets.get(name)!;
    const svg = draw(demo(name).tree, set);
    expect(svg.attributes).toMatchObject({ role: 'img', 'aria-labelledby': 'tree-title tree-desc' });
    const [title, desc] = svg.children;
    expect([title!.attributes['id'], desc!.attributes['id']]).toEqual(['tree-title', 'tree-desc']);
    for (const id of demo(name).tree.structure!.branches!.map((branch) => branch.id)) expect(desc!.text).toContain(id);
  });

  it('lies within its rim, and its words too', () => {
    holds(draw(demo(name).tree, sets.get(name)));
    holds(draw(demo(name).tree));
  });

  it('writes height and thickness of each branch beside its number, which stands in both views', () => {
    const svg = draw(demo(name).tree, sets.get(name));
    demo(name).tree.structure!.branches!.forEach(({ id, heightMm, diameterMm }) => {
      const label = texts(svg).find((text) => text.endsWith(` ${id}`))!;
      expect(texts(svg)).toContain(wording('tree.sizes', { height: String(heightMm), diameter: String(diameterMm) }));
      expect(texts(svg).filter((text) => text === label.split(' ')[0])).toHaveLength(2);
    });
  });

  it('is the same each time', () => {
    expect(treePicture(demo(name).tree, wording, sets.get(name))).toBe(treePicture(demo(name).tree, wording, sets.get(name)));
  });
});

describe('a picture of a tree', () => {
  it('tells kept, first and later apart by their dashes, not by colour alone', () => {
    const svg = draw(demo('pine').tree, sets.get('pine'));
    const key = (text: string): Element => named(svg, 'text').find((each) => each.text.startsWith(text))!;
    for (const fate of ['tree.keep', 'tree.now', 'tree.later']) expect(key(wording(fate, { date: '' }).replace(/ $/, ''))).toBeDefined();
    const dashes = named(svg, 'line').flatMap(({ attributes }) => attributes['stroke-dasharray'] ?? []);
    expect(new Set(dashes).size).toBe(2);
    const going = sets.get('pine')!.remove.length;
    expect(dashes.length).toBe(2 * going + 2);
  });

  it('marks old wounds with their width, the widest empty side, and the gaps between those that stay', () => {
    const svg = draw(demo('pine').tree, sets.get('pine'));
    expect(named(svg, 'title').map(({ text }) => text)).toContain(wording('tree.wound', { mm: '11', height: '70' }));
    expect(texts(svg)).toContain(wording('tree.empty', { degrees: '160' }));
    expect(texts(svg)).toEqual(expect.arrayContaining(['154', '94']));
  });

  it('draws a branch to the left of the viewer at azimuth 90 left of the trunk, and one at 0 below it as seen from above', () => {
    const branch = (azimuthDeg: number) => ({ id: 'only', heightMm: 100, azimuthDeg, diameterMm: 8, lengthMm: 100, pitchDeg: 0 });
    const one = (azimuthDeg: number): readonly { readonly x: number; readonly y: number }[] =>
      named(draw({ species: 'acer', trunk: { diameterMm: 30, heightMm: 300 }, structure: { branches: [branch(azimuthDeg)] } }), 'circle').filter(({ attributes }) => attributes['r'] === '7.5').map(({ attributes }) => ({ x: Number(attributes['cx']), y: Number(attributes['cy']) }));
    expect(one(90)[0]!.x).toBeLessThan(one(270)[0]!.x);
    expect(one(0)[1]!.y).toBeGreaterThan(one(180)[1]!.y);
  });

  it('leaves out a branch whose side is not told, and says so', () => {
    const { tree } = demo('pine');
    const svg = draw({ ...tree, structure: { ...tree.structure, branches: [...tree.structure!.branches!, { id: 'somewhere', heightMm: 200, diameterMm: 5 }] } });
    expect(texts(svg)).toContain(wording('tree.left-out', { branches: 'somewhere' }));
  });

  it('escapes whatever a branch is called, and shows a long name whole where it is pointed at', () => {
    const svg = draw({ species: 'acer', trunk: { diameterMm: 30, heightMm: 300 }, structure: { branches: [{ id: '<left> & "first" of all the branches', heightMm: 100, azimuthDeg: 90, diameterMm: 8 }] } });
    expect(named(svg, 'title').map(({ text }) => text)).toContain('1 <left> & "first" of all the branches');
  });

  it('holds for any invented tree, of up to thirty branches', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const { structure, trunk } = inventedTree(seed, 1 + (seed % 30));
      try {
        holds(draw({ species: 'acer', structure, trunk }));
      } catch (cause) {
        if (!(cause instanceof SparebudError)) throw cause;
      }
    }
  }, 60_000);
});
