import 'server-only';
import { z } from 'zod';
import { countPictures, createPicture, pictureById } from '@/lib/data/post-picture';
import { canReadPost } from '@/lib/domain/policy/board';
import { canEnter } from '@/lib/domain/policy/standing';
import { smallPicture } from '@/lib/platform/picture';
import { addPictureInput } from '@/lib/schemas/board/board';
import { mutation, query } from '../operation';
import { NotFound, refuse } from '../refusal';
import { openOwnPost } from './write-post';

const mostPictures = 6;

/** Put a picture to one’s own post: made small, and where it was taken is stripped from it. */
export const addPicture = mutation({
  name: 'add-picture',
  allow: canEnter,
  input: addPictureInput,
  write: async (context, { postId, says, file }) => {
    const { tx, scope, note } = context;
    const { threadId } = await openOwnPost(context, postId);
    if ((await countPictures(tx, scope, postId)) >= mostPictures)
      refuse('pictures-enough', { field: 'file', numbers: { most: mostPictures } });
    const picture = await smallPicture(file);
    if (!picture) refuse('picture-unreadable', { field: 'file' });
    const pictureId = await createPicture(tx, scope, postId, { says, ...picture });
    note({ verb: 'put to a post', thing: 'picture', thingId: pictureId, after: { postId } });
    return { postId, threadId };
  },
});

/** A picture, for whoever may read its post. */
export const readPicture = query({
  name: 'read-picture',
  allow: canEnter,
  input: z.object({ pictureId: z.uuid() }),
  read: async ({ db, scope }, { pictureId }) => {
    const picture = await pictureById(db, scope, pictureId);
    if (!picture || !canReadPost(scope, picture.post)) throw new NotFound();
    return { bytes: picture.bytes };
  },
});
