import { longestResourceId, resourceKind, sharedPage } from './rules.mjs';

/** Every resource id is short, unique, used, and of the kind its users need; the shared page is one resource. */
export function checkResources(document, report) {
  const kinds = new Map();
  for (const { id, parentElement } of document.querySelectorAll('Resources > * > *')) {
    if (kinds.has(id)) report('repeated resource', `The resource ${id} stands twice.`);
    if (id.length > longestResourceId)
      report('resource id length', `The resource id ${id} has ${id.length} characters, over 32.`);
    kinds.set(id, parentElement.localName);
  }
  const used = new Set();
  for (const element of document.querySelectorAll('[resid]')) {
    const id = element.getAttribute('resid');
    used.add(id);
    const needed = resourceKind[element.localName];
    if (!kinds.has(id)) report('unknown resource', `${element.localName} names ${id}, which is no resource.`);
    else if (kinds.get(id) !== needed)
      report('resource kind', `${element.localName} names ${id} of ${kinds.get(id)}; it needs ${needed}.`);
  }
  for (const id of [...kinds.keys()].filter((each) => !used.has(each)))
    report('unused resource', `Nothing names the resource ${id}.`);
  checkSharedPage(document, report);
}

function checkSharedPage(document, report) {
  const ids = Object.values(sharedPage).map((selector) =>
    document.querySelector(selector)?.getAttribute('resid'),
  );
  if (new Set(ids).size > 1)
    report('shared page', `${Object.keys(sharedPage).join(', ')} name different pages: ${ids.join(', ')}.`);
}
