import type { PhotoSubject } from '@bayledger/ledger/subjects/photos/kinds'
import type { StepNamed } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { type StepsWording, stepDoes } from './steps.ts'

/** What a person reads of photos. */
export type PhotosWording = {
  /** What is photographed, where no step of the plan says so. */
  readonly subjects: Readonly<Record<PhotoSubject, string>>
  readonly vehicle: string
  readonly step: (does: string) => string
  /** `where`: a wheel or the vehicle; `what`: a step or a subject; `time`: as the shop's clock shows it. */
  readonly of: (where: string, what: string, time: string) => string
  readonly notReceived: string
  readonly erased: string
  /** Whether it has arrived is being asked. */
  readonly notKnown: string
}

type Photographed = {
  readonly wheel: WheelPosition | null
  readonly stepKey: string | null
  readonly subject: PhotoSubject
}

type Words = {
  readonly photos: PhotosWording
  readonly steps: Pick<StepsWording, 'does'>
  readonly wheels: { readonly names: Readonly<Record<WheelPosition, string>> }
}

/** What a photo shows: "door label", "step Take the wheel off". A step that is no longer planned is left out. */
export const photoSubject = (
  { photos, steps }: Omit<Words, 'wheels'>,
  { stepKey, subject }: Photographed,
  planned: readonly StepNamed[],
): string => {
  const step = planned.find((candidate) => candidate.stepKey === stepKey)
  return step && subject !== 'not-right' ? photos.step(stepDoes(steps, step)) : photos.subjects[subject]
}

/** The text in place of a photo: "Photo of left front, step Fit the sensor, 10:42 AM". */
export const photoText = (
  words: Words,
  photo: Photographed,
  planned: readonly StepNamed[],
  time: string,
): string =>
  words.photos.of(
    photo.wheel === null ? words.photos.vehicle : words.wheels.names[photo.wheel],
    photoSubject(words, photo, planned),
    time,
  )
