import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { postHtml } from './post-html';

describe('the words of a post', () => {
  it.each([
    ['one\n\ntwo', '<p>one</p>\n<p>two</p>\n'],
    ['one\ntwo', '<p>one<br />\ntwo</p>\n'],
    ['*a* **b**', '<p><em>a</em> <strong>b</strong></p>\n'],
    ['- a\n- b', '<ul>\n<li>a</li>\n<li>b</li>\n</ul>\n'],
    ['3. a', '<ol start="3">\n<li>a</li>\n</ol>\n'],
    ['> a', '<blockquote>\n<p>a</p>\n</blockquote>\n'],
    ['# not a heading', '<p># not a heading</p>\n'],
    ['a < b & c', '<p>a &lt; b &amp; c</p>\n'],
    ['\\*a\\*', '<p>*a*</p>\n'],
  ])('%j', (typed, html) => expect(postHtml(typed)).toBe(html));

  it('links what is an address, and says that nobody vouches for it', () => {
    const rel = 'rel="nofollow ugc noreferrer"';
    expect(postHtml('see https://example.org/a')).toBe(
      `<p>see <a href="https://example.org/a" ${rel}>https://example.org/a</a></p>\n`,
    );
    expect(postHtml('[bed](/withy-reach/ground/beds/x)')).toBe(
      `<p><a href="/withy-reach/ground/beds/x" ${rel}>bed</a></p>\n`,
    );
  });

  it('never becomes anything but its few elements, whatever was typed', () => {
    const pieces = fc.constantFrom(
      ...['<', '>', '"', "'", '&', '`', '\\', '(', ')', '[', ']', '!', '*', '_', '\n', ' ', '#', '- ', '> ', ':'],
      ...['script', 'img', 'svg', 'onerror=', 'href=', 'javascript:', 'data:text/html,', '//x', 'style', 'a', '&#106;'],
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 40 }), (typed) => {
        const html = postHtml(typed.join(''));
        const allowed = /<(\/?(p|em|strong|ul|ol|li|blockquote|a)|br \/)( (href|rel|start)="[^"<>]*")*>/g;
        expect(html.replaceAll(allowed, '')).not.toMatch(/[<>]/);
        for (const [, href = ''] of html.matchAll(/ href="([^"]*)"/g))
          expect(href).toMatch(/^(https?:|mailto:|\/(?!\/)|[^:]*$)/i);
      }),
      { numRuns: 2000 },
    );
  });
});
