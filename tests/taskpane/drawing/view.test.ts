// @vitest-environment jsdom
import axe from 'axe-core';
import { act, createElement } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Drawing } from '../../../src/drawing/drawing.js';
import { DrawingView, nextPoint } from '../../../src/taskpane/drawing/DrawingView.js';

const hostile = '<img src=x onerror="alert(1)">‮abc';
const drawing: Drawing = {
  title: `Holes of ${hostile}`,
  summary: `One sentence about ${hostile}.`,
  width: 300,
  height: 100,
  shapes: [
    { kind: 'line', path: 'M0 0L10 10', line: 'center' },
    { kind: 'area', path: 'M0 0h5v5h-5Z', fill: 'hatch', line: 'outline' },
    { kind: 'area', path: 'M9 9h5v5h-5Z', fill: 'paper', line: 'outline' },
    { kind: 'text', x: 5, y: 20, text: hostile, behind: 'box' },
    { kind: 'text', x: 5, y: 40, text: 'bare', behind: 'paper' },
  ],
  points: ['first', 'second', hostile].map((label, at) => ({ x: at * 10, y: 5, label })),
  table: { headings: ['Thickness', 'Hole'], rows: [['1/2', hostile]] },
};

// The page's own style sheet comes before the pane's.
document.head.appendChild(document.createElement('style')).textContent =
  'caption { caption-side: bottom; color: rgb(1, 2, 3); }';

let root: Root;
let page: HTMLElement;
beforeEach(() => {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
  page = document.body.appendChild(document.createElement('main'));
  root = createRoot(page);
  act(() => root.render(createElement(DrawingView, { drawing })));
});
afterEach(() => {
  act(() => root.unmount());
  page.remove();
});

const frame = () => page.querySelector<HTMLElement>('[role=application]') ?? page;
const press = (key: string) =>
  act(
    () => void frame().dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })),
  );
const said = () => page.querySelector('[aria-live=polite]')?.textContent;

describe('a drawing on the page', () => {
  it('has a title, one sentence and the same facts as a table', () => {
    const id = frame().getAttribute('aria-labelledby') ?? '';
    expect(document.getElementById(id)?.textContent).toBe(drawing.title);
    const described = (frame().getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((each) => document.getElementById(each));
    expect(described[0]?.textContent).toBe(drawing.summary);
    expect([...page.querySelectorAll('th')].map((cell) => cell.textContent)).toEqual(['Thickness', 'Hole']);
    expect([...page.querySelectorAll('td')].map((cell) => cell.textContent)).toEqual(['1/2', hostile]);
  });

  it('shows text of a workbook as text, never as markup', () => {
    expect(page.querySelector('img')).toBeNull();
    expect(page.querySelector('svg text')?.textContent).toBe(hostile);
  });

  it('reads out point after point by the arrow keys, and stays at the ends', () => {
    const heard = ['ArrowRight', 'ArrowDown', 'End', 'ArrowRight', 'ArrowLeft', 'Home', 'ArrowUp'].map(
      (key) => {
        press(key);
        return said();
      },
    );
    expect(heard).toEqual(['first', 'second', hostile, hostile, 'second', 'first', 'first']);
    expect(page.querySelectorAll('svg > circle')).toHaveLength(1);
  });

  it('leaves other keys alone', () => {
    const event = new KeyboardEvent('keydown', { key: 'Tab', bubbles: true, cancelable: true });
    act(() => void frame().dispatchEvent(event));
    expect(event.defaultPrevented).toBe(false);
    expect(said()).toBe('');
  });

  it('fills paper with paper, framed or not, and only lines are open', () => {
    const fills = [...page.querySelectorAll('svg > path, svg > rect')].map((shape) => [
      shape.tagName,
      getComputedStyle(shape).fill.replace(/^url.*/, 'pattern'),
    ]);
    const paper = 'var(--colorNeutralBackground1)';
    expect(fills).toEqual([
      ['path', 'none'],
      ['path', 'pattern'],
      ['path', paper],
      ['rect', paper],
      ['rect', paper],
    ]);
    const framed = [...page.querySelectorAll('svg > path, svg > rect')].map(
      (shape) => getComputedStyle(shape).strokeWidth,
    );
    expect(framed).toEqual(['1.5px', '2.5px', '2.5px', '1.5px', '']);
  });

  it('has the caption of its table above it, in the color of the text, though the page says otherwise', () => {
    const caption = page.querySelector('caption') ?? page;
    page.style.color = 'rgb(7, 8, 9)';
    const { captionSide, color } = getComputedStyle(caption);
    expect([captionSide, color]).toEqual(['top', 'rgb(7, 8, 9)']);
  });

  it('has nothing that axe calls serious or critical', async () => {
    const { violations } = await axe.run(page, { rules: { 'color-contrast': { enabled: false } } });
    expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')).toEqual([]);
  });
});

describe('the next point', () => {
  it.each([
    ['ArrowRight', undefined, 3, 0],
    ['ArrowLeft', undefined, 3, 2],
    ['ArrowRight', 2, 3, 2],
    ['ArrowUp', 0, 3, 0],
    ['Enter', 1, 3, undefined],
    ['Home', undefined, 0, undefined],
  ])('%s from %s of %i is %s', (key, chosen, count, next) => {
    expect(nextPoint(key, chosen, count)).toBe(next);
  });
});
