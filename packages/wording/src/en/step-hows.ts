import { workLimits } from '@bayledger/reckoning/job-plan/work-limits'
import type { Torque } from '@bayledger/reckoning/quantity'
import { relearnTemplate } from '@bayledger/reckoning/relearn/relearn-template'
import type { StepFigure } from '@bayledger/reckoning/step'
import {
  type StemPart,
  stemTorqueDoubts,
  torqueDoubts,
  torqueWords,
} from '@bayledger/reckoning/torque/plausible-torque'
import { relearnWords } from '../relearn.ts'
import type { StepsWording } from '../steps.ts'
import { relearn } from './relearn.ts'
import { doubts, patterns } from './rotation.ts'
import { stemParts, torqueDoubtWords } from './torque-doubts.ts'
import { wheels } from './wheels.ts'

const { largestHole, leastTread32nds, rubberStemPsi, programmingDistanceFeet, closingReadPsi } = workLimits
const { purgeTimes, restraintStopPsi, seatingPsi, leakCheckMinutes } = workLimits

const readSource =
  "A second person reads the figure in the maker's own source and names the page. The maker's figure governs."
const fastenersMissing =
  "Nobody has entered this vehicle's wheel torque and thread. Read them in the vehicle maker's own source and enter them first; no table and no similar vehicle can replace them."
const nutOff =
  "Nut off without penetrant; if seized or corroded: photo, and ask the desk before you use force. Hole clean, free of burrs, of the size on the sensor maker's sheet."
const rubberStem =
  'Cut the old rubber stem, pull it outward, never use it again. Lubricate the new one and pull it straight with a stem puller until the shoulder seats; a pull to the side tears it.'

const fitting = {
  'clamp-in': `${nutOff} New grommet, washer, nut, core and cap. Stem square, body to the rim as its sheet says, nothing on threads or grommet. Nut by hand, then in one pull, holding the body still. Photo.`,
  'snap-in': `${rubberStem} New screw, at the figure, before the stem is pulled in. The sensor lies in the drop center, not above the flange. Photo.`,
} as const
const renewal = {
  'clamp-in': `${nutOff} New grommet, washer, nut, core and cap: each works once. Nut by hand, then in one pull, holding the body still. Photo.`,
  'snap-in': `Screw out, sensor off the stem. ${rubberStem} New screw, at the figure. The sensor lies in the drop center. Photo.`,
  plain: `Only where there was no sensor, or it stayed silent when read twice before the work: what works is not silenced. ${rubberStem} Photo.`,
} as const
const fastenedBy = { 'clamp-in': 'stem-nut', 'snap-in': 'stem-screw' } as const

/** How each step is done. General words: common practice, no source; the makers' figures and instructions govern. */
export const stepHows: StepsWording['how'] = {
  'confirm-placard': readSource,
  'confirm-frequency': readSource,
  'confirm-stud-torque': ({ values }) =>
    values.torque === 'missing'
      ? fastenersMissing
      : joined(
          readSource,
          `The sheet has ${torqueWords(values.torque)} for ${values.thread}.`,
          ...torqueDoubts(values.thread, values.torque).map((doubt) =>
            torqueDoubtWords(doubt, values.torque, values.thread),
          ),
        ),
  'lift-vehicle': ({ values: { liftNotes } }) =>
    joined(
      liftNotes === ''
        ? "The sheet has no lifting points. Find the vehicle maker's own, and have them entered on the sheet."
        : liftNotes,
      'Before it goes up: every tire marked with its place, the key of the locking fasteners found, doors shut, nothing loose.',
    ),
  'lower-to-touching':
    'Until the tires just hold and the wheels cannot turn. The torque rounds follow, wheel by wheel.',
  'lower-fully': 'Onto its own weight; arms or pads clear before it moves.',
  'find-leak':
    'Spray finds a leak with the air that is in the tire; add none yet. Stem and core, tread, beads, rim, sidewall, in that order. Record the place. Filling alone is not a repair.',
  'find-leak-after-look': `From inside first: tread, bead seats, rim, stem. If it does not show, seat the tire in the way of its next steps, at most ${restraintStopPsi} psi, spray or dunk, and open it again. Record the place.`,
  'match-tire': ({ values: { tire } }) =>
    `The sheet has ${tire ? `${tire.size}, ${tire.loadClass}` : 'no tire for this place: read the label'}. Load index and speed symbol at least the label's. Record the whole identification number.`,
  'match-sensor': ({ values: { frequencyMHz, valve } }) =>
    `Frequency: the sheet's, ${frequencyMHz === null ? 'but it has none' : `${frequencyMHz} MHz`}. Stem: the one that was agreed, ${valve}. "Something close" does not fit.`,
  'program-sensor': `Before it is mounted, at least ${programmingDistanceFeet} feet from every other sensor. Then read it back in your hand.`,
  'read-other-wheel': ({ values }) =>
    joined(
      'Tire size, date code, tread, damage, pressure.',
      values.hearsSensors
        ? "Trigger its sensor, away from the vehicle: ID, and the sheet's frequency. No sensor, or silent twice: stop. Move the sensors over, sell sensors, or decline."
        : '',
    ),
  'check-tires-for-rotation': ({ values }) =>
    values.doubts.length > 0
      ? `Not ${patterns[values.pattern]}: ${joined(...values.doubts.map((doubt) => doubts[doubt]))} Move nothing; tell the desk.`
      : `Planned: ${patterns[values.pattern]}. Look at every sidewall: an arrow means that the tire rolls one way only; read size and load index. Each tire must be right for its new place. The vehicle maker's pattern governs.`,
  'take-spare-out': 'Mark the tire SP. Full-size, of the same kind as the others, no damage, its age read.',
  'take-sound-spare-out':
    'No damage, no bulge, tread left, seats right for these fasteners. Mark it SP. Record the limits that its sidewall prints. Damaged or worn: press Not right; the vehicle is towed.',
  'stow-spare': ({ comesFrom }) =>
    `The wheel marked ${comesFrom ?? 'for it'} becomes the spare. Hold it as the vehicle maker says, so that it cannot come loose.`,
  'put-spare-back':
    'Held as the vehicle maker says, so that it cannot come loose, its valve where it can be reached. Read its label again for the pressure.',
  'take-wheel-off': ({ wheel }) =>
    `Mark the tire ${wheel ?? ''}. Note a seized or over-tight fastener or a damaged stud.`,
  'repair-fastener':
    "Every damaged stud, nut or bolt of this hub, by the vehicle maker's part and instructions. Threads clean and dry, seats of the right shape. Record which. Photo.",
  'purge-sealant': `Carry the wheel outdoors. Let all air off, fill it with air, ${purgeTimes} times; the core stays in until the last time. Catch what comes out. Then bring it in and open it.`,
  'purge-in-restraint': `Carry the wheel outdoors, put it in the restraining device, use a remote valve. Let all air off, fill it to no more than ${restraintStopPsi} psi, ${purgeTimes} times; look and listen each time. Then the core out; only then is the bead broken.`,
  'open-tire':
    "Cap and core out first, your face clear of the stem, until no air comes. Keep the shovel and the tool head away from the sensor; the machine maker's positions govern.",
  'look-inside':
    'Look for wear of the liner, dust from running low, earlier repairs, foreign bodies; photo. Now is the cheapest time to renew an old sensor: if it is old, tell the desk before the tire goes back on.',
  'judge-leak': `A hole: only in the tread between the outer grooves, at most ${largestHole.inches} in (${largestHole.millimeters} mm), over no other repair, more than ${leastTread32nds}/32 in of tread left, never run low. A plug from outside is no repair. Bead or rim: clean and seal it now. Photo. The desk prices the repair of a hole from what the look inside recorded; until the customer answers, the wheel waits.`,
  'repair-leak':
    'By plug and patch together, from inside, one unit for each hole. Record the place, angle and unit of each.',
  'fit-sensor': ({ values: { valve, highLabelPsi }, figure }) =>
    joined(fitting[valve], ...figureDoubts(fastenedBy[valve], figure), labelDoubt(highLabelPsi)),
  'renew-stem': ({ values: { valve, highLabelPsi }, figure }) =>
    joined(
      renewal[valve],
      ...(valve === 'plain' ? [] : figureDoubts(fastenedBy[valve], figure)),
      labelDoubt(highLabelPsi),
    ),
  'read-in-rim':
    "Its ID, the sheet's frequency, no pressure, and a temperature like the air around it. Silent at the second try: it is not right; record it as silent, and the wheel waits for the desk.",
  'seat-tire': ({ values }) =>
    joined(
      'Lubricate. Arrow and outer side as the tire is marked. Keep the last part to go over the rim away from the sensor.',
      keptStem(values),
    ),
  'seat-in-restraint': ({ values }) =>
    joined(
      `Lubricate, mount, then into the restraining device with a remote valve. Fill to ${restraintStopPsi} psi and stop: look and listen. Nothing snaps, bulges or ripples: on, at most ${seatingPsi} psi, until the beads are seated. Record what you saw and heard.`,
      keptStem(values),
    ),
  'torque-core': ({ figure }) =>
    joined(
      'With a core driver; nickel-plated in an aluminum stem. Record the torque.',
      ...coreDoubts(figure),
    ),
  'put-core-back': ({ figure }) =>
    joined(
      'The stem parts were not authorized, so the old core goes back: clean, its seal whole, else stop and tell the desk. With a core driver. Record the torque.',
      ...coreDoubts(figure),
    ),
  'inflate-tire': ({ figure }) =>
    joined(
      "To the pressure of the label before it is checked for leaks and balanced: what leaks at full pressure may hold at half. The day's target is set later.",
      labelMissing(figure),
    ),
  'inflate-in-restraint': ({ figure }) =>
    joined(
      `Still in the restraining device, by the remote valve. Stop at ${restraintStopPsi} psi, look and listen; then on to the label's pressure. Record the pressure, and what you saw and heard.`,
      labelMissing(figure),
    ),
  'check-leaks': `Soapy water on stem, core, beads and any repair, ${leakCheckMinutes} minutes at the working pressure. Blow the core dry afterwards, then the cap with its seal on; never one of plain metal on an aluminum stem.`,
  'balance-wheel':
    'Record what imbalance is left, inner and outer, as the machine shows it; or that it shows none.',
  'put-wheel-on': ({ wheel, comesFrom, values }) =>
    joined(
      values.which === 'other-set'
        ? `The other set's wheel for ${wheel} goes on; fasteners and seats must be right for it.`
        : '',
      values.which === 'from-another-place' && comesFrom
        ? `The wheel marked ${comesFrom}${comesFrom === 'SP' ? ', the spare,' : `, from the ${wheels.names[comesFrom]},`} goes on here.`
        : '',
      values.fastener === 'missing'
        ? fastenersMissing
        : `Hub face and seats clean, the right seat, dry threads. At least ${values.handTurns} turns by hand each; any resistance: stop. Snug in the order ${inOrder(values.order)} with the wheel still off the ground.`,
    ),
  'torque-studs': ({ round, values }) => {
    if (values.fastener === 'missing') return fastenersMissing
    const { fastener, order } = values
    if (round === 'half')
      return `At the figure shown, which is about half, in the order ${inOrder(order)}. It draws the wheel flat; it is not tight.`
    return round === 'full'
      ? `Pull smoothly, one click, stop. In the order ${inOrder(order)}. The locking ${fastener} gets the same figure with its key.`
      : `Every ${fastener} clicks without turning. One that turns sends the wheel back to the round before.`
  },
  'torque-after-miles': ({ values }) =>
    values.fastener === 'missing'
      ? fastenersMissing
      : `In the order ${inOrder(values.order)}. Record which ${values.fastener}s moved; if one did, go round again until none does, and tell the desk.`,
  'check-torque': ({ values }) =>
    values.fastener === 'missing'
      ? fastenersMissing
      : `Somebody else, with a wrench in calibration, goes round at the figure in the order ${inOrder(values.order)}.`,
  'set-pressure':
    "To the target shown, which carries the label's cold figure to this tire's temperature. Then gauge it.",
  relearn: ({ procedure, values }) =>
    procedure === null ? relearn.notOnSheet : relearnWords(relearn, relearnTemplate(procedure, values.order)),
  'learning-drive': ({ procedure }) =>
    joined(
      procedure === null ? relearn.notOnSheet : relearnWords(relearn, relearnTemplate(procedure, [])),
      'The same drive proves the light: between 30 and 60 mph, with no long stops. Record minutes and odometer; key off, key on, watch the lamp.',
    ),
  'confirm-learned':
    'Parked again: the display shows every wheel, or the stored IDs are those of the wheels. If not, record that it did not accept.',
  'read-sensor': `As left: it answers, and its pressure agrees with the gauge within ${closingReadPsi} psi.`,
  'compare-stored': ({ values: { moved } }) =>
    joined(
      'Every stored ID is at its own wheel.',
      moved.length === 0
        ? ''
        : `After this rotation: ${moved.map(({ place, from }) => `${place} the ID that was read at ${from}`).join(', ')}.`,
      'Record the codes as they are now.',
    ),
  'proof-drive':
    'Between 30 and 60 mph, with no long stops. Record minutes and odometer; key off, key on, watch the lamp.',
  'see-light': 'Key off, key on: the warning light comes on for the lamp check and goes out.',
  'last-look':
    'Before it moves: caps on, weights on, hand tools counted, locking key back in its place, spare stowed, nothing under the vehicle, on it or leaning against it.',
}

const keptStem = ({ keepsStem }: { readonly keepsStem: boolean }): string =>
  keepsStem ? "The stem parts work once and are not authorized: without the customer's written No, stop." : ''

const stemDoubts = (part: StemPart, torque: Torque): readonly string[] =>
  stemTorqueDoubts(part, torque).map((doubt) => torqueDoubtWords(doubt, torque, `a ${stemParts[part]}`))

const coreDoubts = (figure: StepFigure | null): readonly string[] =>
  figure?.kind === 'torque'
    ? stemDoubts('valve-core', figure.torque)
    : ["The sheet has no figure: the valve maker's governs."]

const labelMissing = (figure: StepFigure | null): string =>
  figure === null ? "The sheet has no pressure for this place: read the tire's own label first." : ''

const inOrder = (studs: readonly number[]): string => studs.join(' · ')

const figureDoubts = (part: StemPart, figure: StepFigure | null): readonly string[] =>
  figure?.kind === 'torque'
    ? stemDoubts(part, figure.torque)
    : [`The sheet has no torque for the ${stemParts[part]}: the sensor maker's governs, find it first.`]

const labelDoubt = (labelPsi: number | null): string =>
  labelPsi === null
    ? ''
    : `The label calls for ${labelPsi} psi; rubber stems are commonly good to ${rubberStemPsi} psi cold. The stem maker's limit governs: stop where it is lower.`

const joined = (...sentences: readonly string[]): string =>
  sentences.filter((sentence) => sentence !== '').join(' ')
