// The hands at the pit: stick, water, spade, strainer.
import type { Senses } from '$sim';
import type { Desk } from './desk.svelte';
import type { Hand } from './hand';

export function pitHands(desk: Desk, { pit, stick, stock, mouth }: Senses, withStick: boolean, fills: boolean): Hand[] {
  const hands: Hand[] = [
    {
      form: 'button',
      id: 'addWater',
      drawing: 'addWater',
      label: 'work.addWater',
      detail: { key: 'work.stock.water', data: { water_L: stock.water_L } },
      whyNot: desk.whyNot('addWater', { water_L: 5 }),
      asks: true,
      press: () => desk.open('addWater'),
      shortcut: 'addWater',
    },
    {
      form: 'button',
      id: 'topUp',
      drawing: 'topUp',
      label: 'work.topUp',
      detail: { key: `work.topUp.${mouth.look}` },
      whyNot: desk.whyNot('topUp', { fluid_L: 5 }),
      asks: true,
      press: () => desk.open('topUp'),
      shortcut: 'topUp',
    },
    {
      form: 'button',
      id: 'digOut',
      drawing: 'digOut',
      label: 'work.digOut',
      detail: { key: `work.digOut.${pit.heap}` },
      whyNot: digReason(desk),
      asks: true,
      press: () => desk.open('digOut'),
      shortcut: 'digOut',
    },
    {
      form: 'button',
      id: 'clearStrainer',
      drawing: 'clearStrainer',
      label: 'work.clearStrainer',
      detail: { key: 'work.clearStrainer.say' },
      whyNot: desk.whyNot('clearStrainer'),
      press: () => desk.act('clearStrainer', 'clearStrainer'),
      shortcut: 'clearStrainer',
    },
    {
      form: 'button',
      id: 'setStrainer',
      drawing: 'setStrainer',
      label: 'work.setStrainer',
      detail: { key: 'work.setStrainer.now', data: { height_cm: pit.strainer_m * 100 } },
      whyNot: desk.whyNot('setStrainer', { height_m: pit.strainer_m }),
      asks: true,
      press: () => desk.open('setStrainer'),
      shortcut: 'setStrainer',
    },
  ];
  if (withStick)
    hands.unshift({
      form: 'button',
      id: 'readStick',
      drawing: 'readStick',
      label: 'work.readStick',
      detail: stick
        ? { key: 'work.readStick.last', data: { level_cm: stick.level_m * 100 } }
        : { key: 'work.readStick.none' },
      whyNot: desk.whyNot('readStick'),
      press: () => desk.act('readStick', 'readStick'),
      shortcut: 'readStick',
    });
  const dug = fills ? [...newPitHands(desk, stock.water_L), ...hands] : hands;
  return desk.session.run.scenario.well ? [siteHand(desk), ...dug] : dug;
}

/** The plan of the site: the spot is chosen on it, later it can be looked at again. */
function siteHand(desk: Desk): Hand {
  const { spot } = desk.session.run.state.site;
  return {
    form: 'button',
    id: 'site',
    drawing: 'site',
    label: 'site.hand',
    detail: spot === '' ? { key: 'site.hand.none' } : { key: 'site.hand.at', data: { spot } },
    whyNot: null,
    asks: true,
    press: () => desk.open('site'),
    shortcut: 'site',
  };
}

/** Where the pit is dug or low at first: the digging, as long as there is none, and filling it. */
function newPitHands(desk: Desk, water_L: number): Hand[] {
  const fill: Hand = {
    form: 'button',
    id: 'fillPit',
    drawing: 'fillPit',
    label: 'work.fillPit',
    detail: { key: 'work.stock.water', data: { water_L } },
    whyNot: desk.whyNot('fillPit', { water_L: 10 }),
    asks: true,
    press: () => desk.open('fillPit'),
    shortcut: 'fillPit',
  };
  if (desk.session.run.state.site.pitDug) return [fill];
  const dig: Hand = {
    form: 'button',
    id: 'setOut',
    drawing: 'setOut',
    label: 'work.setOut',
    detail: { key: 'work.setOut.say' },
    whyNot: desk.whyNot('setOut', { settling_m3: 0.5, suction_m3: 0.5, channel_m: 1.5 }),
    asks: true,
    press: () => desk.open('setOut'),
    shortcut: 'setOut',
  };
  return [dig, fill];
}

/** Digging is possible if either chamber has something to dig. */
function digReason(desk: Desk): ReturnType<Desk['whyNot']> {
  const settling = desk.whyNot('digOutPit', { chamber: 'settling', spoil_L: 1 });
  return settling && desk.whyNot('digOutPit', { chamber: 'suction', spoil_L: 1 });
}
