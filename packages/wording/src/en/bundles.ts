import type { BundlesWording } from '../bundles.ts'

export const bundles: BundlesWording = {
  titles: {
    look: () => 'Inspection',
    sensor: (wheels) => `New sensor, ${wheels}`,
    'set-of-four': () => 'New sensors in all wheels',
    stem: (wheels) => `Replace the valve stem, ${wheels}`,
    leak: (wheels) => `Find and repair the leak, ${wheels}`,
    'leak-search': (wheels) => `Find the leak and look inside, ${wheels}`,
    puncture: (wheels) => `Repair the puncture, ${wheels}`,
    tire: (wheels) => `New tire, ${wheels}`,
    fastener: (wheels) => `Replace damaged studs or nuts, ${wheels}`,
    season: () => 'Change to the other season’s wheels',
    rotation: () => 'Rotate the tires',
    'torque-again': (wheels) => `Check again that each wheel is tight, ${wheels}`,
    pressures: () => 'Set all pressures for the day',
    relearn: () => 'Connect the sensors to the vehicle',
    reset: () => 'Set the pressures and reset the system',
    tires: (wheels) => `New tires, sensors kept, ${wheels}`,
    spare: () => 'Spare wheel: new stem, pressure set',
    'outside-work': () => 'Work that another shop does',
    'if-stem-breaks': () => 'Only if a stem breaks: new sensor for that wheel',
    'by-hand': () => 'Added by our advisor',
  },
  nothingToSell: 'We checked every wheel and the vehicle.',
  asked: 'You asked for this.',
  ifStemBreaks:
    'A corroded stem can break when we loosen it. Then its sensor must be replaced. Yes: we go on, up to this price for each stem that breaks. No: we stop and show you first. You pay nothing of this if no stem breaks.',
  byHand: 'Our advisor added this for you.',
}
