import type { ContradictionsWording } from '../contradictions.ts'

export const contradictions: ContradictionsWording = {
  'light-against-evidence': () => ({
    says: 'The sensors pass every test that we can do standing still; the vehicle says it cannot hear one.',
    do: 'Read codes, unplug added devices, drive 20 minutes and repeat; sell no part on a guess.',
  }),
  'light-off-tire-low': () => ({
    says: 'The warning should have come on, or has not had time to.',
    do: 'Watch the lamp check at key-on, drive 20 minutes and look again.',
  }),
  'light-on-tires-right': () => ({
    says: 'The vehicle reports something that we cannot see.',
    do: 'Look at the spare, at the distance between sensors and gauge, and at the stored places.',
  }),
  'gauge-against-sensors': () => ({
    says: 'Our gauge is the odd one out.',
    do: 'Take every reading again with the master gauge.',
  }),
  'fault-not-flashed': () => ({
    says: 'The vehicle should flash for a sensor that it cannot hear, and the light does not flash.',
    do: 'Drive 20 minutes, turn the vehicle off and on, and watch the light for two minutes: a flash that nobody watched for looks like a steady light.',
  }),
  'lamp-dark-yet-lit': () => ({
    says: 'The light was dark at key-on, yet someone saw it come on.',
    do: 'Watch the lamp check again, then the light; keep both records.',
  }),
  'positions-exchanged': () => ({
    says: 'The vehicle and the gauge name different tires: the vehicle has stored the wheels at exchanged places.',
    do: 'Repair the tire that the gauge shows, then relearn the places.',
  }),
  'stray-sensors-heard': () => ({
    says: 'More sensors were heard than this vehicle has wheels: other wheels are near.',
    do: 'Move the vehicle or the other wheels 5 ft away and read every wheel again.',
  }),
  'light-reported-otherwise': () => ({
    says: 'The customer saw the light behave differently than we did. Both are kept.',
    do: 'Watch it again after 20 minutes of driving.',
  }),
  'sheet-frequency-doubtful': () => ({
    says: 'All four sensors that the vehicle knows send on one frequency other than the one on the sheet: the sheet is wrong, not four sensors.',
    do: 'Verify the frequency of this vehicle type and correct the sheet; do not replace a sensor.',
  }),
  'gauge-unsupported': ({ wheel, value, sensor, unit }) => ({
    says: `Gauge that wheel again, ${wheel}: ${value} ${unit} was typed, its sensor says ${sensor}, and no sensor on the vehicle is near it.`,
    do: 'Gauge it again before anything else. Until then the reading counts, with its stop.',
  }),
  'hot-corner-tires-cold': ({ wheel, degrees, temperatureUnit }) => ({
    says: `The tires were said to be cold, and the ${wheel} wheel is ${degrees} °${temperatureUnit} hotter than the others.`,
    do: 'Do not touch wheel or brake: measure by infrared or let it cool. Look at the brake first.',
  }),
  'sensor-older-than-reported': () => ({
    says: 'Someone said that a sensor was replaced, but the one in the wheel is much older.',
    do: 'Photograph its date of manufacture: the part on the bill is not the part in the wheel.',
  }),
}
