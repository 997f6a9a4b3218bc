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
    one: "The {wheel} tire holds only {value:p} of {label} {unit}. It may be damaged inside. Please don't drive on it until we have looked.",
    many: "These tires are very low: {wheels}. They may be damaged inside. Please don't drive until we have looked.",
    forms: {
      'no-label': {
        one: "The {wheel} tire holds only {value:p} {unit}. It may be damaged inside. Please don't drive on it until we have looked.",
        many: "These tires are very low: {wheels}. They may be damaged inside. Please don't drive until we have looked.",
      },
      told: {
        one: "The {wheel} tire was driven low. It may be damaged inside. Please don't drive on it until we have looked.",
        many: "These tires ran low: {wheels}. They may be damaged inside. Please don't drive until we have looked.",
      },
    },
  },
  'sealant-inside': {
    one: 'A can of sealant was used in this tire. Its gas can burn, so we empty it outdoors before opening it.',
    many: 'A can of sealant was used. Its gas can burn, so we empty these tires outdoors before opening them.',
  },
  'hot-corner': {
    one: 'The {wheel} wheel runs {degrees} °{temperatureUnit} hotter than the others. A brake or bearing may drag; have it checked before you drive.',
    many: 'These wheels run hot: {wheels}. A brake or bearing may drag; have it checked before you drive.',
  },
  'stem-leaking': {
    one: 'The valve stem on the {wheel} wheel is leaking. It can let go without warning. Please have it replaced before you drive.',
    many: 'These valve stems are failing: {wheels}. They can let go without warning. Please have them replaced before you drive.',
    forms: {
      leaks: {
        one: 'The valve stem on the {wheel} wheel is leaking. It can let go without warning. Please have it replaced before you drive.',
        many: 'These valve stems are failing: {wheels}. They can let go without warning. Please have them replaced before you drive.',
      },
      cracked: {
        one: 'The valve stem on the {wheel} wheel is cracked. It can let go without warning. Please have it replaced before you drive.',
        many: 'These valve stems are cracked: {wheels}. They can let go without warning. Please have them replaced before you drive.',
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
        one: 'The {wheel} tire has cord showing. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      'cut-to-cord': {
        one: 'The {wheel} tire has a cut down to its cord. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      worn: {
        one: 'The {wheel} tire is worn out, {tread}/32. It grips poorly in rain. Please replace it now.',
        many: 'These tires are worn out: {wheels}. They grip poorly in rain. Please replace them now.',
      },
      'run-low-damage': {
        one: 'The {wheel} tire is damaged inside from running low. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged inside: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      cord: {
        one: 'The {wheel} tire shows cord inside. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged inside: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      separation: {
        one: 'The {wheel} tire is coming apart inside. It can fail suddenly. Please do not drive on it.',
        many: 'These tires are damaged inside: {wheels}. They can fail suddenly. Please do not drive on them.',
      },
      stowed: {
        one: 'The {wheel} tire is damaged and can fail suddenly. Please do not fit it; have it replaced.',
      },
    },
  },
  'wheel-not-secure': {
    one: 'The {wheel} wheel is not held safely: a fastener is missing or damaged. Please do not drive until this is repaired.',
    many: 'These wheels are not held safely: {wheels}. Please do not drive until this is repaired.',
  },

  'tire-low': {
    one: 'Your {wheel} tire has {value:p} {unit}; the door label calls for {label}. The light is doing its job.',
    many: 'These tires are low: {wheels}. The lowest has {value:p} of {label} {unit}. The light is doing its job.',
    forms: {
      'under-flash': {
        one: 'Your {wheel} tire has {value:p} {unit}; the door label calls for {label}. The flashing fault was hiding this.',
        many: 'These tires are low: {wheels}. The lowest has {value:p} of {label} {unit}. The flashing fault was hiding this.',
      },
      'only-cold': {
        one: 'Your {wheel} tire shows {warm:p} {unit} warm; cold that is {value:p}, under the {point:p} at which the light comes on.',
        many: 'These tires are low once cold: {wheels}. The lowest then has {value:p} {unit}; the light comes on at {point:p}.',
      },
      'without-light': {
        one: 'Your {wheel} tire has {value:p} {unit}; the door label calls for {label}.',
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
    one: 'These tires are low by about {difference:p} {unit}: colder air and months of ordinary seepage.',
    many: 'Low by about {difference:p} {unit}: {wheels}. That is colder air and months of ordinary seepage.',
    all: 'All four tires are low by about {difference:p} {unit}: colder air and months of ordinary seepage. Nothing is broken.',
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
    one: 'The {wheel} tire is {difference:p} {unit} under the label and lower than others. We should look for a slow leak.',
    many: 'These tires are lower than the others: {wheels}. We should look for slow leaks.',
  },
  'slow-leak': {
    one: 'The {wheel} tire is losing about {perDay:p} {unit} a day after allowing for weather. At that rate the light returns in {days} days.',
    many: 'These tires lose air faster than weather explains: {wheels}. The fastest loses about {perDay:p} {unit} a day.',
    forms: {
      'within-a-day': {
        one: 'The {wheel} tire is losing about {perDay:p} {unit} a day after allowing for weather. The light returns within a day.',
        many: 'These tires lose air faster than weather explains: {wheels}. The fastest loses about {perDay:p} {unit} a day.',
      },
      'low-already': {
        one: 'The {wheel} tire is losing about {perDay:p} {unit} a day after allowing for weather.',
        many: 'These tires lose air faster than weather explains: {wheels}. The fastest loses about {perDay:p} {unit} a day.',
      },
    },
  },
  'axle-pressures-exchanged': {
    one: 'Front and rear tires have each other’s pressure: the label calls for {front} in front and {rear} {unit} behind.',
  },
  'cold-morning-margin': {
    one: 'At {degrees} °{temperatureUnit} tonight the {wheel} tire will show about {value:p} {unit}, low enough to light the warning.',
    many: 'At {degrees} °{temperatureUnit} tonight your tires will show about {value:p} {unit}, low enough to light the warning.',
  },
  'altitude-change': {
    one: 'These tires are low by about {difference:p} {unit} because you came down in altitude.',
    many: 'Low by about {difference:p} {unit} because you came down in altitude: {wheels}.',
    all: 'All four tires are low by about {difference:p} {unit} because you came down in altitude. Nothing is broken.',
    forms: {
      'beside-a-stop': {
        one: 'The {wheel} tire is low by about {difference:p} {unit} because you came down in altitude.',
        many: 'Low by about {difference:p} {unit} because you came down in altitude: {wheels}.',
      },
    },
  },
  'spare-low': { one: 'The light is for your spare, which has {value:p} of {label} {unit}.' },
  'warm-tire-hides-low': {
    one: 'Warm tires read high. Cold, the {wheel} tire would show {value:p} {unit}, which is {difference:p} under the label.',
    many: 'Warm tires read high. Cold, these would show {value:p} {unit}, which is {difference:p} under the label.',
  },
  'over-inflated': {
    one: 'The {wheel} tire holds {value:p} {unit}; the door label calls for {label}. It is too hard.',
    many: 'These tires are too hard: {wheels}. One holds {value:p} {unit}; the label calls for {label}.',
  },
  'no-warning-given': {
    one: 'The {wheel} tire is low enough for a warning, yet the light is off. We will find out why.',
    many: 'These tires are low enough for a warning: {wheels}. Yet the light is off. We will find out why.',
  },
  'warning-unexplained': {
    one: 'Every tire is right, yet the light stays on. We check our gauge and look further before selling anything.',
  },
  'under-placard': {
    one: 'The {wheel} tire is {difference:p} {unit} under the door label; not enough to light the warning. We can set it.',
    many: 'These tires are a little under the label: {wheels}. Not enough to light the warning. We can set them.',
    all: 'All four tires are a little under the door label. Not enough to light the warning. We can set them.',
  },
  'puncture-not-repairable': {
    one: 'The hole in the {wheel} tire is beyond what may be repaired. The tire has to be replaced before you drive.',
    many: 'These tires have holes beyond what may be repaired: {wheels}. They have to be replaced before you drive.',
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
    one: 'Your car watches its tires by wheel speed. It does not know yet that they are right: its system must be reset.',
  },
  'wheel-speed-fault': {
    one: 'Your car watches its tires through wheel speed, and reports a fault there. That needs a look at the brake system.',
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
    one: 'The sensor in the {wheel} wheel no longer answers. We asked {tries} times; the others answered.',
    many: 'These sensors no longer answer: {wheels}. We asked each at least {tries} times; the others answered.',
  },
  'no-wheel-answers': {
    one: 'No wheel answers our reader. Before blaming four sensors we are checking our own equipment.',
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
    one: "The {wheel} sensor is for another radio frequency ({has} instead of {needs} MHz). Your car can't hear it.",
    many: "These sensors are for another radio frequency: {wheels}. Your car can't hear them.",
  },
  'protocol-wrong': {
    one: 'The {wheel} sensor works, but speaks another vehicle’s language. It must be programmed for yours.',
    many: 'These sensors speak another vehicle’s language: {wheels}. They must be programmed for yours.',
  },
  'sensor-does-not-follow': {
    one: 'The {wheel} sensor does not follow the pressure in its tire. We need to open the tire to see why.',
    many: 'These sensors do not follow the pressure in their tires: {wheels}. We need to look inside.',
  },
  'stem-corroded': {
    one: 'The valve stem on the {wheel} wheel is corroded. It holds air today and may break when touched.',
    many: 'These valve stems are corroded: {wheels}. They hold air today and may break when touched.',
  },
  'set-of-four-worth-offering': {
    one: 'One has failed; the other three are the same age. Replacing one cures the light today. Your choice.',
    forms: {
      several: {
        one: '{count} have failed; the others are the same age. Replacing those cures the light today. Your choice.',
      },
      'none-answers': {
        one: 'None answers, and all four are old. Once our reader is proven, a set of four is worth a look.',
      },
    },
  },
  'sensor-asleep': {
    one: 'The new {wheel} sensor has not woken up yet. Inflating from flat or a drive wakes it.',
    many: 'These new sensors have not woken up yet: {wheels}. Inflating from flat or a drive wakes them.',
  },
  'no-sensor-on-arrival': {
    one: 'The {wheel} wheel had no sensor when it arrived.',
    many: 'These wheels had no sensor when they arrived: {wheels}.',
  },
  'temporary-spare-fitted': {
    one: 'The temporary spare is on the car. It has no sensor, so the light may stay on until your own wheel returns.',
  },

  'id-not-stored': {
    one: 'The {wheel} sensor works, but the car has never been introduced to it.',
    many: 'These sensors work, but the car has never been introduced to them: {wheels}.',
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
    one: 'Two sensors carry the same identity, so the car hears one and misses one.',
  },
  'wheel-from-another-vehicle': {
    one: 'The {wheel} wheel seems to come from another car. We check that it fits before anything else.',
    many: 'These wheels seem to come from another car: {wheels}. We check that they fit before anything else.',
  },
  'id-known-elsewhere': {
    one: 'The {wheel} sensor is on another car’s record here. Perhaps wheels were swapped.',
    many: 'These sensors are on another car’s record here: {wheels}. Perhaps wheels were swapped.',
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
    one: 'The car’s own receiver reports a fault. New sensors would not cure it; the vehicle itself needs a repair.',
  },
  'code-old-or-intermittent': {
    one: 'The car noted that it once missed the {wheel} sensor, which answers now. We clear the note and watch it.',
    many: 'The car once missed sensors that answer now: {wheels}. We clear the note and watch them.',
  },
  'control-module-blank': {
    one: 'The car has forgotten all its sensors. They work; it must be introduced to them again.',
  },
  'learn-mode-open': {
    one: 'The car is still waiting to be introduced to its sensors. We finish that, then look again.',
  },
  'telltale-dark': {
    one: "Your warning light does not come on at key-on. It can't warn you. It was like this on arrival.",
  },
  'collision-corner': {
    one: 'The {wheel} corner was struck. We look at bracket and wiring there before ordering a sensor.',
    many: 'These corners were struck: {wheels}. We look at bracket and wiring there before ordering sensors.',
  },
  'not-driven-yet': {
    one: 'The car needs about 20 minutes of driving to judge its tires. Please drive, then we look again.',
  },

  'one-place-only': {
    one: 'It happens in one place only, so a transmitter there is likely. Your car needs no work for it.',
  },
  'interference-suspected': {
    one: 'Something plugged in or added may drown out the sensors. Please drive without it and tell us.',
  },
  'aftermarket-wheels': {
    one: 'These are not the maker’s wheels. They may hold or shield a sensor differently; we check how it sits.',
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
