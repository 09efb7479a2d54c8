/** A page that holds the pane beside a workbook names its file in the title. */
const titled = /^(.+\.xls[mx]) · /i;

/** The name of the workbook's file, where the host or the page tells it. */
export function jobName(): string {
  const address = typeof Office === 'undefined' ? undefined : Office.context?.document?.url;
  const name = address?.split(/[/\\]/).at(-1)?.split('?')[0] ?? '';
  if (name !== '') return decoded(name);
  return titled.exec(document.title)?.[1] ?? 'This workbook';
}

function decoded(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch (error) {
    if (error instanceof URIError) return name;
    throw error;
  }
}
