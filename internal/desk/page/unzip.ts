// Reading the engine's own zip of pages, so that they can be written into a
// folder. Zips from strangers are opened by the engine, never here.

export interface Unzipped {
  path: string;
  bytes: Uint8Array<ArrayBuffer>;
}

/** The files of a zip (APPNOTE 6.3: end record 4.3.16, central directory 4.3.12, local header 4.3.7). */
export async function unzip(zip: Uint8Array<ArrayBuffer>): Promise<Unzipped[]> {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  let end = zip.length - 22;
  while (end >= 0 && view.getUint32(end, true) !== 0x06054b50) end--;
  if (end < 0) throw new Error("no zip");
  const files: Unzipped[] = [];
  let at = view.getUint32(end + 16, true);
  for (let i = view.getUint16(end + 10, true); i > 0; i--) {
    const [method, size, name, extra, comment, local] = [view.getUint16(at + 10, true), view.getUint32(at + 20, true), view.getUint16(at + 28, true), view.getUint16(at + 30, true), view.getUint16(at + 32, true), view.getUint32(at + 42, true)];
    const path = new TextDecoder().decode(zip.subarray(at + 46, at + 46 + name));
    const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    const packed = zip.slice(from, from + size);
    if (!path.endsWith("/")) files.push({ path, bytes: method === 0 ? packed : await inflate(packed) });
    at += 46 + name + extra + comment;
  }
  return files;
}

async function inflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}
