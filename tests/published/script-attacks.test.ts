import { expect, it } from 'vitest';
import { postHtml } from '@/lib/platform/post-html';
import { scriptAttacks } from '../fixtures/script-attacks';

// OWASP Foundation, Cheat Sheet Series, XSS Filter Evasion Cheat Sheet: what of each attack is left in a post.
const elements =
  /<(?:\/?(?:p|em|strong|ul|ol|li|blockquote)|br \/|ol start="\d+"|\/a|a(?: href="[^"<>]*")? rel="nofollow ugc noreferrer")>/g;

it.each(scriptAttacks)('%s', (_, attack) => {
  for (const typed of [attack, `- ${attack}`, `> ${attack}`, `**${attack}**`, `[${attack}](https://a.example)`]) {
    const html = postHtml(typed);
    expect(html.replaceAll(elements, '')).not.toMatch(/[<>]/);
    for (const [, href = ''] of html.matchAll(/href="([^"]*)"/g))
      expect(href).toMatch(/^(?:https?:\/\/|mailto:|\/(?!\/))/);
  }
});
