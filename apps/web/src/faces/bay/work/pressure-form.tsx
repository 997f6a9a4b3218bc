import { overTargetPsi, pressureTargetFor } from '@bayledger/ledger/questions/pressure-target'
import { correctedPressure } from '@bayledger/ledger/subjects/arrival/corrected-pressure'
import { judgeAsLeft, usualAfterSetLimits } from '@bayledger/reckoning/pressure/after-set'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { pressureTargets } from '@bayledger/wording/en/pressure-targets'
import { pressureTargetWords } from '@bayledger/wording/pressure-targets'
import { Figure } from '../../../ui/figure.tsx'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { GaugeInHand } from '../instruments/gauge-in-hand.tsx'
import { gaugeUsed, shownAt } from '../instruments/gauge-words.ts'
import { FigureStandingLine } from './figure-standing.tsx'
import { latestSurroundings, pressureRows, surroundingsOf } from './pressure-rows.ts'
import { stepTitle } from './step-words.ts'
import type { WheelFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

/** The day's target for this tire, from the temperatures as they are now, and what it was left at. */
export function PressureForm(props: WheelFormProps) {
  const { state, step, wheel } = props
  const before = latestSurroundings(state)
  if (before === null)
    return (
      <StepScreen
        title={stepTitle(step)}
        how="The temperatures were withdrawn. Set this step aside or have them recorded again before any pressure is set."
      />
    )
  const asNow = (values: RowValues) => surroundingsOf(values, before.surroundings)
  const targetOf = (values: RowValues) => {
    const surroundings = asNow(values)
    return surroundings === null ? null : pressureTargetFor(state, wheel, surroundings)
  }
  return (
    <GaugeInHand>
      {(gauge, change) => (
        <WorkRows
          {...props}
          kind="pressure.set"
          beside={change}
          rows={(values) => pressureRows(values, before)}
          how=""
          figure={(values) => {
            const target = targetOf(values)
            if (target === null)
              return (
                <span className="step-source">First: how warm is the tire? The target follows from it.</span>
              )
            return (
              <>
                {target.ok ? <Figure value={shownAt(target.psi, gauge)} unit="psi" size="step" /> : null}
                <span className="step-source">{pressureTargetWords(pressureTargets, target)}</span>
                {target.ok && gauge.correctionPsi !== 0 ? (
                  <span className="step-source">
                    on {gauge.code}: {target.psi.toFixed(1)} psi in the tire
                  </span>
                ) : null}
                {target.ok ? <FigureStandingLine state={state} figure="placard" /> : null}
              </>
            )
          }}
          recordsItself
          recordWord="Record as left"
          whyNot={(values) => {
            const [target, surroundings] = [targetOf(values), asNow(values)]
            const asLeft = numberFrom(values.asLeft ?? '')
            if (target === null || surroundings === null) return undefined
            if (!target.ok) return pressureTargetWords(pressureTargets, target)
            if (asLeft === null) return undefined
            const overPsi = overTargetPsi(surroundings)
            const maximumPsi = target.sidewallMaximumPsi
            const left = judgeAsLeft(
              inPsi(target.psi),
              inKilopascals(correctedPressure({ value: asLeft, unit: 'psi' }, gaugeUsed(gauge))),
              { ...usualAfterSetLimits, overPsi },
              maximumPsi === null ? null : inPsi(maximumPsi),
            )
            if (left === 'on-target') return undefined
            if (left === 'over-sidewall')
              return `The sidewall allows ${maximumPsi} psi at most. Let air out until it is under that, and gauge again.`
            if (left === 'under' || surroundings.tires === 'cold')
              return `Set ${shownAt(target.psi, gauge)} psi on ${gauge.code}, at most ${overPsi} over, and gauge again.`
            return surroundings.tire === null
              ? `A warm tire is not bled. Over ${shownAt(target.psi + overPsi, gauge)} psi on ${gauge.code}: measure the air in the tire, and the target follows it.`
              : 'A warm tire is not bled. Set this step aside and set the tire when it is cold.'
          }}
          payload={(values) => {
            const [target, surroundings] = [targetOf(values), asNow(values)]
            const asLeft = numberFrom(values.asLeft ?? '')
            if (!target?.ok || surroundings === null || asLeft === null) return null
            const { psi, placardPsi, quality, capped } = target
            return {
              stepKey: step.stepKey,
              wheel,
              target: { psi, placardPsi, quality, capped },
              asLeft: { value: asLeft, unit: 'psi' },
              instrument: gaugeUsed(gauge),
              surroundings,
            }
          }}
        />
      )}
    </GaugeInHand>
  )
}

const inPsi = (value: number) => inKilopascals({ value, unit: 'psi' })
