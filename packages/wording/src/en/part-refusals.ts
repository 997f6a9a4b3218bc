import type { PartAspect, PartRefusal } from '@bayledger/reckoning/sensor/part-match'
import type { PartRefusalsWording } from '../part-refusals.ts'

type Of<Aspect extends PartAspect> = Extract<PartRefusal, { aspect: Aspect }>

const ages: Readonly<Record<Of<'age'>['age'], string>> = {
  'past-shelf-limit':
    'It is past its shelf limit of 24 months, or fewer where the shop says so: its cell runs down on the shelf. Not for fitting.',
  quarantine: 'It was made more than 36 months ago. Not for fitting: put it into quarantine.',
  'not-yet-made': 'The month in which it was made is in the future. Read it again.',
}

const stateWords = (refusal: Of<'state'>): string => {
  switch (refusal.state) {
    case 'programmed':
      return `It is programmed for ${refusal.for}: wipe it before it counts as blank.`
    case 'held-back':
      return refusal.why
    case 'fitted':
      return 'The register shows it fitted to a vehicle: do not fit a used sensor again.'
    case 'returned':
      return 'It was returned: check and wipe it before it counts as blank.'
    case 'quarantine':
      return 'It is in quarantine.'
    case 'scrapped':
      return 'It is scrapped.'
  }
}

export const partRefusals: PartRefusalsWording = (refusal) => {
  switch (refusal.aspect) {
    case 'frequency':
      return `This part is for ${refusal.foundMHz.join(' or ')} MHz; the vehicle listens to ${refusal.wantedMHz} MHz.`
    case 'stem':
      return `This part has a ${refusal.found} stem; the sheet names ${refusal.wanted.join(' or ')}.`
    case 'stem-pressure':
      return `Its stem holds ${refusal.ratedPsi} psi at most; the highest figure of the door label is ${refusal.highestColdPsi} psi, cold, and the day's target is higher still.`
    case 'stem-speed':
      return `Its stem is for ${refusal.ratedKmh} km/h at most; the vehicle reaches ${refusal.fastestKmh} km/h.`
    case 'hole':
      return `It is for a ${refusal.foundMillimeters} mm valve hole; the wheel has ${refusal.wantedMillimeters} mm.`
    case 'protocol':
      return `It does not use ${refusal.wanted}, the protocol that the vehicle understands.`
    case 'age':
      return ages[refusal.age]
    case 'state':
      return stateWords(refusal)
  }
}
