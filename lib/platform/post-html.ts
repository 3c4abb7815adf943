import 'server-only';
import MarkdownIt from 'markdown-it';
import sanitizeHtml from 'sanitize-html';

// A plain hand: stress, lists, quotations and links. No headings, no pictures from elsewhere, no HTML.
const marks = new MarkdownIt('zero', { breaks: true, linkify: true, html: false }).enable([
  'blockquote',
  'list',
  'emphasis',
  'link',
  'linkify',
  'newline',
  'escape',
]);

// Nobody vouches for what members link to; and a link leads to another site or into this one, never from page to page by chance.
const rel = 'nofollow ugc noreferrer';
const leads = /^(?:https?:\/\/|mailto:|\/(?!\/))/i;

/**
 * What was typed into a post, as HTML that a page may show.
 *
 * Method: a small subset of CommonMark, by library; and whatever came of it through a sanitiser that lets pass nothing but the few
 * elements named here, so that neither of the two has to be trusted alone.
 *
 * @param typed  as it was typed, of any length
 * @returns      HTML of p, br, em, strong, ul, ol, li, blockquote and a; links are http, https, mailto or of this very service
 * @source       CommonMark 0.31; sanitising: the library’s own allow-list
 * @example      '*Late* beds' → '<p><em>Late</em> beds</p>'
 */
export function postHtml(typed: string): string {
  return sanitizeHtml(marks.render(typed), {
    allowedTags: ['p', 'br', 'em', 'strong', 'ul', 'ol', 'li', 'blockquote', 'a'],
    allowedAttributes: { a: ['href', 'rel'], ol: ['start'] },
    allowedSchemes: ['http', 'https', 'mailto'],
    allowProtocolRelative: false,
    transformTags: {
      a: (tagName, { href = '' }) => ({ tagName, attribs: { ...(leads.test(href) ? { href } : {}), rel } }),
    },
  });
}
