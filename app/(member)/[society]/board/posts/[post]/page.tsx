import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { FileField, NoteField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readPost } from '@/lib/usecases/board/read-thread';
import { PostItem } from '../../_parts/post-item';
import {
  addPictureAction,
  editPostAction,
  hidePostAction,
  leaveStandingAction,
  reportAction,
  showPostAction,
  takeBackAction,
} from '../../actions';

export const metadata: Metadata = { title: 'A post' };

type Props = { params: Promise<{ society: string; post: string }> };

export default async function PostPage({ params }: Props) {
  const { society, post: postId } = await params;
  const { thread, post, keeps, timeZone } = await ask(readPost, society, { postId });
  return (
    <>
      <PageHead
        title={post.isMine ? 'Your post' : `A post of ${post.by ?? 'a former member'}`}
        lead={`In “${thread.title}”.`}
      >
        <Link className="button" href={`/${society}/board/${thread.id}?post=${post.id}#post-${post.id}`}>
          Back to the thread
        </Link>
      </PageHead>
      <Sheet title="What it says" wide>
        <ol className="posts">
          <PostItem {...{ society, post, timeZone, keeps }} />
        </ol>
      </Sheet>
      {post.canEdit ? <OwnPost society={society} post={post} /> : null}
      {post.isMine || post.isHidden || post.isTakenBack ? null : (
        <Sheet title="Tell the committee of it">
          <Form action={reportAction.bind(null, society, post.id)} writeId={randomUUID()} submit="Tell them">
            <TextField name="why" label="What is out of order" hint="Only the committee reads it." />
          </Form>
        </Sheet>
      )}
      {keeps && !post.isTakenBack ? <Order society={society} post={post} /> : null}
    </>
  );
}

type Part = { society: string; post: Awaited<ReturnType<typeof readPost.run>>['post'] };

function OwnPost({ society, post }: Part) {
  return (
    <>
      <Sheet title="Edit it">
        <Form action={editPostAction.bind(null, society, post.id)} writeId={randomUUID()} submit="Save">
          <NoteField
            name="body"
            label="What you have to say"
            rows={8}
            value={post.body ?? ''}
            hint="What it said before stays to be read."
          />
        </Form>
      </Sheet>
      <div className="stack">
        <Sheet title="Put a picture to it">
          <Form action={addPictureAction.bind(null, society, post.id)} writeId={randomUUID()} submit="Send it">
            <FileField
              name="file"
              label="Picture"
              accept="image/jpeg,image/png,image/webp"
              hint="It is made small, and where it was taken is stripped from it."
            />
            <TextField name="says" label="What it shows" hint="Read aloud to whoever cannot see it." />
          </Form>
        </Sheet>
        <Sheet title="Take it back">
          <Form
            action={takeBackAction.bind(null, society, post.id)}
            writeId={randomUUID()}
            submit="Take it back"
            danger
          >
            <TickField
              name="sure"
              label="Others see that it was taken back, and no longer what it said. This can’t be undone."
            />
          </Form>
        </Sheet>
      </div>
    </>
  );
}

function Order({ society, post }: Part) {
  if (post.isHidden)
    return (
      <Sheet title="Show it again">
        <Form action={showPostAction.bind(null, society, post.id)} writeId={randomUUID()} submit="Show it again" />
      </Sheet>
    );
  return (
    <div className="stack">
      <Sheet title="Hide it">
        <Form action={hidePostAction.bind(null, society, post.id)} writeId={randomUUID()} submit="Hide it" danger>
          <TextField
            name="why"
            label="Reason"
            hint="Its author is told by mail, and it stands in the book of changes."
          />
        </Form>
      </Sheet>
      <Sheet title="It was reported, and stands">
        <Form action={leaveStandingAction.bind(null, society, post.id)} writeId={randomUUID()} submit="Let it stand" />
      </Sheet>
    </div>
  );
}
