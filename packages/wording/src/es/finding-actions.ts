import type { FindingActions } from '../findings.ts'

/** Printed on the report behind "Next": said of the shop, so with an infinitive, and never as an order to the customer. */
export const findingActions: FindingActions = {
  'gauge-missing': 'Medirla antes que nada.',
  'light-not-witnessed':
    'Llave puesta, motor apagado: ¿se enciende? Luego arrancar y observarla dos minutos.',
  'retry-silent-wheel':
    'Girar la rueda un cuarto de vuelta, revisar el vehículo elegido y cómo despierta su sensor, intentar otra vez junto a la válvula.',
  'cross-read-suspected': 'Leer otra vez estas ruedas, a 5 pies de las demás o entre un manejo y otro.',
  'placard-unverified':
    'Fotografiar la etiqueta o la tabla del fabricante. Nunca guiarse por la cifra del costado.',
  'system-unknown':
    'Buscar un botón de reinicio, mirar las válvulas y la hoja de especificaciones; luego seguir.',
  'reading-impossible': 'Leerla y anotarla otra vez.',
  'reading-stale': 'Medir otra vez, o marcar la lectura como distinta de como llegó.',

  'run-low-damage-possible':
    'No llevarla a la presión de trabajo antes de revisarla por dentro. Camioneta liviana o cuerdas desconocidas: sujetarla en jaula, válvula a distancia, parar a 20 psi, mirar y escuchar. No manejar.',
  'sealant-inside':
    'Sin llama, chispa, trabajo en caliente, tapón ni escariador. Vaciar y volver a llenar con aire cuatro veces al aire libre antes de despegar la ceja; luego limpiar y juzgar el sensor.',
  'hot-corner':
    'No manejar. No tocar la rueda ni el freno: medir con infrarrojo o dejar que se enfríen. Hacer revisar esa rueda, primero el freno; no ajustar en caliente la presión de esa llanta.',
  'stem-leaking':
    'No jalarla ni doblarla. Cambiar la válvula, o el sensor al que pertenece, antes de entregar.',
  'tire-unsafe':
    'Cuerdas, bola, corte o daño por dentro: no manejar; cambiarla. Gastada: cambiarla antes de entregar, o anotar la negativa. Repuesto guardado: no ponerlo.',
  'wheel-not-secure':
    'No manejar. Repararla según las instrucciones del fabricante del vehículo antes de entregar.',
  'puncture-not-repairable': 'Cambiar la llanta. No se pone ningún tapón, ni por fuera ni por dentro.',

  'tire-low': 'Encontrar la fuga antes de solo llenar.',
  'cold-weather': 'Ajustar estas llantas a la cifra de la etiqueta, corregida por la temperatura.',
  'weather-and-seepage': 'Ajustar estas llantas y aconsejar una revisión cada mes.',
  'slow-loss-suspected': 'Revisar banda, válvula, núcleo y ceja en busca de una fuga.',
  'slow-leak': 'Encontrar la fuga: banda, válvula, núcleo, ceja, rueda.',
  'axle-pressures-exchanged':
    'Ajustar cada eje a su propia cifra, luego ver si el vehículo reconoció los lugares nuevos.',
  'cold-morning-margin': 'Ajustar las llantas; así la luz no se enciende en mañanas frías.',
  'altitude-change': 'Ajustar estas llantas aquí.',
  'spare-low': 'Ajustar el repuesto a la cifra de su propia etiqueta y averiguar por qué estaba bajo.',
  'warm-tire-hides-low':
    'Ajustar al objetivo para esta temperatura, terminar en frío. Nunca sacarle aire a una llanta caliente.',
  'over-inflated':
    'Sacar aire solo en frío. Arriba del máximo del costado: sacar aire ahora, hasta el objetivo para esta temperatura y nunca abajo de él.',
  'no-warning-given':
    'Ajustar primero la llanta. Observar la prueba de la luz al encender el auto; solo entonces manejar 20 minutos y mirar otra vez.',
  'warning-unexplained':
    'Medir contra el medidor patrón, revisar el repuesto, los lugares guardados y un reinicio; manejar.',
  'under-placard': 'Ajustarla a la cifra de la etiqueta para la temperatura del día.',
  'puncture-found':
    'Dejar el objeto adentro hasta que el cliente decida. Luego mirar por dentro y reparar por dentro.',
  'spare-under-label': 'Ajustar el repuesto a la cifra de su propia etiqueta.',

  'set-then-reset': 'Ajustar todas las llantas, luego reiniciar el sistema.',
  'reset-only': 'Reiniciar el sistema. No hay sensor que vender.',
  'wheel-speed-fault': 'Leer el sistema de frenos; comparar medidas y dibujo de las llantas.',
  'no-monitoring-fitted': 'Identificar la luz en las instrucciones del fabricante del vehículo.',
  'equal-loss-unseen': 'Ajustar las cuatro, reiniciar y explicarlo.',
  'system-kind-contradicted': 'Aclarar cuál es, antes que nada.',
  'reset-and-recheck': 'Reiniciar una vez, revisar las presiones otra vez en 7 días.',

  'sensor-silent': 'Cambiarlo; mirar dentro de la llanta mientras está abierta.',
  'no-wheel-answers': 'Probar el lector con un sensor que se sabe que funciona; luego decidir.',
  'sensor-battery-low': 'Ofrecer cambiarlo.',
  'sensor-reads-wrong': 'Verificar con el medidor patrón, luego cambiar el sensor.',
  'sensors-refer-to-sea-level': 'Nada; explicarlo.',
  'gauge-suspect': 'Tomar todas las lecturas otra vez con el medidor patrón.',
  'sensor-temperature-impossible': 'Leerlo otra vez; si sigue igual, cambiarlo.',
  'frequency-wrong': 'Cambiarlo; no intentar que el vehículo lo reconozca.',
  'protocol-wrong': 'Programarlo otra vez para este vehículo, o cambiarlo.',
  'sensor-does-not-follow': 'Desmontar; limpiarlo o cambiarlo.',
  'stem-corroded': 'Ofrecerlo, y decir antes que la válvula puede romperse al tocarla.',
  'set-of-four-worth-offering': 'Ofrecer uno y cuatro, uno al lado del otro.',
  'sensor-asleep': 'Levantar la rueda e inflarla otra vez desde vacía, o manejar.',
  'no-sensor-on-arrival': 'Anotarlo con una foto antes de cualquier trabajo.',
  'temporary-spare-fitted':
    'Respetar el límite de velocidad y distancia de su costado; medir y activar la rueda que está en la cajuela.',

  'id-not-stored': 'Hacer que el vehículo lo reconozca.',
  'stored-id-unheard': 'Resolverlo junto con el sensor que ahí contesta.',
  'other-wheel-set': 'Hacer que el vehículo reconozca este juego.',
  'rotated-without-relearn':
    'Ajustar las presiones por lugar, luego hacer que el vehículo reconozca; manejar primero donde el vehículo ubica solo sus ruedas.',
  'id-duplicated':
    'Comparar con la lista guardada cuál es el original; programar el otro con un ID nuevo, hacer que el vehículo lo reconozca.',
  'wheel-from-another-vehicle':
    'Revisar también índice de carga, desplazamiento, asiento y centro de la rueda; luego su sensor.',
  'id-known-elsewhere': 'Abrir la orden de ese vehículo.',
  'id-notation-differs': 'Nada; comparar los números, no cómo se escriben.',
  'spare-rotated-without-relearn': 'Hacer que el vehículo reconozca los cinco lugares.',

  'malfunction-unexplained':
    'Leer los códigos, desconectar los aparatos agregados, manejar 20 minutos, repetir; remitir. No vender ninguna pieza por suposición.',
  'receiver-fault': 'Remitirlo. Ningún sensor arregla esto.',
  'code-old-or-intermittent': 'Anotarlo, borrarlo, manejar, mirar otra vez.',
  'control-module-blank': 'Hacer que el vehículo reconozca todas las ruedas.',
  'learn-mode-open': 'Terminar el modo de reconocimiento o salir de él, luego juzgar otra vez.',
  'telltale-dark': 'Anotarlo primero con una foto y decírselo al cliente. No repetirlo ni prolongarlo.',
  'collision-corner': 'Revisar esa parte del auto antes de pedir un sensor.',
  'not-driven-yet': 'Manejar 20 minutos, luego juzgar otra vez.',

  'one-place-only': 'Ningún trabajo; anotar el lugar.',
  'interference-suspected': 'Quitarlo, manejar, comparar.',
  'aftermarket-wheels':
    'Revisar que el sensor quede en el canal del rin y que el agujero sirva para su válvula.',
  'snow-or-chains': 'Limpiar las ruedas y probar otra vez.',

  comeback: 'Unirlo a la orden anterior; sin cobro hasta que el encargado elija su clase.',
  'under-warranty': 'Escribir la línea como garantía.',

  'tire-old': 'Aconsejar, sin alarmar.',
  'sensors-near-usual-life': 'Aconsejarlo para el próximo cambio de llantas.',
  'tread-low-soon': 'Aconsejar su cambio.',
  'nothing-found-today':
    'Darle al cliente la lista de lo que hay que observar: hora, clima, lugar, pasajeros, aparatos.',
}
