import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { ask } from '@/app/_server/caller';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readTopics } from '@/lib/usecases/board/read-board';
import { DraftField } from '../_parts/draft-field';
import { HowToWrite } from '../_parts/how-to-write';
import { NoticeFields } from '../_parts/notice-fields';
import { TopicField } from '../_parts/topic-field';
import { postNoticeAction } from '../actions';

export const metadata: Metadata = { title: 'Post a notice' };

export default async function NewNoticePage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { topics, keeps } = await ask(readTopics, society);
  if (!keeps) notFound();
  return (
    <>
      <PageHead title="Post a notice" lead="From the committee to every member." />
      <Sheet title="The notice">
        <Form action={postNoticeAction.bind(null, society)} writeId={randomUUID()} submit="Post it">
          <TextField name="title" label="Title" hint="such as: Water is off on Saturday" />
          <TopicField topics={topics} value="" />
          <DraftField
            keep={`${society} notice`}
            name="body"
            label="What it says"
            rows={8}
            hint="Kept on this device until it is posted."
          />
          <HowToWrite />
          <NoticeFields pinned mustRead={false} endsOn={null} />
        </Form>
      </Sheet>
    </>
  );
}
