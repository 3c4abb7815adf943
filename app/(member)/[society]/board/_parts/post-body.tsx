import { postHtml } from '@/lib/platform/post-html';

/** The words of a post. What stands in them has gone through the sanitiser; nothing else is shown as HTML. */
export function PostBody({ body }: { body: string }) {
  return <div className="post-body" dangerouslySetInnerHTML={{ __html: postHtml(body) }} />;
}
