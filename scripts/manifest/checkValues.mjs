import { iconSizes, longestString, longestText } from './rules.mjs';

const guid = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/i;

/** Ids, versions, lengths of texts, the icons' sizes, and what the shared runtime needs. */
export function checkValues(document, report) {
  const text = (selector) => document.querySelector(selector)?.textContent?.trim() ?? '';
  if (!guid.test(text('OfficeApp > Id'))) report('id', `The Id '${text('OfficeApp > Id')}' is no GUID.`);
  if (!/^\d+(?:\.\d+){1,3}$/.test(text('OfficeApp > Version')))
    report('version', `The Version '${text('OfficeApp > Version')}' is not two to four numbers.`);
  checkLengths(document, report);
  checkIds(document, report);
  for (const icon of document.querySelectorAll('Icon')) {
    const sizes = [...icon.children].map((image) => image.getAttribute('size'));
    for (const size of iconSizes.filter((each) => !sizes.includes(each)))
      report('icon size', `The icon of ${icon.parentElement.localName} has no size ${size}.`);
  }
  checkRuntime(document, report);
}

function checkLengths(document, report) {
  for (const [name, longest] of Object.entries(longestText)) {
    for (const element of document.querySelectorAll(`OfficeApp > ${name}`)) {
      const value = element.getAttribute('DefaultValue') ?? element.textContent ?? '';
      if (value.trim() === '' || value.length > longest)
        report('text length', `${name} has ${value.length} characters; 1 to ${longest} are allowed.`);
    }
  }
  for (const [list, longest] of Object.entries(longestString)) {
    for (const string of document.querySelectorAll(`Resources > ${list} > String`)) {
      const { length } = string.getAttribute('DefaultValue') ?? '';
      if (length === 0 || length > longest)
        report('text length', `${string.id} has ${length} characters; 1 to ${longest} are allowed.`);
    }
  }
}

function checkIds(document, report) {
  const ids = [...document.querySelectorAll('Group, Control')].map((element) => element.id);
  if (new Set(ids).size < ids.length) report('repeated id', `An id of the ribbon stands twice: ${ids}.`);
  for (const id of ids.filter((each) => each === '' || each.length > 125))
    report('control id', `The id '${id}' has ${id.length} characters; 1 to 125 are allowed.`);
}

function checkRuntime(document, report) {
  const lifetime = document.querySelector('Runtimes > Runtime')?.getAttribute('lifetime');
  if (lifetime !== 'long') report('lifetime', `The runtime's lifetime is '${lifetime}', not long.`);
  const sets = [...document.querySelectorAll('OfficeApp > Requirements > Sets > Set')];
  const shared = sets.find((set) => set.getAttribute('Name') === 'SharedRuntime');
  if (shared?.getAttribute('MinVersion') !== '1.1')
    report('requirement set', 'The requirements do not ask for SharedRuntime 1.1.');
}
