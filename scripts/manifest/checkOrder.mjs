import { children } from './rules.mjs';

/** Every element with rules holds the children it must, in their order, and no others. */
export function checkOrder(document, report) {
  for (const element of document.querySelectorAll('*')) {
    const rules = rulesOf(element);
    if (rules) checkChildren(element, rules.map(readRule), report);
  }
}

/** The rules under the longest path that fits: `AllFormFactors/ExtensionPoint` before `ExtensionPoint`. */
function rulesOf(element) {
  let path = '';
  let found;
  for (let each = element; each; each = each.parentElement) {
    path = path === '' ? each.localName : `${each.localName}/${path}`;
    found = children[path] ?? found;
  }
  return found;
}

const readRule = (rule) => ({
  name: rule.replace(/[!*]/g, ''),
  needed: rule.includes('!'),
  repeated: rule.includes('*'),
});

function checkChildren(element, rules, report) {
  const within = element.localName;
  const names = [...element.children].map((child) => child.localName);
  let last = -1;
  for (const name of names) {
    const at = rules.findIndex((rule) => rule.name === name);
    if (at < 0) report('unknown element', `${within} may not hold ${name}.`);
    else if (at < last) report('element order', `${name} stands after ${rules[last].name} in ${within}.`);
    else if (at === last && !rules[at].repeated)
      report('repeated element', `${within} holds ${name} more than once.`);
    last = Math.max(last, at);
  }
  for (const { name } of rules.filter((rule) => rule.needed && !names.includes(rule.name)))
    report('missing element', `${within} has no ${name}.`);
}
