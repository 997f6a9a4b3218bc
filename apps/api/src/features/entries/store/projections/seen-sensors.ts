import { listedId } from '@bayledger/reckoning/sensor/sensor-id'
import { projection } from './projection.ts'

/** Which sensor was read or fitted on which vehicle: how an ID is found again on another one. */
export const seenSensorRows = projection({
  name: 'sensor',
  columns: { entry_id: 'uuid', vehicle_id: 'uuid', wheel: 'text', sensor_id: 'text', how: 'text' },
  rowsOf: ({ entries, head }) =>
    entries.flatMap((entry) => {
      const row = (wheel: string, sensorId: string, how: 'read' | 'fitted') => [
        { entry_id: entry.id, vehicle_id: head.vehicleId, wheel, sensor_id: listedId(sensorId), how },
      ]
      if (entry.kind === 'sensor.fitted') return row(entry.payload.wheel, entry.payload.sensorId, 'fitted')
      if (entry.kind !== 'wheel.checked' || entry.payload.sensor?.answer !== 'answered') return []
      const { id } = entry.payload.sensor
      return id === null ? [] : row(entry.payload.wheel, id, 'read')
    }),
  sql: (from) => `sensor as (
    insert into seen_sensors (shop_id, entry_id, order_id, vehicle_id, wheel, sensor_id, how)
    select shop_id, entry_id, order_id, vehicle_id, wheel, sensor_id, how from ${from}
  )`,
  rebuild: { empties: 'seen_sensors' },
})
