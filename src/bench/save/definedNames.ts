import type { DefinedName } from '../../sheet/formula/scope.js';
import { sameName } from '../../sheet/names.js';
import { keepNames } from '../../xlsx/sheetList.js';
import type { XmlElement } from '../../xlsx/xml/element.js';
import { attributeText, encodeString } from '../../xlsx/xml/text.js';

/**
 * Has the names of the whole workbook as they are now, and changes the texts of all; a name whose text loses what it
 * stands for goes.
 */
export function changeNames(
  workbook: XmlElement,
  before: readonly DefinedName[],
  now: readonly DefinedName[],
  adapt: (text: string, sheet: number | undefined) => string,
): void {
  const bare = (text: string) => text.replace(/^=/, '').replaceAll("'", '');
  const same = (a: DefinedName, b: DefinedName) =>
    a.sheet === undefined && sameName(a.name, b.name) && bare(a.text) === bare(b.text);
  const gone = before.filter((old) => old.sheet === undefined && !now.some((one) => same(one, old)));
  const localOf = (name: XmlElement) => {
    const local = name.attribute('localSheetId');
    return local === undefined ? undefined : Number(local);
  };
  keepNames(workbook, (name) => {
    const isOld = gone.some((old) => sameName(old.name, name.attribute('name') ?? ''));
    return localOf(name) !== undefined || !isOld;
  });
  for (const one of now.filter((each) => !before.some((old) => same(old, each))))
    workbook
      .made('definedNames')
      .insert(
        `<definedName name="${attributeText(one.name)}">${encodeString(one.text.replace(/^=/, ''))}</definedName>`,
      );
  keepNames(workbook, (name) => {
    const { text } = name;
    const after = adapt(text, localOf(name));
    name.text = after;
    return !after.includes('#REF!') || text.includes('#REF!');
  });
}
