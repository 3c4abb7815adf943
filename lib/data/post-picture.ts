import 'server-only';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

export type NewPicture = {
  readonly says: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
};

/** Put a picture to a post. */
export async function createPicture(
  tx: Tx,
  { societyId }: Scope,
  postId: string,
  picture: NewPicture,
): Promise<string> {
  return (await tx.postPicture.create({ data: { ...picture, postId, societyId }, select: { id: true } })).id;
}

/** A picture with the post that it stands under, or null. */
export async function pictureById(db: Db, { societyId }: Scope, id: string) {
  const row = await db.postPicture.findFirst({
    where: { id, societyId },
    select: { bytes: true, post: { select: { byMemberId: true, hiddenAt: true, takenBackAt: true } } },
  });
  if (!row) return null;
  const { byMemberId, hiddenAt, takenBackAt } = row.post;
  return { bytes: row.bytes, post: { byMemberId, isHidden: hiddenAt !== null, isTakenBack: takenBackAt !== null } };
}

/** How many pictures a post has. */
export function countPictures(db: Db, { societyId }: Scope, postId: string): Promise<number> {
  return db.postPicture.count({ where: { postId, societyId } });
}
