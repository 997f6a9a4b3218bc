import type { OrderState } from '@bayledger/ledger/state'
import type { PhotoSubject } from '@bayledger/ledger/subjects/photos/kinds'
import type { Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { useEffect } from 'react'
import type { ArrivalTask } from '../../../features/arrival/arrival-tasks.ts'
import { useRecord } from '../record/use-record.ts'
import { CameraButton } from './camera-button.tsx'
import { keepPhoto } from './keep-photo.ts'
import { loadPictures } from './load-pictures.ts'
import { photoWords } from './photo-words.ts'
import type { TakenPhoto } from './take-photo.ts'

type StepPhotoProps = {
  state: OrderState
  step: Step | null
  task: ArrivalTask | null
  wheel: WheelPosition | null
}

/** The camera of the current step, always at the same place; it stands out where the step asks for a photo. */
export function StepPhoto({ state, step, task, wheel }: StepPhotoProps) {
  const { record } = useRecord(state.orderId)
  useEffect(() => void loadPictures().catch(() => undefined), [])
  const stepKey = step?.stepKey ?? null
  const subject = subjectOf(step, task)
  const count = state.photos.filter(
    (photo) =>
      photo.wheel === wheel && photo.stepKey === stepKey && (stepKey !== null || photo.subject === subject),
  ).length
  const isAsked = count === 0 && (step === null ? asksOnArrival(task) : step.needs.includes('photo'))
  const take = async (photo: TakenPhoto) => {
    await keepPhoto(state.orderId, photo)
    await record('photo.attached', { wheel, stepKey, subject, ...photo.facts }, photoWords.says, null)
  }
  return (
    <CameraButton isAsked={isAsked} onTaken={take}>
      {isAsked ? photoWords.asked : count === 0 ? photoWords.take : photoWords.another(count)}
    </CameraButton>
  )
}

/** What is photographed, by what is being looked at. */
const subjectOf = (step: Step | null, task: ArrivalTask | null): PhotoSubject => {
  if (step?.closedBy === 'sensor.fitted') return 'sensor'
  if (step?.closedBy === 'tire.inspected') return 'inside'
  switch (task?.what) {
    case 'door-label':
      return 'placard'
    case 'warning-light':
      return 'light'
    case 'sensor':
      return 'sensor'
    case 'gauge':
    case 'tire':
      return 'arrival'
    default:
      return 'other'
  }
}

/** As a vehicle comes, its tires, its light and its door label are photographed. */
const asksOnArrival = (task: ArrivalTask | null): boolean =>
  task?.what === 'tire' || task?.what === 'warning-light' || task?.what === 'door-label'
