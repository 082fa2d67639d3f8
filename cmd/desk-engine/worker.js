// The worker of the desk: it unpacks the engine, starts it, and hands it what the
// page asks. Go's own wasm_exec.js stands above this text.

let waiting = [];
let answer = (request) => waiting.push(request);

self.homebuildReady = () => {
  const ask = self.homebuildAnswer;
  answer = (request) => self.postMessage(JSON.parse(ask(JSON.stringify(request))));
  waiting.forEach((request) => answer(request));
  waiting = [];
};

// undense reads what internal/desk/page writes: two of 91 letters carry 13 bits.
function undense(text) {
  const value = (i) => text.charCodeAt(i) - (text.charCodeAt(i) > 60 ? 36 : 35);
  const bytes = new Uint8Array(text.length);
  let bits = 0;
  let have = 0;
  let at = 0;
  for (let i = 0; i < text.length; i += 2) {
    const last = i + 1 === text.length; // alone it carries 6 bits
    bits |= (last ? value(i) : value(i) * 91 + value(i + 1)) << have;
    for (have += last ? 6 : 13; have >= 8; have -= 8) {
      bytes[at++] = bits & 255;
      bits >>= 8;
    }
  }
  return bytes.subarray(0, at);
}

// The engine is compiled while it is being unpacked. The page hears how far it is.
async function start(packed) {
  const bytes = undense(packed);
  let read = 0;
  const told = new TransformStream({
    transform(chunk, out) {
      read += chunk.length;
      self.postMessage({ loaded: read / bytes.length });
      out.enqueue(chunk);
    },
  });
  const unpacked = new Blob([bytes]).stream().pipeThrough(told).pipeThrough(new DecompressionStream("gzip"));
  const go = new Go();
  const { instance } = await WebAssembly.instantiateStreaming(new Response(unpacked, { headers: { "Content-Type": "application/wasm" } }), go.importObject);
  await go.run(instance);
  throw new Error("the engine has ended");
}

self.onmessage = ({ data }) => {
  if (data.engine === undefined) return answer(data);
  start(data.engine).catch((cause) => setTimeout(() => { throw cause; })); // the page hears of it as an error of the worker
};
