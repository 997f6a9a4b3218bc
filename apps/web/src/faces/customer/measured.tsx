import type { CustomerOrder } from '@bayledger/contract/customer-face'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { CustomerWords } from '@bayledger/wording/customer-words'
import { PlanDrawing } from '../../features/plan/plan-drawing.tsx'
import type { PlanMark, PlanWheel } from '../../features/plan/plan-wheel.ts'
import { pressureText } from '../../lib/format.ts'
import { isAboutTheSensor } from './about-the-sensor.ts'
import { useWords } from './spoken.tsx'

type MeasuredProps = { order: CustomerOrder; isAsking: boolean }

/**
 * What was measured: the figures that prove each finding, each tire's pressure as received against the door label, and at
 * its wheel what proves that a sensor does not work. One touch away while there is something to answer.
 */
export function Measured({ order, isAsking }: MeasuredProps) {
  const { customerPage: says, wheels: wheelsWording } = useWords()
  const wheels = measuredWheels(order, useWords())
  const figures = order.findings.flatMap((finding) => finding.figures)
  if (figures.length === 0 && Object.keys(wheels).length === 0) return null
  return (
    <details className="customer-more" open={!isAsking}>
      <summary>{says.measured.title}</summary>
      <ul className="customer-figures">
        {figures.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {Object.keys(wheels).length === 0 ? null : (
        <figure className="customer-measured">
          <PlanDrawing wheels={wheels} />
          <figcaption className="quiet">{says.measured.caption}</figcaption>
        </figure>
      )}
      {lacksOf(order).map(({ wheel, words }) => (
        <p key={wheel}>
          <strong>{says.measured.at(wheelsWording.names[wheel])}</strong> {words}
        </p>
      ))}
    </details>
  )
}

const measuredWheels = (
  order: CustomerOrder,
  { customerPage: says, wheels: wheelsWording }: CustomerWords,
): Readonly<Partial<Record<WheelPosition, PlanWheel>>> =>
  Object.fromEntries(
    readingOrder.flatMap((position): [string, PlanWheel][] => {
      const gauge = order.gauges[position] ?? null
      const silent = order.silent[position] ?? null
      if (gauge === null && silent === null) return []
      const mark = markAt(says, order.findings, position)
      return [
        [
          position,
          {
            lines: [
              ...(gauge === null ? [] : [{ text: pressureText(gauge), unit: gauge.unit, isFigure: true }]),
              // There is room for one line: beside a sensor that does not answer the proof, else what the tire should have.
              ...(silent !== null
                ? [{ text: says.measured.silent(silent) }]
                : gauge === null
                  ? []
                  : [{ text: says.measured.label(gauge.labelPsi) }]),
            ],
            state: 'none',
            ...(mark === null ? {} : { mark }),
            label: says.measured.wheel({
              name: wheelsWording.names[position],
              mark: mark?.word ?? null,
              pressure: gauge && `${pressureText(gauge)} ${gauge.unit}`,
              labelPsi: gauge?.labelPsi ?? null,
              silent,
            }),
          },
        ],
      ]
    }),
  )

const markShapes: Readonly<Record<CustomerOrder['findings'][number]['severity'], PlanMark['shape']>> = {
  'do-not-drive': 'bar',
  'do-not-open-the-tire': 'bar',
  'repair-before-release': 'bar',
  cause: 'thick',
  unexplained: 'thick',
}

/** A wheel that a stop or the cause names, by its shape and word. */
const markAt = (
  { found: says }: CustomerWords['customerPage'],
  findings: CustomerOrder['findings'],
  position: WheelPosition,
): PlanMark | null => {
  const found = findings.find(({ wheels }) => wheels.includes(position))
  if (found === undefined) return null
  const { severity, code } = found
  const isSensor = severity === 'cause' && isAboutTheSensor(code)
  return { shape: markShapes[severity], word: isSensor ? says.sensorMark : says.marks[severity] }
}

/** Not at a wheel of which only the sensor is wrong: there a pressure would read as what is wrong. */
const lacksOf = ({ lacks, findings }: CustomerOrder): CustomerOrder['lacks'] =>
  lacks.filter(({ wheel }) =>
    findings.some(({ code, wheels }) => wheels.includes(wheel) && !isAboutTheSensor(code)),
  )
