import 'server-only';
import sharp from 'sharp';

export type SmallPicture = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
};

const longestPx = 1600;
const largestBytes = 1_000_000;
// A picture that is small as a file can be vast as pixels.
const mostPixels = 60_000_000;

/**
 * A picture made small enough for a page, turned upright, and written anew: nothing that it carried beside its pixels, such as where
 * it was taken, is left.
 *
 * @returns null where it is no picture that can be read
 */
export async function smallPicture(file: Uint8Array): Promise<SmallPicture | null> {
  try {
    for (const quality of [80, 60, 40, 20]) {
      const { data, info } = await sharp(file, { limitInputPixels: mostPixels, failOn: 'error', animated: false })
        .rotate()
        .resize({ width: longestPx, height: longestPx, fit: 'inside', withoutEnlargement: true })
        .webp({ quality })
        .toBuffer({ resolveWithObject: true });
      if (data.length <= largestBytes)
        return { widthPx: info.width, heightPx: info.height, bytes: new Uint8Array(data) };
    }
    return null;
  } catch {
    return null;
  }
}
