// Finds the codes in a picture beside the page's own work.
import scan from 'jsqr';
import type { Picture } from './clean';
import { findCodes } from './find';

self.onmessage = ({ data }: MessageEvent<Picture>): void => self.postMessage(findCodes(data, scan));
