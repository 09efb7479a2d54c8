import { limits } from '../refusal/limits.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import { broken } from './characters.js';

const COLON = 58;

/** The elements that are open while a part is read, and the prefixes they declare. */
export class OpenElements {
  /** Where their names start and end, in turns. */
  private readonly names: number[] = [];
  private readonly declared: { prefix: string; depth: number }[] = [];

  constructor(private readonly xml: string) {}

  get depth(): number {
    return this.names.length / 2;
  }

  enter(start: number, end: number): void {
    if (this.depth >= limits.depth)
      refuseWorkbook('The file is refused: elements in one of its parts are nested too deeply.');
    this.names.push(start, end);
  }

  /** Leaves the innermost element, whose closing tag has its name from here on; gives where that ends. */
  leave(from: number): number {
    const { xml, names } = this;
    const end = names.pop() as number;
    const start = names.pop() as number;
    for (let at = start; at < end; at++)
      if (xml.charCodeAt(at) !== xml.charCodeAt(from + at - start)) broken();
    this.forget();
    return from + end - start;
  }

  /** Leaves an element without content. */
  leaveEmpty(): void {
    this.names.length -= 2;
    this.forget();
  }

  private forget(): void {
    while ((this.declared.at(-1)?.depth ?? 0) > this.depth) this.declared.pop();
  }

  declare(prefix: string): void {
    this.declared.push({ prefix, depth: this.depth });
  }

  /** Refuses a name with two colons, or with a prefix that nothing around it declares. */
  checkName(start: number, end: number): void {
    let colon = start;
    while (colon < end && this.xml.charCodeAt(colon) !== COLON) colon++;
    if (colon === end) return;
    const [prefix = '', local, ...more] = this.xml.slice(start, end).split(':');
    const isKnown = prefix === 'xml' || this.declared.some((one) => one.prefix === prefix);
    if (!local || more.length > 0 || !isKnown) broken();
  }
}
