import { describe, expect, it } from 'vitest';
import { escapeHtml, html } from '../../src/print/html.js';

describe('text of a page', () => {
  it('escapes what has a meaning in pages', () => {
    expect(escapeHtml(`<a href="x" id='y'>&`)).toBe('&lt;a href=&quot;x&quot; id=&#39;y&#39;&gt;&amp;');
  });

  it('escapes every value of a template, and nothing twice', () => {
    const inner = html`<b>${'<i>'}</b>`;
    expect(html`<p>${inner}${[inner]}${1}</p>`.text).toBe('<p><b>&lt;i&gt;</b><b>&lt;i&gt;</b>1</p>');
  });
});
