// The hands on the pump: prime, throttle, stop.
import type { Senses } from '$sim';
import type { Desk } from './desk.svelte';
import type { Hand } from './hand';
import { shareStepper } from './stepper';

export function pumpHands(desk: Desk, { pump }: Senses): Hand[] {
  return [
    {
      form: 'button',
      id: 'prime',
      drawing: 'prime',
      label: 'work.prime',
      detail: { key: pump.primed ? 'work.prime.done' : 'work.prime.need' },
      narrow: true,
      whyNot: desk.whyNot('prime'),
      press: () => desk.act('prime', 'prime'),
      shortcut: 'prime',
    },
    {
      form: 'button',
      id: 'stopPump',
      drawing: 'stopPump',
      label: 'work.stopPump',
      detail: { key: pump.throttle_frac > 0 ? 'work.stopPump.on' : 'work.stopPump.off' },
      whyNot: pump.throttle_frac > 0 ? null : { key: 'work.stopPump.already' },
      press: () =>
        pump.throttle_frac > 0
          ? void desk.act('stopPump', 'setThrottle', { throttle_frac: 0 })
          : desk.refuse('stopPump', { key: 'work.stopPump.already' }),
      shortcut: 'stopPump',
    },
    shareStepper(desk, {
      id: 'throttle',
      action: 'setThrottle',
      field: 'throttle_frac',
      shareNow: (senses) => senses.pump.throttle_frac,
      steps: 4,
      label: 'work.throttle',
      detail: { key: 'work.throttle.now', data: { share: pump.throttle_frac } },
      more: 'work.throttle.more',
      less: 'work.throttle.less',
    }),
  ];
}
