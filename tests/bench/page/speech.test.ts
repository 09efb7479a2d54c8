// @vitest-environment jsdom
import { beforeEach, expect, it } from 'vitest';
import { Speech } from '../../../src/bench/page/speech.js';

let speech: Speech;
const news = () => document.querySelector('#news')?.textContent;
beforeEach(() => {
  document.body.innerHTML =
    '<p id="news"></p><p id="trouble"><span class="text"></span><button class="dismiss"></button></p><dialog></dialog>';
  const [line, trouble, question] = ['#news', '#trouble', 'dialog'].map(
    (each) => document.querySelector(each) as HTMLElement,
  );
  speech = new Speech(line as HTMLElement, trouble as HTMLElement, question as HTMLDialogElement);
});

it('what is said of the workbook as it is goes with the next change', () => {
  speech.sayUntilChanged('quote.xlsx is saved.');
  expect(news()).toBe('quote.xlsx is saved.');
  speech.changed();
  expect(news()).toBe('');
});

it('other news stay', () => {
  speech.say('Opened.');
  speech.changed();
  expect(news()).toBe('Opened.');
  speech.sayUntilChanged('quote.xlsx is saved.');
  speech.say('Opening …');
  speech.changed();
  expect(news()).toBe('Opening …');
});
