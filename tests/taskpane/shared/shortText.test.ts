import fc from 'fast-check';
import { expect, it } from 'vitest';
import { shortText } from '../../../src/taskpane/shared/shortText.js';

const note = "Punch force is 91% of Bay A's rating, above the 80% the shop uses. Understood as: edge rolled.";

it('a text that fits is shown whole, on one line', () => {
  expect(shortText(' Bay A\n', 10)).toBe('Bay A');
  expect(shortText(note, 100)).toBe(note);
});

it('one that does not fit is cut behind its first sentence, else behind a word', () => {
  expect(shortText(note, 80)).toBe("Punch force is 91% of Bay A's rating, above the 80% the shop uses.");
  expect(shortText(note, 40)).toBe("Punch force is 91% of Bay A's rating,…");
  expect(shortText('x'.repeat(90), 10)).toBe('xxxxxxxxx…');
  // Behind what parts a long word, and never inside a letter.
  expect(shortText('CATWALK-LEVEL2/HANDRAIL-POST', 20)).toBe('CATWALK-LEVEL2/…');
  expect(shortText('👷🏽'.repeat(20), 10)).toBe('👷🏽👷🏽…');
  expect(shortText('e\u0301'.repeat(20), 10)).toBe(`${'e\u0301'.repeat(4)}…`);
});

it('no text is longer than asked, or ends within a word that would have fitted', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z]{1,9}\.?$/), { maxLength: 60 }), (words) => {
      const text = words.join(' ');
      const shown = shortText(text, 40);
      expect(shown.length).toBeLessThanOrEqual(40);
      const kept = shown.replace('…', '');
      expect(text.startsWith(kept)).toBe(true);
      expect([undefined, ' ']).toContain(text[kept.length]);
    }),
  );
});
