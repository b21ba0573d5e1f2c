/** Makes a photograph small enough to go with a report; drawn anew, it tells no position. */
const SIDE = 1280;
/** What a report has room for, in bytes before base64. */
const LARGEST = 180_000;
const QUALITIES = [0.8, 0.65, 0.5, 0.35] as const;

/** Base64 of a JPEG; `null` where the browser cannot open the file. */
export async function smaller(file: Blob): Promise<string | null> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (!picture) return null;
  const scale = Math.min(1, SIDE / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(picture.width * scale);
  canvas.height = Math.round(picture.height * scale);
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  for (const quality of QUALITIES) {
    const text = canvas.toDataURL('image/jpeg', quality).split(',')[1] ?? '';
    if (text.length * 0.75 <= LARGEST) return text;
  }
  return null;
}
