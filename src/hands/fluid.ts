// The hands on the fluid: powder, stirring, feeling, the funnel.
import type { Senses } from '$sim';
import type { Desk } from './desk.svelte';
import type { Hand } from './hand';

export function fluidHands(
  desk: Desk,
  { feel, funnel, stock }: Senses,
  withFeel: boolean,
  withFunnel: boolean,
): Hand[] {
  const hands: Hand[] = [
    {
      form: 'button',
      id: 'addPowder',
      drawing: 'addPowder',
      label: 'work.addPowder',
      detail: { key: 'work.stock.powder', data: { powder_kg: stock.powder_kg } },
      whyNot: desk.whyNot('addAdditive', { additive: 'polymer', mass_g: 10, manner: 'sprinkled' }),
      asks: true,
      press: () => desk.open('addPowder'),
      shortcut: 'addPowder',
    },
    {
      form: 'button',
      id: 'stir',
      drawing: 'stir',
      label: 'work.stir',
      detail: { key: 'work.stir.say' },
      whyNot: desk.whyNot('stir', { time_s: 60 }),
      asks: true,
      press: () => desk.open('stir'),
      shortcut: 'stir',
    },
  ];
  if (withFeel)
    hands.push({
      form: 'button',
      id: 'feelFluid',
      drawing: 'feelFluid',
      label: 'work.feelFluid',
      detail: { key: feel ? `work.feel.${feel.word}` : 'work.feelFluid.say' },
      whyNot: desk.whyNot('feelFluid'),
      press: () => desk.act('feelFluid', 'feelFluid'),
      shortcut: 'feelFluid',
    });
  if (withFunnel)
    hands.push({
      form: 'button',
      id: 'funnelTest',
      drawing: 'funnelTest',
      label: 'work.funnelTest',
      detail: funnel
        ? { key: 'work.funnelTest.last', data: { seconds_s: funnel.seconds_s } }
        : { key: 'work.funnelTest.say' },
      whyNot: desk.whyNot('funnelTest'),
      press: () => desk.act('funnelTest', 'funnelTest'),
      shortcut: 'funnelTest',
    });
  return hands;
}
