// The hands on the fluid: powder, stirring, feeling, the funnel.
import type { Payload, Senses } from '$sim';
import type { AskValue } from './ask';
import { ASKS } from './asks';
import type { Desk } from './desk.svelte';
import type { Hand } from './hand';

export function fluidHands(
  desk: Desk,
  { feel, funnel, stock }: Senses,
  withFeel: boolean,
  withFunnel: boolean,
): Hand[] {
  const additives = desk.offered(ASKS.addPowder.choices[0]).map(({ value }) => value);
  const hands: Hand[] = [
    {
      form: 'button',
      id: 'addPowder',
      drawing: 'addPowder',
      label: 'work.addPowder',
      detail:
        additives.length > 1
          ? { key: 'work.stock.kinds', data: { n: additives.length } }
          : { key: 'work.stock.powder', data: { powder_kg: stock.powder_kg } },
      whyNot: whyNone(desk, additives),
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

/** Something can be put in if any of the additives can. */
function whyNone(desk: Desk, additives: readonly AskValue[]): ReturnType<Desk['whyNot']> {
  const least = (additive: AskValue): Payload => ({ additive, mass_g: 10, manner: 'sprinkled' });
  const reasons = additives.map((additive) => desk.whyNot('addAdditive', least(additive)));
  return reasons.includes(null) ? null : reasons[0]!;
}
