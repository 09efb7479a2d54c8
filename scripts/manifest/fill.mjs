/** What stands for the hosting address in manifest/manifest.xml. */
export const placeholder = '%ADDRESS%';

const characters = { '&': '&amp;', '<': '&lt;', '"': '&quot;' };

/** The manifest for one hosting address. */
export function fillManifest(template, address) {
  return template.replaceAll(
    placeholder,
    address.replace(/[&<"]/g, (character) => characters[character]),
  );
}
