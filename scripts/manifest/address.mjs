// The address of the folder on its host, as the manifest names it.

export const localAddress = 'https://localhost:3000';

/** An address that cannot be used; the message is the one sentence to print. */
export class AddressRefused extends Error {}

const example = 'for example --url https://apps.example.com/tonrow';

/** The address without a slash at its end. Only HTTPS: hosts load nothing else. */
export function readAddress(text) {
  if (text === undefined || text.trim() === '')
    throw new AddressRefused(`Say where the folder will be hosted, ${example}.`);
  const url = parse(text.trim());
  if (url.protocol !== 'https:')
    throw new AddressRefused(`'${text}' is not an https address; hosts load nothing else: ${example}.`);
  if (url.username || url.password || url.search || url.hash)
    throw new AddressRefused(
      `'${text}' holds a name, a query or a mark; give the plain address of the folder, ${example}.`,
    );
  return url.href.replace(/\/+$/, '');
}

function parse(text) {
  try {
    return new URL(text);
  } catch {
    throw new AddressRefused(`'${text}' is not an address; give one that begins with https://, ${example}.`);
  }
}
