import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { copyMaker } from '../../../src/taskpane/handOff/copyMaker.js';
import { openWorkbook } from '../../../src/xlsx/workbook.js';
import { readSheetValues } from '../../../src/xlsx/readSheetValues.js';
import { catalog } from '../../../src/functions/catalog.js';
import { workbookFile } from '../../golden/quote.js';
import { zipParts } from '../../xlsx/support/buildWorkbook.js';

const texts = (bytes: Uint8Array) =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));

const addIn = '5b0d7c1e-3a52-4c7e-9f5d-6a1d0e8f2b47';

/** The example as a host saves it: with the parts of the add-in that was open in it, and its own properties. */
function savedByHost(): Uint8Array {
  const parts = texts(new Uint8Array(readFileSync(workbookFile)));
  const office = 'http://schemas.microsoft.com/office';
  parts['xl/webextensions/webextension1.xml'] =
    `<we:webextension xmlns:we="${office}/webextensions/webextension/2010/11" id="{${addIn}}"><we:reference id="${addIn}" version="0.1.0.0" store="EXCatalog" storeType="EXCatalog"/><we:properties><we:property name="Office.StartupBehavior" value="&quot;Load&quot;"/></we:properties></we:webextension>`;
  parts['xl/webextensions/taskpanes.xml'] =
    `<wetp:taskpanes xmlns:wetp="${office}/webextensions/taskpanes/2010/11" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><wetp:taskpane visibility="0"><wetp:webextensionref r:id="rId1"/></wetp:taskpane></wetp:taskpanes>`;
  parts['xl/webextensions/_rels/taskpanes.xml.rels'] =
    `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/2011/relationships/webextension" Target="webextension1.xml"/></Relationships>`;
  parts['docProps/app.xml'] =
    '<Properties><Company>Shop Inc</Company><TitlesOfParts>Shop</TitlesOfParts></Properties>';
  parts['_rels/.rels'] = (parts['_rels/.rels'] ?? '').replace(
    '</Relationships>',
    `<Relationship Id="rIdW" Type="${office}/2011/relationships/webextensiontaskpanes" Target="xl/webextensions/taskpanes.xml"/><Relationship Id="rIdP" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/extended-properties" Target="docProps/app.xml"/></Relationships>`,
  );
  return zipParts(parts);
}

type Done = (result: object) => void;

/** A host that hands its file over in slices, and what became of it. */
function stubHost({ fails = false, sets = ['CompressedFile', 'ExcelApi'], sliceBytes = 10_000 } = {}) {
  const file = savedByHost();
  const seen = { open: 0, opened: [] as Uint8Array[] };
  const slices = Math.ceil(file.length / sliceBytes);
  const handle = {
    size: file.length,
    sliceCount: slices,
    getSliceAsync: (index: number, done: Done) =>
      fails && index === 1
        ? done({ status: 'failed', error: { message: 'busy' } })
        : done({
            status: 'succeeded',
            value: { data: [...file.subarray(index * sliceBytes, (index + 1) * sliceBytes)] },
          }),
    closeAsync: (done: () => void) => {
      seen.open -= 1;
      done();
    },
  };
  vi.stubGlobal('Office', {
    AsyncResultStatus: { Succeeded: 'succeeded' },
    FileType: { Compressed: 'compressed' },
    context: {
      requirements: { isSetSupported: (name: string) => sets.includes(name) },
      document: {
        getFileAsync: (_: string, __: object, done: Done) => {
          seen.open += 1;
          done({ status: 'succeeded', value: handle });
        },
      },
    },
  });
  vi.stubGlobal('Excel', {
    createWorkbook: async (text: string) =>
      void seen.opened.push(new Uint8Array(Buffer.from(text, 'base64'))),
  });
  return { seen, file };
}

afterEach(() => vi.unstubAllGlobals());

describe("a customer's copy made through the host", () => {
  it('holds no part, name, property or text of ours', async () => {
    const { seen, file } = stubHost();
    const maker = copyMaker();
    const made = await maker?.make('customer');
    expect(made?.parts).toContain('xl/webextensions/webextension1.xml');
    const said = made && (await maker?.save(made, 'customer'));
    expect(said).toMatch(/^The copy is open as a new workbook: save it/);
    expect(seen.open).toBe(0);
    const [bytes = new Uint8Array()] = seen.opened;
    const all = Object.entries(texts(bytes)).flat().join('\n');
    const ours = [
      'tonrow',
      'webextension',
      'taskpane',
      addIn,
      'xldudf',
      'ShopStamp',
      'Shop Inc',
      'docProps',
      '<f>',
      '<f ',
    ];
    for (const secret of [...ours, ...catalog.map(({ name }) => `${name}(`)])
      expect(all.toLowerCase(), secret).not.toContain(secret.toLowerCase());
    expect(openWorkbook(bytes).sheets.map(({ name }) => name)).toEqual(['Quote', 'Summary', 'List check']);
    expect(readSheetValues(bytes, 'Quote')).toEqual(readSheetValues(file, 'Quote'));
  });

  it('is no different for any size of the slices', async () => {
    const made = await Promise.all(
      [1_000, 7_777, 1_000_000].map(async (sliceBytes) => {
        stubHost({ sliceBytes });
        return (await copyMaker()?.make('customer'))?.bytes;
      }),
    );
    expect(made[1]).toEqual(made[0]);
    expect(made[2]).toEqual(made[0]);
  });

  it('is refused in one sentence where the host hands over no slice, and the file is given back', async () => {
    const { seen } = stubHost({ fails: true });
    await expect(copyMaker()?.make('customer')).rejects.toThrow(
      'The spreadsheet program did not hand over the file (busy). Save the workbook, then try again.',
    );
    expect(seen.open).toBe(0);
  });
});

describe('a host that cannot hand over its file', () => {
  it.each([[[]], [['CompressedFile']], [['ExcelApi']]])('offers no copy of it: it knows only %j', (sets) => {
    stubHost({ sets });
    expect(copyMaker()).toBeUndefined();
  });
});
