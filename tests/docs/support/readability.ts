import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

const sentences = new Intl.Segmenter('en', { granularity: 'sentence' });
const words = new Intl.Segmenter('en', { granularity: 'word' });

/**
 * The school grade that a text asks of its reader, by the formula of Flesch and Kincaid. What holds a figure, such as a
 * size or a section, counts as a word of one syllable: it is looked at, not read out.
 */
export function gradeOf(texts: readonly string[]): number {
  const counts = { sentence: 0, word: 0, syllable: 0 };
  for (const text of texts) {
    for (const { segment } of sentences.segment(text)) {
      const found = [...words.segment(segment)]
        .filter(({ isWordLike }) => isWordLike)
        .map((each) => each.segment);
      if (found.length === 0) continue;
      counts.sentence += 1;
      counts.word += found.length;
      for (const word of found) counts.syllable += /\d/.test(word) ? 1 : Math.max(1, syllable(word));
    }
  }
  return fleschKincaid(counts);
}

/** The paragraphs and list items of a page of Markdown, without code, tables, pictures and headings. */
export function proseOf(markdown: string): string[] {
  const plain = markdown
    .replace(/^ *```[\s\S]+?^ *```/gm, '')
    .replace(/^ *\|.*$/gm, '')
    .replace(/^#.*$/gm, '')
    .replace(/!\[[^\]]*\]\([^)]*\)/g, '')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/`([^`]*)`/g, '$1')
    .replace(/[*_]{1,2}/g, '');
  return plain
    .split(/\n\s*\n|\n(?=\s*(?:[-*]|\d+\.)\s)/)
    .map((block) =>
      block
        .replace(/^\s*(?:[-*]|\d+\.)\s/, '')
        .replace(/\s+/g, ' ')
        .trim(),
    )
    .filter((block) => block !== '');
}
