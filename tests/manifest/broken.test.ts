import { describe, expect, it } from 'vitest';
import { builtManifest, changed, problemsOf, readBuilt, template } from './support/manifest.js';

const swapped = (first: string, second: string) => changed(`${first}${second}`, `${second}${first}`);
const version = '\n  <Version>0.1.0.0</Version>';
const provider = '\n  <ProviderName>Tonrow</ProviderName>';
const longId = 'Functions.Script.Url.Of.The.Bundle';

/** What is broken, how, and the name under which it is caught. */
const broken: [what: string, xml: string, name: string][] = [
  ['a tag that is not closed', changed('</Hosts>', ''), 'not well-formed'],
  ['elements in the wrong order', swapped(version, provider), 'element order'],
  ['an element nobody knows', changed('<Permissions>', '<Price/><Permissions>'), 'unknown element'],
  ['no icon', changed('<IconUrl ', '<AlternateId '), 'missing element'],
  ['two display names', changed('<DisplayName ', '<DisplayName/><DisplayName '), 'repeated element'],
  ['an id that is no GUID', changed('5b0d7c1e-', '5b0d7c1-'), 'id'],
  ['a version of words', changed('0.1.0.0', 'first'), 'version'],
  ['a tooltip that is too long', changed('Show the Tonrow pane', 'Show '.repeat(60)), 'text length'],
  ['an empty label', changed('id="Group.Label" DefaultValue="Tonrow"', 'id="Group.Label"'), 'text length'],
  [
    'a resource id over 32 characters',
    builtManifest.replaceAll('Functions.Script.Url', longId),
    'resource id length',
  ],
  ['a resource that is not there', changed('resid="Icon.32"', 'resid="Icon.33"'), 'unknown resource'],
  ['a resource nothing names', changed('<bt:Images>', '<bt:Images><bt:Image id="I"/>'), 'unused resource'],
  [
    'a resource that stands twice',
    changed('<bt:Image id="Icon.32"', '<bt:Image id="Icon.16"'),
    'repeated resource',
  ],
  ['a label that names an address', changed('resid="Group.Label"', 'resid="Support.Url"'), 'resource kind'],
  [
    'a page of its own for the functions',
    changed(
      '<Page>\n              <SourceLocation resid="Runtime.Url"/>',
      '<Page><SourceLocation resid="Support.Url"/>',
    ),
    'shared page',
  ],
  ['a runtime that ends with the pane', changed('lifetime="long"', 'lifetime="short"'), 'lifetime'],
  ['no requirement of the shared runtime', changed('"SharedRuntime"', '"ExcelApi"'), 'requirement set'],
  ['a button without its large icon', changed('<bt:Image size="80" resid="Icon.80"/>', ''), 'icon size'],
  [
    'an icon of another size',
    changed('size="80" resid="Icon.80"', 'size="80" resid="Icon.32"'),
    'icon pixels',
  ],
  ['a group and a button of one id', changed('id="Tonrow.ShowPane"', 'id="Tonrow.Group"'), 'repeated id'],
  [
    'an address without encryption',
    builtManifest.replaceAll('https://localhost', 'http://localhost'),
    'not https',
  ],
  [
    'an address elsewhere',
    changed('https://localhost:3000/support.html', 'https://example.com/'),
    'foreign address',
  ],
  ['an address of no file', changed('functions.json"', 'function.json"'), 'missing file'],
  ['a placeholder left over', template, 'placeholder'],
  ['an address too long to load', changed('support.html', `${'s'.repeat(2048)}.html`), 'address length'],
];

describe('a broken manifest', () => {
  it.each(broken)('with %s is caught by name', (_, xml, name) => {
    const problems = problemsOf(xml);
    expect(problems.map((problem) => problem.name)).toContain(name);
    for (const { message } of problems) expect(message).toMatch(/\.$/);
  });

  it('is told apart from one whose folder lacks an icon', () => {
    const without = (file: string) => (file === 'icons/icon-80.png' ? undefined : readBuilt(file));
    expect(problemsOf(builtManifest, without).map(({ name }) => name)).toEqual(['missing file']);
  });

  it('is told apart from one whose icon is not a picture', () => {
    const text = (file: string) => (file === 'icons/icon-16.png' ? Buffer.from('<svg/>') : readBuilt(file));
    expect(problemsOf(builtManifest, text).map(({ message }) => message)).toEqual([
      'icons/icon-16.png is no PNG, not 16 × 16.',
      'icons/icon-16.png is no PNG, not 16 × 16.',
    ]);
  });
});
