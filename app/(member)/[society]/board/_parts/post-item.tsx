import Link from 'next/link';
import { whenWords } from '@/app/_ui/delivery-words';
import { Reason } from '@/app/_ui/sheet';
import type { ShownPost } from '@/lib/usecases/board/read-thread';
import { PostBody } from './post-body';

type Props = { society: string; post: ShownPost; timeZone: string; keeps: boolean };

/** A post as the viewer may read it. */
export function PostItem({ society, post, timeZone, keeps }: Props) {
  const { id, by, body, writtenAt, isHidden, isTakenBack, hiddenWhy, isMine } = post;
  return (
    <li id={`post-${id}`} className={isMine ? 'post mine' : 'post'}>
      <p className="post-head">
        <strong>{by ?? 'a former member'}</strong>{' '}
        <span className="soft small">
          {whenWords(writtenAt, timeZone)}
          {post.editedAt ? ', edited' : ''}
        </span>{' '}
        <Link className="small" href={`/${society}/board/posts/${id}`}>
          {isMine ? 'change' : keeps ? 'order' : 'report'}
          <span className="sr-only"> the post of {by ?? 'a former member'}</span>
        </Link>
      </p>
      {isTakenBack ? (
        <p className="soft">
          Taken back by its author{body === null ? '' : '; only they and the committee see what it said'}.
        </p>
      ) : null}
      {isHidden ? (
        <p className="notice short">
          {body === null
            ? 'Hidden by the committee.'
            : `Hidden by the committee, because: “${hiddenWhy}”. Only its author and the committee see it.`}
        </p>
      ) : null}
      {body === null ? null : <PostBody body={body} />}
      <Pictures society={society} post={post} />
      {post.edits.length ? (
        <Reason ask="What it said before">
          {post.edits.map((edit) => (
            <div key={edit.untilAt.toISOString()}>
              <p className="small soft">until {whenWords(edit.untilAt, timeZone)}</p>
              <PostBody body={edit.body} />
            </div>
          ))}
        </Reason>
      ) : null}
    </li>
  );
}

function Pictures({ society, post: { pictures } }: Pick<Props, 'society' | 'post'>) {
  return pictures.map(({ id, says, widthPx, heightPx }) => (
    <figure key={id} className="post-picture">
      {/* eslint-disable-next-line @next/next/no-img-element -- small already, and behind the post's own door: Next would keep a copy */}
      <img
        src={`/api/board/${society}/pictures/${id}`}
        alt={says}
        width={widthPx}
        height={heightPx}
        loading="lazy"
        decoding="async"
      />
      <figcaption className="small soft">{says}</figcaption>
    </figure>
  ));
}
