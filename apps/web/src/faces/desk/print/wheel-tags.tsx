import type { OrderPart } from '../sheet/order-part.ts'
import { tagsOf } from './tag-facts.ts'

/** One tag a wheel, four on a page. */
export function WheelTags({ order }: OrderPart) {
  return (
    <div className="tags">
      {tagsOf(order.state).map(({ from, to, torque, sensorId, pressurePsi }) => (
        <section key={from} className="tag" aria-label={`Tag ${from}`}>
          <p className="tag-number">{order.number}</p>
          <p>
            {order.vehicle.plate ?? 'no plate'} · {order.vehicle.description}
          </p>
          <p className="tag-place">{from === to ? from : `${from} → ${to}`}</p>
          <p>
            Wheel torque:{' '}
            {torque === null ? (
              to === 'SP' ? (
                'none, it is stowed'
              ) : (
                'not on the sheet: ask'
              )
            ) : (
              <>
                <span className="tag-figure">{torque.figure}</span>
                <br />
                {torque.source}
              </>
            )}
          </p>
          <p>
            Sensor ID: <span className="tag-figure">{sensorId ?? 'not known'}</span>
          </p>
          <p>
            Door label at {to}:{' '}
            <span className="tag-figure">
              {pressurePsi === null ? 'not known' : `${pressurePsi} psi, cold`}
            </span>
          </p>
          <p>
            The vehicle maker’s figures govern. The tablet has the pressure for the temperature of the day.
          </p>
        </section>
      ))}
    </div>
  )
}
