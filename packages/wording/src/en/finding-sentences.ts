import type { FindingSentences } from '../findings.ts'
import { ageSentences } from './age-sentences.ts'

/** What an English-speaking customer reads for each finding: at most 25 words, no blame, no alarm without cause. */
export const findingSentences: FindingSentences = {
  'gauge-missing': {
    one: 'We have no pressure reading for the {wheel} tire yet, so we say nothing about it.',
    many: 'We have no pressure reading yet for these tires: {wheels}. So we say nothing about them.',
    all: 'We have no pressure reading for any tire yet, so we say nothing about them.',
  },
  'light-not-witnessed': { one: 'We have not yet seen for ourselves what your warning light does.' },
  'retry-silent-wheel': {
    one: 'The {wheel} sensor has not answered yet. We will try again before we judge.',
    many: 'Some sensors have not answered yet: {wheels}. We will try again before we judge.',
  },
  'cross-read-suspected': {
    one: 'Two wheels gave the same answer. We will read them again, apart from each other.',
  },
  'placard-unverified': {
    one: 'The tire label on the door is missing or unchecked, so we cannot judge your pressures yet.',
  },
  'system-unknown': { one: 'We are finding out first how your vehicle watches its tires.' },
  'reading-impossible': { one: 'One reading cannot be right. We will take it again.' },
  'reading-stale': { one: 'Something changed after we took a reading, so we will take it again.' },

  'run-low-damage-possible': {
    one: "The {wheel} tire has only {value:p} of {label} {unit}. It may be damaged inside. Please don't drive on it until we have looked.",
    many: "These tires are very low: {wheels}. They may be damaged inside. Please don't drive until we have looked.",
    forms: {
      'no-label': {
        one: "The {wheel} tire has only {value:p} {unit}. It may be damaged inside. Please don't drive on it until we have looked.",
        many: "These tires are very low: {wheels}. They may be damaged inside. Please don't drive until we have looked.",
      },
      told: {
        one: "The {wheel} tire was driven low. It may be damaged inside. Please don't drive on it until we have looked.",
        many: "These tires ran low: {wheels}. They may be damaged inside. Please don't drive until we have looked.",
      },
    },
  },
  'sealant-inside': {
    one: 'A can of sealant was used in the {wheel} tire. Its gas can burn, so we empty it outdoors before opening it.',
    many: 'A can of sealant was used. Its gas can burn, so we empty these tires outdoors before opening them.',
  },
  'hot-corner': {
    one: 'The {wheel} wheel is {degrees} °{temperatureUnit} hotter than the others. A brake or bearing may be rubbing; have it checked before you drive.',
    many: 'These wheels are hot: {wheels}. A brake or bearing may be rubbing; have it checked before you drive.',
  },
  'stem-leaking': {
    one: 'The valve stem on the {wheel} wheel is leaking. It can fail without warning. Please have it replaced before you drive.',
    many: 'These valve stems are failing: {wheels}. They can fail without warning. Please have them replaced before you drive.',
    forms: {
      leaks: {
        one: 'The valve stem on the {wheel} wheel is leaking. It can fail without warning. Please have it replaced before you drive.',
        many: 'These valve stems are failing: {wheels}. They can fail without warning. Please have them replaced before you drive.',
      },
      cracked: {
        one: 'The valve stem on the {wheel} wheel is cracked. It can fail without warning. Please have it replaced before you drive.',
        many: 'These valve stems are cracked: {wheels}. They can fail without warning. Please have them replaced before you drive.',
      },
    },
  },
  'tire-unsafe': {
    one: 'The {wheel} tire is damaged. It can fail suddenly. Please do not drive on it.',
    many: 'These tires are damaged: {wheels}. They can fail suddenly. Please do not drive on them.',
    forms: {
      bulge: {
        one: 'The {wheel} tire has a bulge. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      'cord-showing': {
        one: 'The inner cords of the {wheel} tire are showing. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      'cut-to-cord': {
        one: 'The {wheel} tire has a cut down to its inner cords. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      worn: {
        one: 'The {wheel} tire is worn out: only {tread}/32 inch of tread is left. It grips poorly in rain. Please replace it now.',
        many: 'These tires are worn out: {wheels}. They grip poorly in rain. Please replace them now.',
      },
      'run-low-damage': {
        one: 'The {wheel} tire is damaged inside from running low. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged inside: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      cord: {
        one: 'The cords of the {wheel} tire are showing inside it. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged inside: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      separation: {
        one: 'The {wheel} tire is coming apart inside. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged inside: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      stowed: {
        one: 'The {wheel} tire is damaged and can fail suddenly. Please do not use it; have it replaced.',
      },
    },
  },
  'wheel-not-secure': {
    one: 'The {wheel} wheel is not held safely: a nut, bolt or stud is missing or damaged. Please do not drive until this is repaired.',
    many: 'These wheels are not held safely: {wheels}. Please do not drive until this is repaired.',
  },

  'tire-low': {
    one: 'Your {wheel} tire has {value:p} {unit}; by the door label it should have {label}. The light is doing its job.',
    many: 'These tires are low: {wheels}. The lowest has {value:p} of {label} {unit}. The light is doing its job.',
    forms: {
      'under-flash': {
        one: 'Your {wheel} tire has {value:p} {unit}; by the door label it should have {label}. The flashing fault was hiding this.',
        many: 'These tires are low: {wheels}. The lowest has {value:p} of {label} {unit}. The flashing fault was hiding this.',
      },
      'only-cold': {
        one: 'Your {wheel} tire has {warm:p} {unit} while it is warm. Cold, it has {value:p}, and the light comes on at {point:p}.',
        many: 'These tires are low once cold: {wheels}. The lowest then has {value:p} {unit}; the light comes on at {point:p}.',
      },
      'without-light': {
        one: 'Your {wheel} tire has {value:p} {unit}; by the door label it should have {label}.',
        many: 'These tires are low: {wheels}. The lowest has {value:p} of {label} {unit}.',
      },
    },
  },
  'cold-weather': {
    one: 'These tires are low by about {difference:p} {unit}. It has turned {degrees} °{temperatureUnit} colder since they were set.',
    many: 'Low by about {difference:p} {unit}: {wheels}. It has turned {degrees} °{temperatureUnit} colder since they were set.',
    all: 'All four tires are low by about {difference:p} {unit}. It has turned {degrees} °{temperatureUnit} colder since they were set; nothing is broken.',
    forms: {
      'beside-a-stop': {
        one: 'The {wheel} tire is low by about {difference:p} {unit} from colder air.',
        many: 'Low by about {difference:p} {unit} from colder air: {wheels}.',
      },
    },
  },
  'weather-and-seepage': {
    one: 'These tires are low by about {difference:p} {unit}: the air is colder, and every tire loses a little over months.',
    many: 'Low by about {difference:p} {unit}: {wheels}. The air is colder, and every tire loses a little over months.',
    all: 'All four tires are low by about {difference:p} {unit}: the air is colder, and every tire loses a little over months. Nothing is broken.',
    forms: {
      'temperature-unknown': {
        one: 'These tires are low by about {difference:p} {unit}, as happens over months.',
        many: 'Low by about {difference:p} {unit}, as happens over months: {wheels}.',
        all: 'All four tires are low by about {difference:p} {unit}, as happens over months. Nothing points to a leak.',
      },
      'beside-a-stop': {
        one: 'The {wheel} tire is low by about {difference:p} {unit}, as happens over months.',
        many: 'Low by about {difference:p} {unit}, as happens over months: {wheels}.',
      },
    },
  },
  'slow-loss-suspected': {
    one: 'The {wheel} tire has {difference:p} {unit} less than it should, and less than others. We should look for a slow leak.',
    many: 'These tires are lower than the others: {wheels}. We should look for slow leaks.',
  },
  'slow-leak': {
    one: 'The {wheel} tire loses about {perDay:p} {unit} a day, not counting the weather. At that rate the light returns in {days} days.',
    many: 'These tires lose air faster than weather explains: {wheels}. The fastest loses about {perDay:p} {unit} a day.',
    forms: {
      'within-a-day': {
        one: 'The {wheel} tire loses about {perDay:p} {unit} a day, not counting the weather. The light returns within a day.',
        many: 'These tires lose air faster than weather explains: {wheels}. The fastest loses about {perDay:p} {unit} a day.',
      },
      'low-already': {
        one: 'The {wheel} tire loses about {perDay:p} {unit} a day, not counting the weather.',
        many: 'These tires lose air faster than weather explains: {wheels}. The fastest loses about {perDay:p} {unit} a day.',
      },
    },
  },
  'axle-pressures-exchanged': {
    one: 'Front and rear tires have each other’s pressure: the door label says {front} in front and {rear} {unit} behind.',
  },
  'cold-morning-margin': {
    one: 'At {degrees} °{temperatureUnit} tonight the {wheel} tire will have about {value:p} {unit}, low enough to turn the light on.',
    many: 'At {degrees} °{temperatureUnit} tonight your tires will have about {value:p} {unit}, low enough to turn the light on.',
  },
  'altitude-change': {
    one: 'These tires are low by about {difference:p} {unit} because you came down from higher ground.',
    many: 'Low by about {difference:p} {unit} because you came down from higher ground: {wheels}.',
    all: 'All four tires are low by about {difference:p} {unit} because you came down from higher ground. Nothing is broken.',
    forms: {
      'beside-a-stop': {
        one: 'The {wheel} tire is low by about {difference:p} {unit} because you came down from higher ground.',
        many: 'Low by about {difference:p} {unit} because you came down from higher ground: {wheels}.',
      },
    },
  },
  'spare-low': { one: 'The light is for your spare, which has {value:p} of {label} {unit}.' },
  'warm-tire-hides-low': {
    one: 'Warm tires show more. Cold, the {wheel} tire would have {value:p} {unit}, which is {difference:p} less than it should have.',
    many: 'Warm tires show more. Cold, these would have {value:p} {unit}, which is {difference:p} less than they should have.',
  },
  'over-inflated': {
    one: 'The {wheel} tire has {value:p} {unit}; by the door label it should have {label}. It is too hard.',
    many: 'These tires are too hard: {wheels}. One has {value:p} {unit} and should have {label}.',
  },
  'no-warning-given': {
    one: 'The {wheel} tire is low enough for a warning, yet the light is off. We will find out why.',
    many: 'These tires are low enough for a warning: {wheels}. Yet the light is off. We will find out why.',
  },
  'warning-unexplained': {
    one: 'Every tire is right, yet the light stays on. We check our gauge and look further before selling anything.',
  },
  'under-placard': {
    one: 'The {wheel} tire has {difference:p} {unit} less than it should; that is too little to turn the light on. We can set it.',
    many: 'These tires are a little low: {wheels}. That does not turn the light on. We can set them.',
    all: 'All four tires are a little low. That does not turn the light on. We can set them.',
  },
  'puncture-not-repairable': {
    one: 'The hole in the {wheel} tire cannot be repaired safely. The tire has to be replaced before you drive.',
    many: 'These tires have holes that cannot be repaired safely: {wheels}. They have to be replaced before you drive.',
  },
  'puncture-found': {
    one: 'There is a puncture in the {wheel} tire. We look inside first; then we can say whether it may be repaired.',
    many: 'These tires have punctures: {wheels}. We look inside first; then we can say whether they may be repaired.',
  },
  'spare-under-label': {
    one: 'Your spare has {value:p} of {label} {unit}. No light says so. We can set it.',
  },

  'set-then-reset': {
    one: 'Your car compares its wheels. We set the tires to the label, then tell it that they are right.',
  },
  'reset-only': {
    one: 'Your car watches its tires by how fast they turn. It does not know yet that they are right: we must reset it.',
  },
  'wheel-speed-fault': {
    one: 'Your car watches its tires by how fast they turn, and reports a fault there. That needs a look at the brake system.',
  },
  'no-monitoring-fitted': {
    one: 'Your car does not monitor tire pressure. The light means something else; the owner’s manual names it.',
  },
  'equal-loss-unseen': {
    one: 'Your car compares its tires with each other. All four are low alike, so it cannot notice.',
  },
  'system-kind-contradicted': {
    one: 'Our records say that your wheels have no sensors, yet one answers. We settle that first.',
  },
  'reset-and-recheck': {
    one: 'Your tires are right. We reset the system once; please come back in seven days for a check.',
  },

  'sensor-silent': {
    one: 'The sensor in the {wheel} wheel does not work. We tested it {tries} times; the others answered.',
    many: 'These sensors do not work: {wheels}. We tested each at least {tries} times; the others answered.',
  },
  'no-wheel-answers': {
    one: 'No wheel answers our reader. Before we blame four sensors, we check our own equipment.',
  },
  'sensor-battery-low': {
    one: 'The {wheel} sensor reports a low battery. It still works, and will fail first on cold mornings.',
    many: 'These sensors report a low battery: {wheels}. They still work, and will fail first on cold mornings.',
  },
  'sensor-reads-wrong': {
    one: 'The {wheel} sensor reports {sensor:p} {unit} to the car; the tire really holds {value:p}.',
  },
  'sensors-refer-to-sea-level': {
    one: 'Your dash shows about {difference:p} {unit} less than a gauge here because of altitude. That is normal.',
  },
  'gauge-suspect': {
    one: 'All sensors differ from our gauge by about {difference:p} {unit}. We suspect the gauge and measure again with another.',
  },
  'sensor-temperature-impossible': {
    one: 'The {wheel} sensor reports an impossible temperature. It is probably failing.',
    many: 'These sensors report impossible temperatures: {wheels}. They are probably failing.',
  },
  'frequency-wrong': {
    one: 'The sensor in the {wheel} wheel is the wrong part for your car. Your car cannot hear it.',
    many: 'These sensors are the wrong parts for your car: {wheels}. Your car cannot hear them.',
  },
  'protocol-wrong': {
    one: 'The {wheel} sensor works, but it is set up for another car. It must be set up for yours.',
    many: 'These sensors are set up for another car: {wheels}. They must be set up for yours.',
  },
  'sensor-does-not-follow': {
    one: 'The {wheel} sensor shows the same pressure when the air in its tire changes. We need to open the tire to see why.',
    many: 'These sensors show the same pressure when the air in their tires changes: {wheels}. We need to look inside.',
  },
  'stem-corroded': {
    one: 'The valve stem on the {wheel} wheel is corroded. It holds air today and may break when touched.',
    many: 'These valve stems are corroded: {wheels}. They hold air today and may break when touched.',
  },
  'set-of-four-worth-offering': {
    one: 'One has failed; the other three are the same age. Replacing one turns the light off today. Your choice.',
    forms: {
      several: {
        one: '{count} have failed; the others are the same age. Replacing those turns the light off today. Your choice.',
      },
      'none-answers': {
        one: 'None answers, and all four are old. Once we have proved that our reader works, a set of four is worth a thought.',
      },
    },
  },
  'sensor-asleep': {
    one: 'The new {wheel} sensor has not woken up yet. Filling an empty tire, or a drive, wakes it.',
    many: 'These new sensors have not woken up yet: {wheels}. Filling an empty tire, or a drive, wakes them.',
  },
  'no-sensor-on-arrival': {
    one: 'The {wheel} wheel had no sensor when it arrived.',
    many: 'These wheels had no sensor when they arrived: {wheels}.',
  },
  'temporary-spare-fitted': {
    one: 'The temporary spare is on the car. It has no sensor, so the light may stay on until your own wheel returns.',
  },

  'id-not-stored': {
    one: 'The {wheel} sensor works, but it was never connected to your car.',
    many: 'These sensors work, but they were never connected to your car: {wheels}.',
  },
  'stored-id-unheard': {
    one: 'The car still looks for an earlier sensor at the {wheel} wheel; that sensor is no longer here.',
    many: 'The car still looks for earlier sensors that are no longer here: {wheels}.',
  },
  'other-wheel-set': { one: 'The car is looking for four sensors other than those in these wheels.' },
  'rotated-without-relearn': {
    one: "The wheels were moved but the car wasn't told; it would name the wrong tire.",
  },
  'id-duplicated': {
    one: 'Two sensors send the same number, so the car hears one and misses one.',
  },
  'wheel-from-another-vehicle': {
    one: 'The {wheel} wheel seems to come from another car. We check that it fits before anything else.',
    many: 'These wheels seem to come from another car: {wheels}. We check that they fit before anything else.',
  },
  'id-known-elsewhere': {
    one: 'We have the {wheel} sensor on the record of another car. Perhaps wheels were swapped.',
    many: 'We have these sensors on the record of another car: {wheels}. Perhaps wheels were swapped.',
  },
  'id-notation-differs': {
    one: 'The car writes its sensors’ numbers differently than we do. They match; nothing is wrong.',
  },
  'spare-rotated-without-relearn': {
    one: "The spare was rotated onto the road but the car wasn't told; it would name the wrong tire.",
  },

  'malfunction-unexplained': {
    one: "Everything we can measure is right, yet the car reports a fault. We won't sell you a part on a guess.",
  },
  'receiver-fault': {
    one: 'The part of the car that listens to the sensors reports a fault. New sensors would not help; the car itself needs a repair.',
  },
  'code-old-or-intermittent': {
    one: 'The car noted that it once missed the {wheel} sensor, which answers now. We clear the note and watch it.',
    many: 'The car once missed sensors that answer now: {wheels}. We clear the note and watch them.',
  },
  'control-module-blank': {
    one: 'The car has forgotten all its sensors. They work; they must be connected to the car again.',
  },
  'learn-mode-open': {
    one: 'The car is still waiting to be connected to its sensors. We finish that, then look again.',
  },
  'telltale-dark': {
    one: "Your warning light does not come on when the key is turned on. It can't warn you. It was like this when you came.",
  },
  'collision-corner': {
    one: 'The {wheel} corner was hit. We look at the sensor’s holder and wires there before we order a sensor.',
    many: 'These corners were hit: {wheels}. We look at the wires there before we order sensors.',
  },
  'not-driven-yet': {
    one: 'The car needs about 20 minutes of driving to judge its tires. Please drive, then we look again.',
  },

  'one-place-only': {
    one: 'It happens in one place only: something there probably disturbs the radio signal. Your car needs no work for it.',
  },
  'interference-suspected': {
    one: 'Something plugged in or added may disturb the sensors’ signal. Please drive without it and tell us.',
  },
  'aftermarket-wheels': {
    one: 'These are not the maker’s wheels. They may hold a sensor differently or block its signal; we check how it sits.',
  },
  'snow-or-chains': {
    one: 'Chains or packed snow may hide the sensors for a while. We clear the wheels and test again.',
  },

  comeback: {
    one: 'We worked on the {wheel} wheel recently. We first find out whether this is ours to put right.',
    many: 'We worked on these wheels recently: {wheels}. We first find out whether this is ours to put right.',
  },
  ...ageSentences,
  'nothing-found-today': {
    one: 'We could not make it happen today. Here is what to note when it does.',
  },
}
