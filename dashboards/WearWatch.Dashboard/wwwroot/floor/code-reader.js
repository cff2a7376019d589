// Reads the codes in a picture of the camera: by the browser itself where it can, else by a library that is loaded only then.
const side = 960; // pixels; more costs time, and a label that is held close has enough

/** A reader: given a video, the texts of the codes in its picture. */
export async function codeReader() {
  const own = await browsersOwn();
  if (own) return async video => (await own.detect(video)).map(code => code.rawValue);
  const { decodeQR } = await import('./lib/qr/decode.js');
  const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  return async video => {
    const scale = Math.min(1, side / Math.max(video.videoWidth, video.videoHeight));
    const [width, height] = [video.videoWidth, video.videoHeight].map(length => Math.round(length * scale));
    Object.assign(pen.canvas, { width, height });
    pen.drawImage(video, 0, 0, width, height);
    try {
      return [decodeQR(pen.getImageData(0, 0, width, height))];
    } catch {
      return []; // no code in this picture
    }
  };
}

async function browsersOwn() {
  const formats = await globalThis.BarcodeDetector?.getSupportedFormats().catch(() => []);
  return formats?.includes('qr_code') ? new BarcodeDetector({ formats: ['qr_code'] }) : null;
}
