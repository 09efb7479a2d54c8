import { placeholder } from './fill.mjs';
import { longestAddress } from './rules.mjs';

const atTop = 'IconUrl, HighResolutionIconUrl, SupportUrl, DefaultSettings > SourceLocation';
const listed = 'Resources > Images > Image, Resources > Urls > Url';

/** Every address is HTTPS, within the hosted folder, and names a file that is there; icons have their size. */
export function checkAddresses(document, folder, report) {
  for (const address of manifestAddresses(document)) {
    const file = fileOf(address, folder.address);
    if (address.includes(placeholder)) report('placeholder', `The hosting address is missing in ${address}.`);
    else if (!address.startsWith('https://')) report('not https', `${address} is not an https address.`);
    else if (address.length > longestAddress)
      report('address length', `An address has ${address.length} characters, over ${longestAddress}.`);
    else if (file === undefined) report('foreign address', `${address} is not under ${folder.address}.`);
    else if (!folder.read(file)) report('missing file', `${address} names a file that is not there.`);
  }
  for (const image of document.querySelectorAll('Icon > Image')) checkPixels(image, document, folder, report);
}

/** Every address the manifest holds, once. */
export function manifestAddresses(document) {
  const elements = [...document.querySelectorAll(atTop), ...document.querySelectorAll(listed)];
  return [...new Set(elements.map((element) => element.getAttribute('DefaultValue') ?? ''))];
}

function fileOf(address, folder) {
  return address.startsWith(`${folder}/`) ? address.slice(folder.length + 1) : undefined;
}

const pngSignature = '89504e470d0a1a0a';

function checkPixels(image, document, folder, report) {
  const resource = document.getElementById(image.getAttribute('resid'));
  const file = fileOf(resource?.getAttribute('DefaultValue') ?? '', folder.address);
  const bytes = file === undefined ? undefined : folder.read(file);
  if (!bytes) return;
  const size = image.getAttribute('size');
  const isPng = bytes.subarray(0, 8).toString('hex') === pngSignature;
  const drawn = isPng ? `${bytes.readUInt32BE(16)} × ${bytes.readUInt32BE(20)}` : 'no PNG';
  if (drawn !== `${size} × ${size}`) report('icon pixels', `${file} is ${drawn}, not ${size} × ${size}.`);
}
