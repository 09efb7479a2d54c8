import { readFileSync } from 'node:fs';
import path from 'node:path';
import { escapeAttribute, escapeText, packageSpace, part, relationshipSpace } from './xml.mjs';

const paneSpace = 'http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11';
const extensionSpace = 'http://schemas.microsoft.com/office/webextensions/webextension/2010/11';
const drawingSpace = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const officeRelations = 'http://schemas.microsoft.com/office/2011/relationships';
const customFunctionsExtension = '{7C84B067-C214-45C3-A712-C9D94CD141B2}';
/** This offer in a workbook, not the add-in: any identity does, as long as it stays. */
const instance = '{8c0f3b52-91d4-4e6b-a7c8-2f5d1e907a36}';
const manifestFile = path.resolve(import.meta.dirname, '../../manifest/manifest.xml');

/** The add-in as its manifest names it. */
export function addInOfManifest(manifest = readFileSync(manifestFile, 'utf8')) {
  const text = (name) => new RegExp(`<${name}>([^<]+)</${name}>`).exec(manifest)?.[1];
  return { id: text('Id'), version: text('Version') };
}

/**
 * What a workbook holds so that its recipient's host offers the add-in: the pane, the add-in it shows, and the
 * functions the workbook uses. `parts` and `contentTypes` by part name; `link` for the package's own relationships.
 */
export function webExtension(addIn, functionNames) {
  return {
    parts: {
      'xl/webextensions/taskpanes.xml': taskpanes,
      'xl/webextensions/_rels/taskpanes.xml.rels': part(
        `<Relationships xmlns="${packageSpace}"><Relationship Id="rId1" Type="${officeRelations}/webextension" Target="webextension1.xml"/></Relationships>`,
      ),
      'xl/webextensions/webextension1.xml': extension(addIn, functionNames),
    },
    contentTypes: {
      'xl/webextensions/taskpanes.xml': 'application/vnd.ms-office.webextensiontaskpanes+xml',
      'xl/webextensions/webextension1.xml': 'application/vnd.ms-office.webextension+xml',
    },
    link: { type: `${officeRelations}/webextensiontaskpanes`, target: 'xl/webextensions/taskpanes.xml' },
  };
}

const taskpanes = part(
  `<wetp:taskpanes xmlns:wetp="${paneSpace}"><wetp:taskpane dockstate="right" visibility="0" width="350" row="0">` +
    `<wetp:webextensionref xmlns:r="${relationshipSpace}" r:id="rId1"/></wetp:taskpane></wetp:taskpanes>`,
);

/** From the organisation's own list of add-ins first, or else as loaded from the recipient's machine. */
const stores = [
  { store: 'EXCatalog', storeType: 'EXCatalog' },
  { store: 'developer', storeType: 'Registry' },
];

function extension({ id, version }, functionNames) {
  const [first, ...others] = stores.map(
    ({ store, storeType }) =>
      `<we:reference id="${escapeAttribute(id)}" version="${escapeAttribute(version)}" store="${store}" storeType="${storeType}"/>`,
  );
  const functions = functionNames
    .map((name) => `<we:customFunctionIds>${escapeText(name)}</we:customFunctionIds>`)
    .join('');
  return part(
    `<we:webextension xmlns:we="${extensionSpace}" id="${instance}">${first}` +
      `<we:alternateReferences>${others.join('')}</we:alternateReferences>` +
      '<we:properties><we:property name="Office.AutoShowTaskpaneWithDocument" value="true"/></we:properties>' +
      `<we:bindings/><we:snapshot xmlns:r="${relationshipSpace}"/>` +
      `<we:extLst><a:ext xmlns:a="${drawingSpace}" uri="${customFunctionsExtension}">` +
      `<we:customFunctionIdList>${functions}</we:customFunctionIdList></a:ext></we:extLst></we:webextension>`,
  );
}

/** The names under which the formulas of some parts store our functions, each once, in order. */
export function storedFunctionNames(parts) {
  const names = parts.flatMap((xml) => xml.match(/\b_xldudf_TONROW_[A-Z0-9]+/g) ?? []);
  return [...new Set(names)].sort();
}
