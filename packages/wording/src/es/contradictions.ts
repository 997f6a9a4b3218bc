import type { ContradictionsWording } from '../contradictions.ts'
import { spanishWheel } from './wheels.ts'

export const contradictions: ContradictionsWording = {
  'light-against-evidence': () => ({
    says: 'Los sensores pasan todas las pruebas que podemos hacer con el vehículo parado; el vehículo dice que no puede oír uno.',
    do: 'Leer los códigos, desconectar los aparatos agregados, manejar 20 minutos y repetir; no vender ninguna pieza por suposición.',
  }),
  'light-off-tire-low': () => ({
    says: 'La advertencia debió encenderse, o no ha tenido tiempo.',
    do: 'Observar la prueba de la luz al encender el auto, manejar 20 minutos y mirar otra vez.',
  }),
  'light-on-tires-right': () => ({
    says: 'El vehículo avisa de algo que no podemos ver.',
    do: 'Revisar la llanta de repuesto, la diferencia entre sensores y medidor, y los lugares guardados.',
  }),
  'gauge-against-sensors': () => ({
    says: 'Nuestro medidor es el que no coincide.',
    do: 'Tomar todas las lecturas otra vez con el medidor patrón.',
  }),
  'fault-not-flashed': () => ({
    says: 'El vehículo debería parpadear por un sensor que no puede oír, y la luz no parpadea.',
    do: 'Manejar 20 minutos, apagar y encender el auto, y observar la luz dos minutos: un parpadeo que nadie observó parece una luz fija.',
  }),
  'lamp-dark-yet-lit': () => ({
    says: 'La luz no se encendió al encender el auto, pero alguien la vio encendida en otro momento.',
    do: 'Observar otra vez la prueba de la luz, luego la luz; conservar las dos anotaciones.',
  }),
  'positions-exchanged': () => ({
    says: 'El vehículo y el medidor señalan llantas distintas: el vehículo tiene guardadas las ruedas en lugares cambiados.',
    do: 'Reparar la llanta que muestra el medidor, luego enseñarle al vehículo los lugares.',
  }),
  'stray-sensors-heard': () => ({
    says: 'Se oyeron más sensores que ruedas tiene este vehículo: hay otras ruedas cerca.',
    do: 'Alejar 5 pies el vehículo o las otras ruedas y leer cada rueda otra vez.',
  }),
  'light-reported-otherwise': () => ({
    says: 'El cliente vio que la luz se comporta de otra manera que como la vimos nosotros. Se conservan las dos.',
    do: 'Observarla otra vez después de manejar 20 minutos.',
  }),
  'sheet-frequency-doubtful': () => ({
    says: 'Los cuatro sensores que el vehículo conoce transmiten en una misma frecuencia que no es la de la hoja: la hoja está mal, no los cuatro sensores.',
    do: 'Verificar la frecuencia de este tipo de vehículo y corregir la hoja; no cambiar ningún sensor.',
  }),
  'gauge-unsupported': ({ wheel, value, sensor, unit }) => ({
    says: `Hay que medir otra vez la rueda ${spanishWheel(wheel)}: se escribió ${value} ${unit}, su sensor dice ${sensor}, y ningún sensor del vehículo está cerca de eso.`,
    do: 'Medirla otra vez antes que nada. Hasta entonces la lectura cuenta, con su alto.',
  }),
  'hot-corner-tires-cold': ({ wheel, degrees, temperatureUnit }) => ({
    says: `Se dijo que las llantas estaban frías, y la rueda ${spanishWheel(wheel)} está ${degrees} °${temperatureUnit} más caliente que las demás.`,
    do: 'No tocar la rueda ni el freno: medir con infrarrojo o dejar que se enfríen. Revisar primero el freno.',
  }),
  'sensor-older-than-reported': () => ({
    says: 'Alguien dijo que se cambió un sensor, pero el que está en la rueda es mucho más viejo.',
    do: 'Fotografiar su fecha de fabricación: la pieza de la factura no es la pieza de la rueda.',
  }),
}
