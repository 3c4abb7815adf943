import { canReadCommitteePapers, type Standing } from './standing';

/** Whether the viewer posts notices and keeps order on the board: the committee. */
export function canKeepBoard(viewer: Standing): boolean {
  return canReadCommitteePapers(viewer);
}

/** A post as the policy sees it. */
export type PostStanding = { readonly byMemberId: string; readonly isHidden: boolean; readonly isTakenBack: boolean };

/** Whether the viewer edits a post or takes it back: its author, while nobody has hidden it and the thread is not locked. */
export function canEditPost(viewer: Standing, post: PostStanding, isLocked: boolean): boolean {
  return post.byMemberId === viewer.memberId && !post.isHidden && !post.isTakenBack && !isLocked;
}

/** Whether the viewer reads the words of a post that is hidden or was taken back: its author, and the committee. */
export function canReadPost(viewer: Standing, { byMemberId, isHidden, isTakenBack }: PostStanding): boolean {
  return (!isHidden && !isTakenBack) || byMemberId === viewer.memberId || canKeepBoard(viewer);
}
