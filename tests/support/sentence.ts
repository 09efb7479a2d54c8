import { expect } from 'vitest';

const longestMessage = 600;

/**
 * Holds a message against the form of all messages: one line that ends with a point or a question, leaks nothing of the program,
 * begins with the argument's name, and says what was read.
 */
export function expectSentence(message: string, argument?: string, received?: string): void {
  expect(message).toMatch(/^\p{Lu}[^\p{Cc}\u2028\u2029]*[.?]$/u);
  expect(message.length, message).toBeLessThanOrEqual(longestMessage);
  const ownWords = message.replace(/\(read: .*\)/u, '').replace(/'.*'|".*"/gu, '…');
  expect(ownWords).not.toMatch(/fault of Tonrow|\bundefined\b|\bnull\b|\bNaN\b|\[object|\bat .+:\d+:\d+/);
  if (argument !== undefined) expect(message.startsWith(`${argument}: `), message).toBe(true);
  if (received !== undefined) expect(message).toContain(received);
}
