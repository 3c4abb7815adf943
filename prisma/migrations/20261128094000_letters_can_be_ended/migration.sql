-- Where a letter that comes of itself is ended with one press; gone once it is sent, like its words.
ALTER TABLE "MailMessage" ADD COLUMN     "endsUrl" TEXT;
