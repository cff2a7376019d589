// A photo small enough to be kept and sent: scaled down and written anew, so that nothing but the picture goes along.
import { freeBytes } from './store.js';

const [usual, short] = [{ across: 1280, quality: 0.8 }, { across: 800, quality: 0.6 }];
const littleBytes = 20_000_000;

/** The photo as JPEG bytes; null when the file is no picture. */
export async function shrink(file) {
  let picture;
  try {
    picture = await createImageBitmap(file);
  } catch {
    return null;
  }

  const size = (await freeBytes() ?? Infinity) < littleBytes ? short : usual;
  const scale = Math.min(1, size.across / Math.max(picture.width, picture.height));
  const scaled = pixels => Math.max(1, Math.round(pixels * scale));
  const canvas = new OffscreenCanvas(scaled(picture.width), scaled(picture.height));
  canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return (await canvas.convertToBlob({ type: 'image/jpeg', quality: size.quality })).arrayBuffer();
}
