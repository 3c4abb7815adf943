-- Paths that lay in one column of their site become rows; nobody has said yet which of them a lorry can drive. What has
-- no two points is no line.
INSERT INTO "SitePath" ("id", "societyId", "siteId", "points")
  SELECT gen_random_uuid(), s."societyId", s."id", p.points
  FROM "Site" s, jsonb_array_elements(CASE WHEN jsonb_typeof(s."paths") = 'array' THEN s."paths" ELSE '[]' END) AS p(points)
  WHERE CASE WHEN jsonb_typeof(p.points) = 'array' THEN
    (SELECT count(DISTINCT point) FROM jsonb_array_elements(p.points) AS corner(point)) ELSE 0 END >= 2;

-- AlterTable
ALTER TABLE "Site" DROP COLUMN "paths";

ALTER TABLE "SitePath" ADD CONSTRAINT path_points CHECK (jsonb_typeof("points") = 'array' AND jsonb_array_length("points") >= 2);
ALTER TABLE "DropPoint" ADD CONSTRAINT drop_point_place CHECK (abs("xCm") <= 1000000 AND abs("yCm") <= 1000000);
-- Of those in use no two of a site are called the same.
CREATE UNIQUE INDEX drop_point_name ON "DropPoint" ("siteId", lower("name")) WHERE "retiredAt" IS NULL;
