// Reads the QR codes in a photo: by the browser where it can, else by a program that is fetched when it is needed. Nothing leaves the device.
import type { Picture } from './clean';
import { findCodes } from './find';

/** Longest side of the picture that is looked at, dots; where nothing is found the next is tried: smaller hides noise, larger shows fine squares. */
const SIDES = [1200, 2000, 800];

interface Detector {
  detect(picture: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}
declare const BarcodeDetector: {
  new (options: { formats: string[] }): Detector;
  getSupportedFormats(): Promise<string[]>;
};

/** What the browser itself finds; nothing where it has no such gift. */
async function byBrowser(picture: ImageBitmap): Promise<string[]> {
  if (typeof BarcodeDetector === 'undefined') return [];
  try {
    if (!(await BarcodeDetector.getSupportedFormats()).includes('qr_code')) return [];
    const found = await new BarcodeDetector({ formats: ['qr_code'] }).detect(picture);
    return [...new Set(found.map(({ rawValue }) => rawValue))].filter((text) => text !== '');
  } catch {
    return [];
  }
}

/** The picture's dots, at most so many on a side, on white. */
function dotsOf(picture: ImageBitmap, side: number): Picture {
  const scale = Math.min(1, side / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
  return { data, width, height };
}

async function inWorker(dots: Picture): Promise<string[]> {
  const { default: PhotoWorker } = await import('./worker?worker&inline');
  const worker = new PhotoWorker();
  try {
    return await new Promise((found, failed) => {
      worker.onmessage = ({ data }: MessageEvent<string[]>) => found(data);
      worker.onerror = (event) => {
        event.preventDefault();
        failed(new Error(event.message));
      };
      worker.postMessage(dots);
    });
  } finally {
    worker.terminate();
  }
}

/** The page does it itself where workers are forbidden. */
async function inPage(dots: Picture): Promise<string[]> {
  const { default: scan } = await import('jsqr');
  return findCodes(dots, scan);
}

/** The texts of all codes found in a picture, each once; none where there is no code or it is no picture. Never throws. */
export async function readPhoto(file: Blob): Promise<string[]> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file);
  } catch {
    return [];
  }
  try {
    const known = await byBrowser(picture);
    if (known.length > 0) return known;
    const longest = Math.max(picture.width, picture.height);
    for (const side of SIDES) {
      if (side > longest && side !== SIDES[0]) continue;
      const dots = dotsOf(picture, side);
      const found = await inWorker(dots).catch(() => inPage(dots));
      if (found.length > 0) return found;
    }
    return [];
  } catch {
    return [];
  } finally {
    picture.close();
  }
}
