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
