-- AlterTable
ALTER TABLE "Member" ADD COLUMN     "nameStays" BOOLEAN NOT NULL DEFAULT true;

-- CreateTable
CREATE TABLE "Thread" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "topic" TEXT NOT NULL DEFAULT 'site',
    "topicKey" TEXT,
    "byMemberId" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "lastPostAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "pinned" BOOLEAN NOT NULL DEFAULT false,
    "endsOn" DATE,
    "mustRead" BOOLEAN NOT NULL DEFAULT false,
    "lockedAt" TIMESTAMPTZ(3),
    "lockedWhy" TEXT,

    CONSTRAINT "Thread_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Post" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "threadId" UUID NOT NULL,
    "byMemberId" UUID NOT NULL,
    "body" TEXT NOT NULL,
    "writtenAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "editedAt" TIMESTAMPTZ(3),
    "takenBackAt" TIMESTAMPTZ(3),
    "hiddenAt" TIMESTAMPTZ(3),
    "hiddenWhy" TEXT,

    CONSTRAINT "Post_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PostEdit" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "postId" UUID NOT NULL,
    "body" TEXT NOT NULL,
    "untilAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "PostEdit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PostPicture" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "postId" UUID NOT NULL,
    "says" TEXT NOT NULL,
    "widthPx" INTEGER NOT NULL,
    "heightPx" INTEGER NOT NULL,
    "bytes" BYTEA NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "PostPicture_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PostReport" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "postId" UUID NOT NULL,
    "byMemberId" UUID NOT NULL,
    "why" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "settledAt" TIMESTAMPTZ(3),
    "outcome" TEXT,

    CONSTRAINT "PostReport_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ThreadRead" (
    "societyId" UUID NOT NULL,
    "threadId" UUID NOT NULL,
    "memberId" UUID NOT NULL,
    "readToAt" TIMESTAMPTZ(3) NOT NULL,
    "confirmedAt" TIMESTAMPTZ(3),

    CONSTRAINT "ThreadRead_pkey" PRIMARY KEY ("threadId","memberId")
);

-- CreateTable
CREATE TABLE "BoardRules" (
    "id" UUID NOT NULL,
    "societyId" UUID NOT NULL,
    "body" TEXT NOT NULL,
    "setByMemberId" UUID NOT NULL,
    "setAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "BoardRules_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Thread_societyId_lastPostAt_idx" ON "Thread"("societyId", "lastPostAt");

-- CreateIndex
CREATE INDEX "Thread_societyId_topic_topicKey_idx" ON "Thread"("societyId", "topic", "topicKey");

-- CreateIndex
CREATE UNIQUE INDEX "Thread_id_societyId_key" ON "Thread"("id", "societyId");

-- CreateIndex
CREATE INDEX "Post_threadId_societyId_writtenAt_idx" ON "Post"("threadId", "societyId", "writtenAt");

-- CreateIndex
CREATE INDEX "Post_byMemberId_societyId_idx" ON "Post"("byMemberId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "Post_id_societyId_key" ON "Post"("id", "societyId");

-- CreateIndex
CREATE INDEX "PostEdit_postId_societyId_idx" ON "PostEdit"("postId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "PostEdit_id_societyId_key" ON "PostEdit"("id", "societyId");

-- CreateIndex
CREATE INDEX "PostPicture_postId_societyId_idx" ON "PostPicture"("postId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "PostPicture_id_societyId_key" ON "PostPicture"("id", "societyId");

-- CreateIndex
CREATE INDEX "PostReport_societyId_settledAt_idx" ON "PostReport"("societyId", "settledAt");

-- CreateIndex
CREATE INDEX "PostReport_postId_societyId_idx" ON "PostReport"("postId", "societyId");

-- CreateIndex
CREATE UNIQUE INDEX "PostReport_id_societyId_key" ON "PostReport"("id", "societyId");

-- CreateIndex
CREATE INDEX "ThreadRead_memberId_societyId_idx" ON "ThreadRead"("memberId", "societyId");

-- CreateIndex
CREATE INDEX "BoardRules_societyId_setAt_idx" ON "BoardRules"("societyId", "setAt");

-- CreateIndex
CREATE UNIQUE INDEX "BoardRules_id_societyId_key" ON "BoardRules"("id", "societyId");

-- AddForeignKey
ALTER TABLE "Thread" ADD CONSTRAINT "Thread_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Thread" ADD CONSTRAINT "Thread_byMemberId_societyId_fkey" FOREIGN KEY ("byMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Post" ADD CONSTRAINT "Post_threadId_societyId_fkey" FOREIGN KEY ("threadId", "societyId") REFERENCES "Thread"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Post" ADD CONSTRAINT "Post_byMemberId_societyId_fkey" FOREIGN KEY ("byMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PostEdit" ADD CONSTRAINT "PostEdit_postId_societyId_fkey" FOREIGN KEY ("postId", "societyId") REFERENCES "Post"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PostPicture" ADD CONSTRAINT "PostPicture_postId_societyId_fkey" FOREIGN KEY ("postId", "societyId") REFERENCES "Post"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PostReport" ADD CONSTRAINT "PostReport_postId_societyId_fkey" FOREIGN KEY ("postId", "societyId") REFERENCES "Post"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PostReport" ADD CONSTRAINT "PostReport_byMemberId_societyId_fkey" FOREIGN KEY ("byMemberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ThreadRead" ADD CONSTRAINT "ThreadRead_threadId_societyId_fkey" FOREIGN KEY ("threadId", "societyId") REFERENCES "Thread"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ThreadRead" ADD CONSTRAINT "ThreadRead_memberId_societyId_fkey" FOREIGN KEY ("memberId", "societyId") REFERENCES "Member"("id", "societyId") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BoardRules" ADD CONSTRAINT "BoardRules_societyId_fkey" FOREIGN KEY ("societyId") REFERENCES "Society"("id") ON DELETE RESTRICT ON UPDATE CASCADE;



-- What the schema language cannot say.
ALTER TABLE "Thread" ADD CONSTRAINT thread_kind CHECK ("kind" IN ('notice', 'talk') AND length(trim("title")) > 0);
ALTER TABLE "Thread" ADD CONSTRAINT thread_topic CHECK ("topic" IN ('site', 'crop', 'bed', 'delivery', 'trouble', 'date') AND (("topic" = 'site') = ("topicKey" IS NULL)));
-- Only a notice is pinned, ends or must be read.
ALTER TABLE "Thread" ADD CONSTRAINT thread_notice CHECK ("kind" = 'notice' OR (NOT "pinned" AND NOT "mustRead" AND "endsOn" IS NULL));
ALTER TABLE "Post" ADD CONSTRAINT post_hidden CHECK (("hiddenAt" IS NULL) = ("hiddenWhy" IS NULL));
ALTER TABLE "PostReport" ADD CONSTRAINT report_outcome CHECK ("outcome" IN ('hidden', 'stands') AND (("settledAt" IS NULL) = ("outcome" IS NULL)));
ALTER TABLE "PostPicture" ADD CONSTRAINT picture_size CHECK ("widthPx" BETWEEN 1 AND 1600 AND "heightPx" BETWEEN 1 AND 1600 AND length("bytes") <= 1000000);
-- A member reports a post once while nobody has looked.
CREATE UNIQUE INDEX reported_once ON "PostReport" ("postId", "byMemberId") WHERE "settledAt" IS NULL;
-- Words of posts and titles are found by their stems.
CREATE INDEX post_words ON "Post" USING gin (to_tsvector('english', "body"));
CREATE INDEX thread_words ON "Thread" USING gin (to_tsvector('english', "title"));
-- Nothing of the board is deleted.
CREATE TRIGGER post_kept BEFORE DELETE ON "Post" FOR EACH ROW EXECUTE FUNCTION written_once();
CREATE TRIGGER edit_kept BEFORE UPDATE OR DELETE ON "PostEdit" FOR EACH ROW EXECUTE FUNCTION written_once();
