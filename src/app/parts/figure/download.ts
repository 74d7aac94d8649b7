import type { SavedFigure } from './compose.ts';

/** Pixels of a saved PNG for each pixel of the page: sharp when printed across a sheet. */
const PNG_SCALE = 3;
/** Most pixels along one side that every browser still draws. */
const PNG_MOST = 8000;

/** Hands a file to the user. */
export function download(blob: Blob, fileName: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName;
  link.click();
  // The browser may still be reading when the click returns.
  setTimeout(() => URL.revokeObjectURL(url), 30_000);
}

/** A title as a file name of letters, figures and dashes. */
export function fileNameOf(title: string, extension: string): string {
  const plain = title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80);
  return `${plain || 'figure'}.${extension}`;
}

export function svgBlob(figure: SavedFigure): Blob {
  return new Blob([figure.text], { type: 'image/svg+xml' });
}

/** The figure as a PNG. @throws Error where the browser cannot draw it */
export async function pngBlob(figure: SavedFigure): Promise<Blob> {
  const scale = Math.min(PNG_SCALE, PNG_MOST / figure.width, PNG_MOST / figure.height);
  const url = URL.createObjectURL(svgBlob(figure));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(figure.width * scale);
    canvas.height = Math.round(figure.height * scale);
    const context = canvas.getContext('2d');
    context?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise<Blob>((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('no image'))), 'image/png');
    });
  } finally {
    URL.revokeObjectURL(url);
  }
}
