// SHA-1 of FIPS 180-4 and RFC 3174, for names made into ids. It guards no secret; the browser's own is missing on pages without a secure address.

const rotl = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/** The message with a one bit, zeros, and its length in bits, in blocks of 64 bytes. */
function padded(message: Uint8Array): DataView {
  const blocks = Math.ceil((message.length + 9) / 64);
  const bytes = new Uint8Array(blocks * 64);
  bytes.set(message);
  bytes[message.length] = 0x80;
  const view = new DataView(bytes.buffer);
  view.setUint32(bytes.length - 8, Math.floor(message.length / 0x20000000));
  view.setUint32(bytes.length - 4, (message.length << 3) >>> 0);
  return view;
}

/** The function and the constant of a round, by its number 0 to 79. */
function mixed(round: number, b: number, c: number, d: number): number {
  if (round < 20) return ((b & c) | (~b & d)) + 0x5a827999;
  if (round < 40) return (b ^ c ^ d) + 0x6ed9eba1;
  if (round < 60) return ((b & c) | (b & d) | (c & d)) + 0x8f1bbcdc;
  return (b ^ c ^ d) + 0xca62c1d6;
}

/** The 20 bytes. Worked value: abc -> a9993e36 4706816a ba3e2571 7850c26c 9cd0d89d (RFC 3174, test 1). */
export function sha1(message: Uint8Array): Uint8Array {
  const view = padded(message);
  const state = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0];
  const words = new Array<number>(80);
  for (let at = 0; at < view.byteLength; at += 64) {
    for (let t = 0; t < 16; t++) words[t] = view.getUint32(at + 4 * t);
    for (let t = 16; t < 80; t++) words[t] = rotl(words[t - 3]! ^ words[t - 8]! ^ words[t - 14]! ^ words[t - 16]!, 1);
    let [a, b, c, d, e] = state as [number, number, number, number, number];
    for (let t = 0; t < 80; t++) {
      const next = (rotl(a, 5) + mixed(t, b, c, d) + e + words[t]!) | 0;
      [a, b, c, d, e] = [next, a, rotl(b, 30), c, d];
    }
    [a, b, c, d, e].forEach((word, i) => (state[i] = (state[i]! + word) | 0));
  }
  const hash = new DataView(new ArrayBuffer(20));
  state.forEach((word, i) => hash.setInt32(4 * i, word));
  return new Uint8Array(hash.buffer);
}
