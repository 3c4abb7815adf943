-- What had been ticked off when somebody looked at a heap: clocks of several processes could not say which came first.
ALTER TABLE "HeapLook" ADD COLUMN     "collectedLoads" INTEGER NOT NULL DEFAULT 0;
ALTER TABLE "HeapLook" ALTER COLUMN "collectedLoads" DROP DEFAULT;
ALTER TABLE "HeapLook" ADD CONSTRAINT look_collected CHECK ("collectedLoads" >= 0);
