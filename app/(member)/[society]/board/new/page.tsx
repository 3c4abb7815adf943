import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readTopics } from '@/lib/usecases/board/read-board';
import { DraftField } from '../_parts/draft-field';
import { HowToWrite } from '../_parts/how-to-write';
import { TopicField } from '../_parts/topic-field';
import { startTalkAction } from '../actions';

export const metadata: Metadata = { title: 'Begin a talk' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ topic?: string }> };

export default async function NewTalkPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { topic } = await searchParams;
  const { topics } = await ask(readTopics, society);
  return (
    <>
      <PageHead title="Begin a talk" lead="Every member can read it and write in it, and nobody else." />
      <Sheet title="What it is">
        <Form action={startTalkAction.bind(null, society)} writeId={randomUUID()} submit="Post it">
          <TextField name="title" label="Title" hint="such as: Why were my onions small?" />
          <TopicField topics={topics} value={topic ?? ''} />
          <DraftField
            keep={`${society} talk`}
            name="body"
            label="What you have to say"
            rows={8}
            hint="Kept on this device until it is posted."
          />
          <HowToWrite />
        </Form>
      </Sheet>
    </>
  );
}
