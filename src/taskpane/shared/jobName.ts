/** The name of the workbook's file, where the host tells it. */
export function jobName(): string {
  const address = typeof Office === 'undefined' ? undefined : Office.context?.document?.url;
  const name = address?.split(/[/\\]/).at(-1)?.split('?')[0] ?? '';
  return name === '' ? 'This workbook' : decoded(name);
}

function decoded(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch (error) {
    if (error instanceof URIError) return name;
    throw error;
  }
}
