import type { HostInput } from '../../src/functions/descriptor/hostValue.js';

const token = /"((?:[^"]|"")*)"|(-?\d+(?:\.\d+)?)|(ShopStamp)|([{},;()])/y;

/** A call written with constants and the shop cell, as the examples of the functions are. */
export interface ExampleCall {
  name: string;
  inputs: HostInput[];
}

/** Reads `=TONROW.NAME(…)`. Throws for anything but constants, array constants and ShopStamp. */
export function readExample(formula: string, stamp: string): ExampleCall {
  const name = /^=TONROW\.([A-Z]+)\(/.exec(formula)?.[1];
  if (name === undefined) throw new Error(`no call of a function: ${formula}`);
  const inputs: HostInput[] = [];
  let rows: (string | number)[][] | undefined;
  token.lastIndex = formula.indexOf('(') + 1;
  for (;;) {
    const match = token.exec(formula);
    if (!match) throw new Error(`cannot be read: ${formula}`);
    const [, text, number, cell, mark] = match;
    const value =
      text?.replaceAll('""', '"') ?? (cell ? stamp : number === undefined ? undefined : Number(number));
    if (value !== undefined && rows) rows.at(-1)?.push(value);
    else if (value !== undefined) inputs.push(value);
    else if (mark === '{') rows = [[]];
    else if (mark === ';') rows?.push([]);
    else if (mark === '}') {
      inputs.push(rows ?? []);
      rows = undefined;
    } else if (mark === ')') {
      if (token.lastIndex !== formula.length) throw new Error(`more follows the call: ${formula}`);
      return { name, inputs };
    }
  }
}
