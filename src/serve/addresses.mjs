// This computer's addresses on the networks it is joined to.
import { networkInterfaces } from 'node:os';

/**
 * The IPv4 addresses that other devices on the same network can reach, home and office ranges first.
 * @param {ReturnType<typeof networkInterfaces>} interfaces
 * @returns {string[]}
 */
export function lanAddresses(interfaces = networkInterfaces()) {
  const found = Object.values(interfaces)
    .flatMap((list) => list ?? [])
    .filter((entry) => entry.family === 'IPv4' && !entry.internal && !entry.address.startsWith('169.254.'))
    .map((entry) => entry.address);
  const isPrivate = (/** @type {string} */ address) => /^(10\.|192\.168\.|172\.(1[6-9]|2\d|3[01])\.)/.test(address);
  return [...found.filter(isPrivate), ...found.filter((address) => !isPrivate(address))];
}
