import { TroubleKind } from '@bayledger/ledger/subjects/trouble/kinds'
import { readingOrder, WheelPosition } from '@bayledger/reckoning/wheels'
import { troubles } from '@bayledger/wording/en/troubles'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { Button } from '../../../ui/button.tsx'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { useDraft } from '../form/draft-store.ts'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { CameraButton } from '../photos/camera-button.tsx'
import { forgetPhotos, keepPhoto } from '../photos/keep-photo.ts'
import { photoWords } from '../photos/photo-words.ts'
import type { TakenPhoto } from '../photos/take-photo.ts'
import { useRecord } from '../record/use-record.ts'

type NotRightFormProps = {
  orderId: string
  /** The step of the plan at which it was found; `null` before there is a plan. */
  stepKey: string | null
  /** The wheel of that step; `null` where it has none, and the technician says which. */
  wheel: WheelPosition | null
  onBack: () => void
  onDone: () => void
}

/** What is wrong, at which wheel, and words where the list does not say enough. It parks the wheel. */
export function NotRightForm({ orderId, stepKey, wheel, onBack, onDone }: NotRightFormProps) {
  const { recordAll, busy, problem } = useRecord(orderId)
  const draftKey = `${orderId}/not-right/${stepKey ?? wheel ?? 'vehicle'}`
  const photos = useDraft<readonly TakenPhoto['facts'][]>(`${draftKey}/photos`, [])
  const whereOf = (values: RowValues) =>
    wheel ?? readingOrder.find((position) => position === values.wheel) ?? null
  return (
    <RowForm
      draftKey={draftKey}
      title={wheel === null ? 'What is not right?' : `What is not right at the ${wheelNames[wheel]} wheel?`}
      takesFocus
      beside={
        <Button
          onClick={() => {
            forgetPhotos(photos.draft)
            photos.discard()
            onBack()
          }}
        >
          Nothing: back
        </Button>
      }
      how="The wheel is parked until the desk has decided with the customer. The vehicle stays off the road."
      rows={() => [...(wheel === null ? [wheelRow] : []), whatRow, wordsRow]}
      recordWord={(values) => parkWord(whereOf(values))}
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const what = TroubleKind.options.find((one) => one === values.what)
        if (what === undefined) return false
        const said = (values.words ?? '').trim()
        const words = said === '' ? null : personal(said)
        const draft = draftEntry(orderId, 'trouble.found', {
          stepKey,
          wheel: whereOf(values),
          what,
          words: words?.digest ?? null,
        })
        const ofIt = photos.draft.map((facts) =>
          draftEntry(
            orderId,
            'photo.attached',
            { wheel: whereOf(values), stepKey, subject: 'not-right', ...facts },
            [draft.id],
          ),
        )
        const isTaken = await recordAll([draft, ...ofIt], `${whereOf(values) ?? 'vehicle'} not right`, {
          sides: words === null ? [] : [words],
          form,
        })
        if (isTaken) {
          photos.discard()
          onDone()
        }
        return isTaken
      }}
    >
      <div className="not-right-photos">
        <CameraButton
          onTaken={async (photo) => {
            await keepPhoto(orderId, photo)
            photos.change([...photos.draft, photo.facts])
          }}
        >
          {photoWords.take}
        </CameraButton>
        {photos.draft.length === 0 ? null : (
          <>
            <span role="status">{photoWords.withForm(photos.draft.length)}</span>
            <Button
              onClick={() => {
                forgetPhotos(photos.draft.slice(-1))
                photos.change(photos.draft.slice(0, -1))
              }}
            >
              {photoWords.remove}
            </Button>
          </>
        )}
      </div>
    </RowForm>
  )
}

const parkWord = (wheel: WheelPosition | null): string =>
  wheel === null ? 'Stop the work' : `Park the ${wheelNames[wheel]} wheel`

const wheelRow: Row = {
  kind: 'choice',
  key: 'wheel',
  label: 'At which wheel',
  options: WheelPosition.options.map((position) => ({ value: position, label: wheelNames[position] })),
}

const whatRow: Row = {
  kind: 'choice',
  key: 'what',
  label: 'What is wrong',
  options: TroubleKind.options.map((what) => ({ value: what, label: troubles.names[what] })),
}

const wordsRow: Row = { kind: 'text', key: 'words', label: 'In words', optional: 'no more to say' }
