import { WorkbookError } from '../../workbook/workbookError.js';

/** What a host must be able to do so that a copy of its file can be made and handed over. */
export function canMakeFiles(): boolean {
  if (typeof Office === 'undefined' || typeof Excel === 'undefined') return false;
  const { document, requirements } = Office.context ?? {};
  return (
    typeof document?.getFileAsync === 'function' &&
    typeof Excel.createWorkbook === 'function' &&
    requirements.isSetSupported('CompressedFile', '1.1') &&
    requirements.isSetSupported('ExcelApi', '1.8')
  );
}

const sliceSize = 4_194_304;

/** The workbook as a file, as it is now. */
export async function readHostFile(): Promise<Uint8Array> {
  const file = await asked<Office.File>((done) =>
    Office.context.document.getFileAsync(Office.FileType.Compressed, { sliceSize }, done),
  );
  try {
    const bytes = new Uint8Array(file.size);
    let at = 0;
    for (let index = 0; index < file.sliceCount; index += 1) {
      const { data } = await asked<Office.Slice>((done) => file.getSliceAsync(index, done));
      bytes.set(data as ArrayLike<number>, at);
      at += (data as ArrayLike<number>).length;
    }
    return bytes;
  } finally {
    // A host lets an add-in hold two files at most.
    await new Promise<void>((resolve) => file.closeAsync(() => resolve()));
  }
}

function asked<Answer>(ask: (done: (result: Office.AsyncResult<Answer>) => void) => void): Promise<Answer> {
  return new Promise((resolve, reject) =>
    ask(({ status, value, error }) => {
      if (status === Office.AsyncResultStatus.Succeeded) resolve(value);
      else
        reject(
          new WorkbookError(
            'failed',
            `The spreadsheet program did not hand over the file (${error.message}). Save the workbook, then try again.`,
          ),
        );
    }),
  );
}

/** Opens a file as a new workbook, which the user saves: that works where a page can save none, as on a Mac. */
export async function openInHost(bytes: Uint8Array): Promise<void> {
  try {
    await Excel.createWorkbook(base64(bytes));
  } catch (error) {
    throw new WorkbookError(
      'failed',
      'The spreadsheet program did not open the copy: allow it to open another window, then try again.',
      { cause: error },
    );
  }
}

const pieceBytes = 0x60_00;

function base64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += pieceBytes)
    text += String.fromCharCode(...bytes.subarray(at, at + pieceBytes));
  return btoa(text);
}
