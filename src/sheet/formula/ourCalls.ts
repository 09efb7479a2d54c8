const stored = /_xldudf_TONROW_([A-Z]+)(?=\()/gi;
const shown = /\b(?:_xll\.)?TONROW\.([A-Z]+)(?=\()/gi;
const texts = /"(?:[^"]|"")*"/g;

/** Whether a formula calls a function of ours, outside its texts. */
export function callsUs(formula: string): boolean {
  const bare = formula.replace(texts, '""');
  return bare.search(stored) >= 0 || bare.search(shown) >= 0;
}

/** Whether a formula calls one of some functions of ours, named in upper case. */
export function callsAny(formula: string, names: readonly string[]): boolean {
  const bare = formula.replace(texts, '""');
  const calls = [...bare.matchAll(stored), ...bare.matchAll(shown)];
  return calls.some(([, name = '']) => names.includes(name.toUpperCase()));
}

/** Whether a formula refers to the cells another one spilled. */
export function refersToSpill(formula: string): boolean {
  return /\bANCHORARRAY\(/i.test(formula.replace(texts, '""'));
}

/** A formula as people read it: `_xldudf_TONROW_SHOP(` becomes `TONROW.SHOP(`; everything else stays as stored. */
export function shownFormula(formula: string): string {
  return outsideTexts(formula, (piece) => piece.replace(stored, 'TONROW.$1'));
}

/** The reverse of `shownFormula`. */
export function storedFormula(formula: string): string {
  return outsideTexts(formula, (piece) => piece.replace(shown, '_xldudf_TONROW_$1'));
}

function outsideTexts(formula: string, change: (piece: string) => string): string {
  let changed = '';
  let at = 0;
  for (const text of formula.matchAll(texts)) {
    changed += change(formula.slice(at, text.index)) + text[0];
    at = text.index + text[0].length;
  }
  return changed + change(formula.slice(at));
}
