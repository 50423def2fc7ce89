// Loaded before the store of learning records: whatever listens does so on a free port of this computer alone, and says which to its parent.
import { Server } from 'node:net';

const listen = Server.prototype.listen;

/**
 * @this {Server}
 * @param {...unknown} told
 */
Server.prototype.listen = function (...told) {
  const ready = told.find((one) => typeof one === 'function');
  return listen.call(this, { port: 0, host: '127.0.0.1' }, () => {
    process.send?.({ port: /** @type {import('node:net').AddressInfo} */ (this.address()).port });
    /** @type {(() => void) | undefined} */ (ready)?.();
  });
};
