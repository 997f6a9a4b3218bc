import type { UnsafeDamage } from '@bayledger/reckoning/diagnosis/reason-codes'
import type { FastenerDamage } from '@bayledger/reckoning/evidence/evidence-schema'
import type { ReasonsWording } from '../reasons.ts'

export const reasons: ReasonsWording = {
  'no-gauge-value': () => 'no gauge value was recorded',
  'not-seen-yet': () => 'not seen by us yet',
  'silent-not-asked-twice': () => 'silent, but tried fewer than two times',
  'plain-stem-not-asked-twice': () => 'a plain stem, and not tried twice',
  'same-id-elsewhere': () => 'the same ID at another position',
  'same-id-elsewhere-read-twice': () => 'the same ID at another position, read twice',
  'label-not-verified': () => 'no verified label figures for both axles',
  'not-known': () => 'not known',
  'no-tire-holds-that': () => 'no tire of this kind can hold that',
  'temperature-out-of-range': () => 'outside -40 to 257 °F (-40 to 125 °C)',
  'read-before-change': () => 'read before the wheel was moved or air was added',

  'at-or-under-share-of-label': ({ percent, label, unit }) =>
    `${percent} % of the label figure of ${label} ${unit}, or less`,
  'at-or-under-limit': ({ limit, unit }) => `${limit} ${unit} or less`,
  'driven-low': () => 'the tire was driven low or flat',
  'run-low-dust': () => 'rubber dust of a tire that ran low',
  'sealant-seen': () => 'sealant was seen',
  'sealant-reported': () => 'a can of sealant was used',
  'hotter-than-others': ({ degrees, temperatureUnit }) =>
    `${degrees} °${temperatureUnit} over the mean of the others`,
  'stem-cracked': () => 'the stem is cracked',
  'stem-leaks': () => 'the stem leaks',
  'fasteners-damaged': ({ damage }) => damage.map((one) => fastenerDamage[one]).join(', '),
  'tire-damaged': ({ damage }) => damage.map((one) => tireDamage[one]).join(', '),
  'tread-worn-out': () => 'at or under the 2/32 in at which a tire is worn out',

  'damaged-inside': () => 'damaged inside',
  'beyond-repair-limits': () =>
    'beyond the limits of a repair: crown only, 6 mm (1/4 in), no overlap, tread over 2/32 in, sound inside',
  'puncture-seen': () => 'a puncture was seen',

  'at-or-under-warning-point': (values) => atWarningPoint(values),
  'cold-at-or-under-warning-point': (values) => `${coldWords(values)}, ${atWarningPoint(values)}`,
  'within-hold': (values) => withinHold(values),
  'sensor-within-hold': (values) => `the vehicle sees this value, ${withinHold(values)}`,
  'no-light': () => 'and yet no light',
  'cold-under-label': (values) => coldWords(values),
  'under-label': ({ label, unit }) => `under the label figure of ${label} ${unit}`,
  'cold-above-sidewall-maximum': (values) =>
    `${coldWords(values)}, above the sidewall maximum of ${values.sidewall} ${values.unit}`,
  'cold-at-sidewall-maximum': (values) =>
    `${coldWords(values)}, set to the sidewall figure of ${values.sidewall} ${values.unit}`,
  'cold-under-mate': (values) => `${coldWords(values)}, 3 psi or more under its axle mate or two other tires`,
  'cold-as-other-axle': (values) => `${coldWords(values)}, as on the other axle`,
  'lost-since-reading': ({ drop, days, perDay, unit }) =>
    `${drop} ${unit} lost in ${days} days, ${perDay} ${unit} a day, not counting the weather`,
  'colder-air-explains': ({ percent }) => `colder air since explains ${percent} % of it`,
  'air-denser-here': ({ difference, unit }) => `the air is denser here by ${difference} ${unit}`,
  'overnight-at-or-under-warning-point': (values) =>
    `${values.predicted} ${values.unit} at the overnight low, ${atWarningPoint(values)}`,

  'compares-with-earlier-wheels': () => 'since then the system compares with wheels it no longer has',
  'solid-with-right-tires': () => 'solid, although every tire is right',
  'fault-not-pressure': () => 'a fault, not a tire pressure',
  'none-fitted': () => 'none fitted',
  'no-sensors-expected': () => 'no sensors expected',
  'answers-all-the-same': () => 'and yet one answers',

  'silent-while-others-answered': ({ tries }) => `silent at ${tries} tries, while others answered`,
  'vehicle-misses-it-too': ({ wheel }, { names }) => `the vehicle misses the ${names[wheel]} too`,
  silent: ({ tries }) => `silent at ${tries} tries`,
  'plain-stem': () => 'a plain stem',
  'no-sensor-heard-here': () => 'the vehicle hears no sensor from here',
  'battery-low': () => 'the battery is reported low',
  'vehicle-listens-on': ({ megahertz }) => `the vehicle listens on ${megahertz} MHz`,
  'refused-while-others-learned': () => 'refused, while others were learned',
  corroded: () => 'corroded',
  'near-end-of-battery-life': () => 'near the end of a battery’s usual 5 to 10 years',
  'near-usual-battery-life': () => 'near the usual life of its battery',
  'off-by-another-amount': ({ offset, median, unit }) =>
    `${offset} ${unit} from the gauge; over all wheels the middle difference is ${median} ${unit}`,
  'under-gauge': ({ offset, unit }) => `${offset} ${unit} under the gauge`,
  'no-air-at-that-temperature': () => 'no air in a tire is that hot or cold',
  'did-not-follow': () => 'the value stayed while the tire changed',
  'nothing-in-inflated-tire': () => 'nothing, in an inflated tire',

  'not-stored': () => 'not among the IDs that the vehicle holds',
  'stored-unheard': () => 'stored, and heard on no wheel',
  'stored-here-heard-elsewhere': () => 'stored here, heard at another wheel',
  'unknown-here-known-elsewhere': () => "unknown to this vehicle, and on another vehicle's record here",
  'unknown-other-frequency-used-wheel': () =>
    'unknown to this vehicle, on another frequency, in a used wheel',
  'on-another-vehicle': () => "on another vehicle's record in this shop",
  'same-in-hexadecimal': ({ id }) => `in hexadecimal ${id}, as the wheel sends`,

  'code-stored': ({ class: codeClass }) => `a ${codeClass} code is stored`,
  'code-stored-as': ({ class: codeClass, text }) => `a ${codeClass} code: ${text}`,
  'answers-despite-code': () => 'answers now, although a no-signal code is stored',
  'no-ids-stored': () => 'no IDs stored',
  'never-stops-flashing': () => 'it never stops flashing',
  'dark-at-key-on': () => 'dark at key-on, as received',
  'changed-just-now': () => 'changed just now',
  'not-driven-long-enough': () => 'not driven 20 minutes since, as far as is known',
  'solid-with-clear-tires': () => 'solid, although every tire clears its warning point',
  'fault-with-matching-sensors': () => 'a fault, although every sensor answers and matches',
  'corner-struck': () => 'this corner was struck',

  'our-recent-work': () => 'we worked on this wheel within 90 days',
  'our-part-in-warranty': () => 'our part, in warranty',
  'by-date-code': () => 'by its date code',
  'in-32nds': () => 'in 32nds of an inch',
  'light-off-all-checked': () => 'not on, and every check is good',

  'happens-there-only': () => 'it happens there only',
  'added-to-vehicle': () => 'added to the vehicle',
  fitted: () => 'fitted',
  'at-the-time': () => 'at the time',

  'as-written': ({ words }) => words,
}

type Values = Parameters<ReasonsWording['within-hold']>[0]
type Cold = Parameters<ReasonsWording['cold-under-label']>[0]

const atWarningPoint = ({ point, unit }: Pick<Values, 'point' | 'unit'>): string =>
  `at or under the ${point} ${unit} at which the light comes on`

const withinHold = ({ hold, point, unit }: Values): string =>
  `at most ${hold} ${unit} over the ${point} ${unit} at which the light comes on: a light that is on stays on`

const coldWords = ({ cold, label, unit }: Cold): string =>
  `cold it has ${cold} ${unit} and should have ${label} ${unit}`

const fastenerDamage: Readonly<Record<FastenerDamage, string>> = {
  'stud-missing': 'a stud is missing',
  'stud-broken': 'a stud is broken',
  'fastener-missing': 'a nut or bolt is missing',
  'thread-stripped': 'a thread is stripped',
  'seat-wrong': 'a fastener does not fit its seat',
}

const tireDamage: Readonly<Record<UnsafeDamage, string>> = {
  bulge: 'a bulge',
  'cord-showing': 'cord showing',
  'cut-to-cord': 'a cut down to the cord',
}
