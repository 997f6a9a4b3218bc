import { relearnOf } from '@bayledger/reckoning/sheet'
import { inReadingOrder, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { clockTime } from '../../../lib/format.ts'
import { useWatch } from '../clock/use-watch.ts'
import type { Row } from '../form/rows.ts'
import { StepTimer } from '../form/step-timer.tsx'
import { useBayClock } from '../session/signed-in.ts'
import { FigureButton, FigureStandingLine, sheetFigureOf } from './figure-standing.tsx'
import { StepFigureView } from './step-figure.tsx'
import { howWords } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

const methods = [
  { value: 'stationary', label: 'Standing', detail: 'wheel by wheel' },
  { value: 'connector', label: 'By the connector', detail: 'IDs sent to the vehicle' },
  { value: 'automatic', label: 'By driving' },
  { value: 'reset', label: 'By reset', detail: 'no sensors in the wheels' },
] as const

const results: Row = {
  kind: 'choice',
  key: 'result',
  label: 'The vehicle',
  options: [
    { value: 'learned', label: 'Has learned' },
    { value: 'learns-while-driven', label: 'Learns while driven' },
    { value: 'refused', label: 'Did not accept' },
  ],
}

/** The vehicle learns its sensors; each wheel is ticked as it confirms, in order. */
export function RelearnForm(props: WorkFormProps) {
  const { state, step, onFigure } = props
  const sheet = state.sheet?.sheet
  const relearn = relearnOf(sheet)
  const limit = relearn?.timeLimitMinutes ?? relearn?.parkMinutes ?? null
  const watchKey = `${state.orderId}/${step.stepKey}/${state.relearn?.written.entryId ?? 'first'}`
  const { stop } = useWatch(watchKey)
  const clock = useBayClock()
  const refused = state.relearn?.result === 'refused' ? state.relearn.written : null
  const wheels: readonly WheelPosition[] = sheet?.spareMonitored ? [...roadPositions, 'SP'] : roadPositions
  const rows = (method: string | null | undefined): readonly Row[] => [
    { kind: 'choice', key: 'method', label: 'Method', options: methods },
    ...(method === 'stationary' || method === 'connector'
      ? [
          {
            kind: 'several',
            key: 'confirmed',
            label: 'Confirmed',
            noneWord: 'none of them',
            options: wheels.map((wheel) => ({ value: wheel, label: wheel })),
          } as const,
        ]
      : []),
    results,
  ]
  return (
    <WorkRows
      {...props}
      kind="relearn.done"
      beside={
        <>
          <FigureButton state={state} figure="relearn" onFigure={onFigure} />
          <StepTimer
            watchKey={watchKey}
            label={limit === null ? 'Time it' : 'Time to learn'}
            target={limit === null ? null : limit * 60}
          />
        </>
      }
      how={
        refused === null
          ? howWords(step)
          : `It did not accept at ${clockTime(refused.writtenAt, clock)}, as recorded. Begin again. ${howWords(step)}`
      }
      figure={() => (
        <>
          <StepFigureView state={state} step={step} />
          {sheetFigureOf(step) === 'relearn' ? null : <FigureStandingLine state={state} figure="relearn" />}
        </>
      )}
      rows={(values) => rows(values.method)}
      blank={relearn ? { method: relearn.method } : {}}
      recordsItself
      recordWord="Record the relearn"
      whyNot={({ method, result, confirmed }) =>
        (method === 'stationary' || method === 'connector') &&
        result === 'learned' &&
        wheels.some((wheel) => !(confirmed ?? '').split(',').includes(wheel))
          ? 'It has learned only when every wheel has confirmed. Tick the rest, or record that it did not accept.'
          : undefined
      }
      payload={({ method, result, confirmed }) => ({
        stepKey: step.stepKey,
        method: methods.find(({ value }) => value === method)?.value ?? 'stationary',
        confirmed: inReadingOrder(wheels.filter((wheel) => (confirmed ?? '').split(',').includes(wheel))),
        result: result === 'learned' || result === 'refused' ? result : 'learns-while-driven',
        timed: stop(),
      })}
    />
  )
}
