import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { searchBoard } from '@/lib/usecases/board/read-board';
import { SearchForm } from '../_parts/search-form';

export const metadata: Metadata = { title: 'Search the board' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ words?: string }> };

export default async function SearchPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { words: asked } = await searchParams;
  const { words, found, isFull, timeZone } = await ask(searchBoard, society, { words: asked ?? '' });
  return (
    <>
      <PageHead
        title="Search the board"
        lead="Words are found by their stems: dig finds digging too. Quotation marks keep words together; a minus leaves one out."
      />
      <Sheet title={words ? `Found for “${words}”` : 'What are you looking for?'} wide>
        <SearchForm society={society} words={words} />
        {words && found.length === 0 ? <Empty>Nothing fits. Try fewer words, or another form of them.</Empty> : null}
        <ol className="found">
          {found.map(({ postId, threadId, title, by, writtenAt, excerpt }) => (
            <li key={postId}>
              <Link href={`/${society}/board/${threadId}?post=${postId}#post-${postId}`}>{title}</Link>
              <p>
                <Marked excerpt={excerpt} />
              </p>
              <p className="small soft">
                {by ?? 'a former member'}, {whenWords(writtenAt, timeZone)}
              </p>
            </li>
          ))}
        </ol>
        {isFull ? <p className="soft">The best {found.length} are shown. Give one more word to find fewer.</p> : null}
      </Sheet>
    </>
  );
}

/** The words around what was looked for, each that fits marked. */
function Marked({ excerpt }: { excerpt: string }) {
  return excerpt.split('\u0002').map((part, at) => {
    const [fits = '', rest] = part.split('\u0003');
    // The parts of one text never change places.
    return rest === undefined ? (
      <span key={at}>{part}</span>
    ) : (
      <span key={at}>
        <mark>{fits}</mark>
        {rest}
      </span>
    );
  });
}
