// An id made from a name: the same name gives the same id, on every device and every time (RFC 9562, section 5.5: version 5).
import { sha1 } from './sha1';

/** Our own name space: random, once for all. Another one would give every result another id. */
const OURS = '6f0c3a52-9d1e-4c84-8a37-5b2e7d90c416';

const bytesOf = (uuid: string): number[] =>
  uuid
    .replaceAll('-', '')
    .match(/../g)!
    .map((pair) => Number.parseInt(pair, 16));

/** Worked value (RFC 9562, appendix A.4): www.example.com in the DNS name space -> 2ed6657d-e927-568b-95e1-2665a8aea6a2. */
export function nameUuid(name: string, space: string = OURS): string {
  const hash = sha1(new Uint8Array([...bytesOf(space), ...new TextEncoder().encode(name)])).slice(0, 16);
  hash[6] = (hash[6]! & 0x0f) | 0x50;
  hash[8] = (hash[8]! & 0x3f) | 0x80;
  const hex = [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}
