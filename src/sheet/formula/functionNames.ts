/**
 * A function's name as people write it, from the form files store: `_xldudf_TONROW_SHOP` and
 * `_xll.TONROW.SHOP` are TONROW.SHOP, `_xlfn.XLOOKUP` is XLOOKUP. Upper case.
 */
export function displayFunctionName(stored: string, namespace: string): string {
  const upper = stored.toUpperCase();
  const ours = `_XLDUDF_${namespace}_`;
  if (upper.startsWith(ours)) return `${namespace}.${upper.slice(ours.length)}`;
  let name = upper;
  for (
    let prefix = /^_XL(?:FN|WS|PM|L|UDF)\./.exec(name);
    prefix;
    prefix = /^_XL(?:FN|WS|PM|L|UDF)\./.exec(name)
  ) {
    name = name.slice(prefix[0].length);
  }
  return name;
}

/** Functions that files name with a prefix, because they came after the format. */
const later = new Set(
  `
    ACOT ACOTH ARABIC BASE CEILING.MATH COMBINA CONCAT COT COTH CSC CSCH DAYS DECIMAL FLOOR.MATH FORECAST.LINEAR
    HSTACK IFNA IFS ISFORMULA ISOWEEKNUM MAXIFS MINIFS MUNIT NUMBERVALUE PERCENTILE.EXC PERCENTILE.INC
    QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ SEC SECH SEQUENCE SHEET SHEETS STDEV.P STDEV.S SWITCH
    TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VAR.P VAR.S VSTACK WRAPCOLS
    WRAPROWS XLOOKUP XMATCH XOR CHOOSECOLS CHOOSEROWS EXPAND TAKE DROP LET LAMBDA
  `
    .trim()
    .split(/\s+/),
);
const ofWorksheets = new Set(['FILTER', 'SORT', 'SORTBY']);

/** A function's name as files store it, from the way people write it. */
export function storedFunctionName(name: string, namespace: string): string {
  const upper = name.toUpperCase();
  if (upper.startsWith(`${namespace}.`)) return `_xldudf_${namespace}_${upper.slice(namespace.length + 1)}`;
  if (ofWorksheets.has(upper)) return `_xlfn._xlws.${upper}`;
  return later.has(upper) ? `_xlfn.${upper}` : name;
}
