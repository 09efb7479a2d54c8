// What the generated pages are made from; bundled for the script, imported as it is by the tests.
export { InputError } from '../../src/core/inputError.js';
export { allNotations } from '../../src/core/notation/allNotations.js';
export { notationKinds, refused } from '../../src/core/notation/notation.js';
export { pressItems } from '../../src/core/press/item/pressItem.js';
export { readPressValue } from '../../src/core/press/readPressValue.js';
export { megapascalPerKsi } from '../../src/core/quantity/units.js';
export { groupFields, rowFields } from '../../src/core/row/headings/heading.js';
export { headingMeanings } from '../../src/core/row/headings/headingMeanings.js';
export { headingUnits } from '../../src/core/row/headings/headingUnits.js';
export { otherHeadings } from '../../src/core/row/headings/headingWords.js';
export { defaultSettings, settingRows } from '../../src/core/shop/settings.js';
export { catalog, namespace } from '../../src/functions/catalog.js';
export { shopUnits } from '../../src/core/quantity/shopUnit.js';
export { stockColumns } from '../../src/core/shop/readStock.js';
