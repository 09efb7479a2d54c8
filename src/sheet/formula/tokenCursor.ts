import { FormulaSyntaxError, type Token } from './tokens.js';

/** Goes through the tokens of a formula, forward. */
export class TokenCursor {
  private at = 0;

  constructor(private readonly tokens: readonly Token[]) {}

  peek(): Token {
    return this.tokens[this.at] as Token;
  }

  take(): Token {
    return this.tokens[this.at++] as Token;
  }

  /** Takes what must follow; refuses a formula that ends here. */
  takeMore(): Token {
    if (this.peek().kind === 'end') this.stop();
    return this.take();
  }

  /** Goes back to the token taken last. */
  back(): void {
    this.at--;
  }

  expect(kind: Token['kind']): void {
    if (this.take().kind === kind) return;
    this.back();
    this.stop();
  }

  /** Refuses the formula at the next token. */
  stop(): never {
    const { kind, text } = this.peek();
    throw new FormulaSyntaxError(
      kind === 'end' ? 'The formula ends too early.' : `The formula cannot be read at "${text}".`,
    );
  }
}
