// What a page and its workers keep in memory, after what nobody needs any more has been thrown away.
import type { CDPSession } from 'playwright-core';
import type { AppPage } from './pageTrace';

/** JavaScript's heap and what it holds outside of it, MB. */
export async function heap_MB({ devtools }: AppPage): Promise<number> {
  await devtools.send('HeapProfiler.collectGarbage');
  const used: Used[] = [(await devtools.send('Runtime.getHeapUsage')) as Used, ...(await ofWorkers(devtools))];
  return used.reduce((sum, { usedSize, backingStorageSize = 0 }) => sum + usedSize + backingStorageSize, 0) / 1e6;
}

interface Used {
  readonly usedSize: number;
  readonly backingStorageSize?: number;
}

const COLLECT = 1;
const USED = 2;

/** The page's tools reach its workers by messages in messages. */
async function ofWorkers(devtools: CDPSession): Promise<Used[]> {
  const sessions: string[] = [];
  const answers = new Map<string, Used>();
  let answered = (): void => undefined;
  const attached = ({ sessionId }: { sessionId: string }): void => void sessions.push(sessionId);
  const received = ({ sessionId, message }: { sessionId: string; message: string }): void => {
    const { id, result } = JSON.parse(message) as { id?: number; result?: Used };
    if (id !== USED || !result) return;
    answers.set(sessionId, result);
    answered();
  };
  devtools.on('Target.attachedToTarget', attached);
  devtools.on('Target.receivedMessageFromTarget', received);
  const attach = { waitForDebuggerOnStart: false, flatten: false };
  await devtools.send('Target.setAutoAttach', { ...attach, autoAttach: true });
  for (const sessionId of sessions) {
    const ask = (id: number, method: string): Promise<unknown> =>
      devtools.send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method }) });
    await ask(COLLECT, 'HeapProfiler.collectGarbage');
    await ask(USED, 'Runtime.getHeapUsage');
  }
  while (answers.size < sessions.length) await new Promise<void>((done) => (answered = done));
  await devtools.send('Target.setAutoAttach', { ...attach, autoAttach: false });
  devtools.off('Target.attachedToTarget', attached);
  devtools.off('Target.receivedMessageFromTarget', received);
  return [...answers.values()];
}
