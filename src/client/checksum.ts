/**
 * A short mark of some data, eight hexadecimal figures: the same data give the same mark whatever
 * machine made it (FNV-1a, 32 bit: Fowler, Noll & Vo, RFC 9923). It shows a change, it does not
 * guard against one made on purpose.
 */
export function checksum(data: unknown): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(JSON.stringify(data))) {
    hash = Math.imul(hash ^ byte, 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, '0');
}
