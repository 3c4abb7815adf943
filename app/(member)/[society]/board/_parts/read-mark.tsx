'use client';

import { useEffect, useRef } from 'react';
import { noteRead } from '../actions';

/** Marks a thread as read once it has been shown. */
export function ReadMark({ society, threadId, writeId }: { society: string; threadId: string; writeId: string }) {
  const told = useRef('');
  useEffect(() => {
    if (told.current === writeId) return;
    told.current = writeId;
    // With no connection it stays unread, which is true.
    noteRead(society, threadId, writeId).catch(() => undefined);
  }, [society, threadId, writeId]);
  return null;
}
