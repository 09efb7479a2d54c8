import { readFileSync } from 'node:fs';
import ts from 'typescript';

/** Stands for what a message puts in: a size, a name, a count. */
const filled = 'X1';

/** The sentences that a file of the source says: texts of several words that end as a sentence does. */
export function messagesOf(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const text = textOf(node);
    if (text === undefined) {
      ts.forEachChild(node, visit);
      return;
    }
    if (isSentence(text)) found.push(text.trim());
  };
  visit(source);
  return found;
}

/** Of a text, a template or texts joined by a plus; undefined for anything else. */
function textOf(node: ts.Node): string | undefined {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (ts.isJsxText(node)) return node.text.replace(/\s+/g, ' ');
  if (ts.isTemplateExpression(node))
    return node.head.text + node.templateSpans.map(({ literal }) => filled + literal.text).join('');
  if (!ts.isBinaryExpression(node) || node.operatorToken.kind !== ts.SyntaxKind.PlusToken) return undefined;
  const [left, right] = [textOf(node.left), textOf(node.right)];
  if (left === undefined && right === undefined) return undefined;
  return (left ?? filled) + (right ?? filled);
}

const isSentence = (text: string) => /[.!?]$/.test(text.trim()) && text.trim().split(/\s+/).length >= 4;
