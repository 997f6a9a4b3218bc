import type { FindingSentences } from '../findings.ts'
import { ageSentences } from './age-sentences.ts'

/** What a Spanish-speaking customer reads for each finding: at most 32 words, no blame, no alarm without cause. */
export const findingSentences: FindingSentences = {
  'gauge-missing': {
    one: 'Todavía no tenemos la presión de la llanta {wheel}, así que no decimos nada de ella.',
    many: 'Todavía no tenemos la presión de estas llantas: {wheels}. Así que no decimos nada de ellas.',
    all: 'Todavía no tenemos la presión de ninguna llanta, así que no decimos nada de ellas.',
  },
  'light-not-witnessed': {
    one: 'Todavía no hemos visto nosotros mismos qué hace su luz de advertencia.',
  },
  'retry-silent-wheel': {
    one: 'El sensor de la rueda {wheel} todavía no ha contestado. Vamos a intentar otra vez antes de juzgar.',
    many: 'Algunos sensores todavía no han contestado: {wheels}. Vamos a intentar otra vez antes de juzgar.',
  },
  'cross-read-suspected': {
    one: 'Dos ruedas dieron la misma respuesta. Las vamos a leer otra vez, lejos una de la otra.',
  },
  'placard-unverified': {
    one: 'La etiqueta de llantas de la puerta falta o no se ha verificado, así que todavía no podemos juzgar sus presiones.',
  },
  'system-unknown': { one: 'Primero estamos averiguando cómo vigila su vehículo las llantas.' },
  'reading-impossible': { one: 'Una lectura no puede ser correcta. La vamos a tomar otra vez.' },
  'reading-stale': { one: 'Algo cambió después de tomar una lectura, así que la vamos a tomar otra vez.' },

  'run-low-damage-possible': {
    one: 'La llanta {wheel} tiene solo {value:p} de {label} {unit}. Puede estar dañada por dentro. Por favor, no maneje con ella hasta que la revisemos.',
    many: 'Estas llantas están muy bajas: {wheels}. Pueden estar dañadas por dentro. Por favor, no maneje hasta que las revisemos.',
    forms: {
      'no-label': {
        one: 'La llanta {wheel} tiene solo {value:p} {unit}. Puede estar dañada por dentro. Por favor, no maneje con ella hasta que la revisemos.',
        many: 'Estas llantas están muy bajas: {wheels}. Pueden estar dañadas por dentro. Por favor, no maneje hasta que las revisemos.',
      },
      told: {
        one: 'Se manejó con la llanta {wheel} baja. Puede estar dañada por dentro. Por favor, no maneje con ella hasta que la revisemos.',
        many: 'Estas llantas rodaron con poco aire: {wheels}. Pueden estar dañadas por dentro. Por favor, no maneje hasta que las revisemos.',
      },
    },
  },
  'sealant-inside': {
    one: 'En la llanta {wheel} se usó una lata de sellador. Su gas es inflamable, así que la llanta se vacía al aire libre antes de quitarla del rin.',
    many: 'Se usó una lata de sellador. Su gas es inflamable, así que estas llantas se vacían al aire libre antes de quitarlas del rin.',
  },
  'hot-corner': {
    one: 'La rueda {wheel} está {degrees} °{temperatureUnit} más caliente que las demás. Un freno puede estar rozando o un balero fallando; haga que los revisen antes de manejar.',
    many: 'Estas ruedas están muy calientes: {wheels}. Un freno puede estar rozando o un balero fallando; haga que los revisen antes de manejar.',
  },
  'stem-leaking': {
    one: 'La válvula de la rueda {wheel} pierde aire. Puede fallar sin aviso. Por favor, haga que la cambien antes de manejar.',
    many: 'Estas válvulas están en mal estado: {wheels}. Pueden fallar sin aviso. Por favor, haga que las cambien antes de manejar.',
    forms: {
      leaks: {
        one: 'La válvula de la rueda {wheel} pierde aire. Puede fallar sin aviso. Por favor, haga que la cambien antes de manejar.',
        many: 'Estas válvulas están en mal estado: {wheels}. Pueden fallar sin aviso. Por favor, haga que las cambien antes de manejar.',
      },
      cracked: {
        one: 'La válvula de la rueda {wheel} está agrietada. Puede fallar sin aviso. Por favor, haga que la cambien antes de manejar.',
        many: 'Estas válvulas están agrietadas: {wheels}. Pueden fallar sin aviso. Por favor, haga que las cambien antes de manejar.',
      },
    },
  },
  'tire-unsafe': {
    one: 'La llanta {wheel} está dañada. Puede fallar de repente. Por favor, no maneje con ella.',
    many: 'Estas llantas están dañadas: {wheels}. Pueden fallar de repente. Por favor, no maneje con ellas.',
    forms: {
      bulge: {
        one: 'La llanta {wheel} tiene una bola. Puede fallar de repente. Por favor, no maneje con ella.',
        many: 'Estas llantas están dañadas: {wheels}. Pueden fallar de repente. Por favor, no maneje con ellas.',
      },
      'cord-showing': {
        one: 'A la llanta {wheel} se le ven las cuerdas interiores. Puede fallar de repente. Por favor, no maneje con ella.',
        many: 'Estas llantas están dañadas: {wheels}. Pueden fallar de repente. Por favor, no maneje con ellas.',
      },
      'cut-to-cord': {
        one: 'La llanta {wheel} tiene un corte que llega hasta las cuerdas interiores. Puede fallar de repente. Por favor, no maneje con ella.',
        many: 'Estas llantas están dañadas: {wheels}. Pueden fallar de repente. Por favor, no maneje con ellas.',
      },
      worn: {
        one: 'La llanta {wheel} está gastada: solo le quedan {tread}/32 de pulgada de dibujo. Agarra mal con lluvia. Por favor, cámbiela ya.',
        many: 'Estas llantas están gastadas: {wheels}. Agarran mal con lluvia. Por favor, cámbielas ya.',
      },
      'run-low-damage': {
        one: 'La llanta {wheel} está dañada por dentro por rodar con poco aire. Puede fallar de repente. Por favor, no maneje con ella.',
        many: 'Estas llantas están dañadas por dentro: {wheels}. Pueden fallar de repente. Por favor, no maneje con ellas.',
      },
      cord: {
        one: 'A la llanta {wheel} se le ven las cuerdas por dentro. Puede fallar de repente. Por favor, no maneje con ella.',
        many: 'Estas llantas están dañadas por dentro: {wheels}. Pueden fallar de repente. Por favor, no maneje con ellas.',
      },
      separation: {
        one: 'A la llanta {wheel} se le están separando las capas por dentro. Puede fallar de repente. Por favor, no maneje con ella.',
        many: 'Estas llantas están dañadas por dentro: {wheels}. Pueden fallar de repente. Por favor, no maneje con ellas.',
      },
      stowed: {
        one: 'La llanta {wheel} está dañada y puede fallar de repente. Por favor, no la use; haga que la cambien.',
      },
    },
  },
  'wheel-not-secure': {
    one: 'La rueda {wheel} no está bien sujeta y puede salirse: falta una tuerca, un perno o un birlo, o alguno está dañado. Por favor, no maneje hasta que se repare.',
    many: 'Estas ruedas no están bien sujetas y pueden salirse: {wheels}. Por favor, no maneje hasta que se reparen.',
  },

  'tire-low': {
    one: 'Su llanta {wheel} tiene {value:p} {unit}; según la etiqueta de la puerta debe tener {label}. La luz está haciendo su trabajo.',
    many: 'Estas llantas están bajas: {wheels}. La más baja tiene {value:p} de {label} {unit}. La luz está haciendo su trabajo.',
    forms: {
      'under-flash': {
        one: 'Su llanta {wheel} tiene {value:p} {unit}; según la etiqueta de la puerta debe tener {label}. La falla que hace parpadear la luz lo ocultaba.',
        many: 'Estas llantas están bajas: {wheels}. La más baja tiene {value:p} de {label} {unit}. La falla que hace parpadear la luz lo ocultaba.',
      },
      'only-cold': {
        one: 'Su llanta {wheel} tiene {warm:p} {unit} en caliente. En frío tiene {value:p}, y la luz se enciende a {point:p}.',
        many: 'Estas llantas están bajas en frío: {wheels}. La más baja tiene entonces {value:p} {unit}; la luz se enciende a {point:p}.',
      },
      'without-light': {
        one: 'Su llanta {wheel} tiene {value:p} {unit}; según la etiqueta de la puerta debe tener {label}.',
        many: 'Estas llantas están bajas: {wheels}. La más baja tiene {value:p} de {label} {unit}.',
      },
    },
  },
  'cold-weather': {
    one: 'A estas llantas les faltan unos {difference:p} {unit}. Desde que se ajustaron, la temperatura bajó {degrees} °{temperatureUnit}.',
    many: 'A estas llantas les faltan unos {difference:p} {unit}: {wheels}. Desde que se ajustaron, la temperatura bajó {degrees} °{temperatureUnit}.',
    all: 'A las cuatro llantas les faltan unos {difference:p} {unit}. Desde que se ajustaron, la temperatura bajó {degrees} °{temperatureUnit}; nada indica un daño.',
    forms: {
      'beside-a-stop': {
        one: 'A la llanta {wheel} le faltan unos {difference:p} {unit} porque el aire está más frío.',
        many: 'Como el aire está más frío, a estas llantas les faltan unos {difference:p} {unit}: {wheels}.',
      },
    },
  },
  'weather-and-seepage': {
    one: 'A estas llantas les faltan unos {difference:p} {unit}: el aire está más frío, y toda llanta pierde un poco con los meses.',
    many: 'A estas llantas les faltan unos {difference:p} {unit}: {wheels}. El aire está más frío, y toda llanta pierde un poco con los meses.',
    all: 'A las cuatro llantas les faltan unos {difference:p} {unit}: el aire está más frío, y toda llanta pierde un poco con los meses. Nada indica un daño.',
    forms: {
      'temperature-unknown': {
        one: 'A estas llantas les faltan unos {difference:p} {unit}, como pasa con los meses.',
        many: 'Como pasa con los meses, a estas llantas les faltan unos {difference:p} {unit}: {wheels}.',
        all: 'A las cuatro llantas les faltan unos {difference:p} {unit}, como pasa con los meses. Nada indica una fuga.',
      },
      'beside-a-stop': {
        one: 'A la llanta {wheel} le faltan unos {difference:p} {unit}, como pasa con los meses.',
        many: 'Como pasa con los meses, a estas llantas les faltan unos {difference:p} {unit}: {wheels}.',
      },
    },
  },
  'slow-loss-suspected': {
    one: 'A la llanta {wheel} le faltan {difference:p} {unit}, y tiene menos aire que otras. Debemos buscar una fuga lenta.',
    many: 'Estas llantas están más bajas que las demás: {wheels}. Debemos buscar fugas lentas.',
  },
  'slow-leak': {
    one: 'La llanta {wheel} pierde unos {perDay:p} {unit} por día, sin contar el clima. A ese ritmo la luz vuelve en {days} días.',
    many: 'Estas llantas pierden más aire de lo que explica el clima: {wheels}. La más rápida pierde unos {perDay:p} {unit} por día.',
    forms: {
      'within-a-day': {
        one: 'La llanta {wheel} pierde unos {perDay:p} {unit} por día, sin contar el clima. La luz vuelve en menos de un día.',
        many: 'Estas llantas pierden más aire de lo que explica el clima: {wheels}. La más rápida pierde unos {perDay:p} {unit} por día.',
      },
      'low-already': {
        one: 'La llanta {wheel} pierde unos {perDay:p} {unit} por día, sin contar el clima.',
        many: 'Estas llantas pierden más aire de lo que explica el clima: {wheels}. La más rápida pierde unos {perDay:p} {unit} por día.',
      },
    },
  },
  'axle-pressures-exchanged': {
    one: 'Las presiones de las llantas de adelante y de atrás están al revés: la etiqueta de la puerta dice {front} adelante y {rear} {unit} atrás.',
  },
  'cold-morning-margin': {
    one: 'A {degrees} °{temperatureUnit} esta noche, la llanta {wheel} tendrá unos {value:p} {unit}, tan poco que se enciende la luz.',
    many: 'A {degrees} °{temperatureUnit} esta noche, sus llantas tendrán unos {value:p} {unit}, tan poco que se enciende la luz.',
  },
  'altitude-change': {
    one: 'A estas llantas les faltan unos {difference:p} {unit} porque usted bajó de un lugar más alto.',
    many: 'Como usted bajó de un lugar más alto, a estas llantas les faltan unos {difference:p} {unit}: {wheels}.',
    all: 'A las cuatro llantas les faltan unos {difference:p} {unit} porque usted bajó de un lugar más alto. Nada indica un daño.',
    forms: {
      'beside-a-stop': {
        one: 'A la llanta {wheel} le faltan unos {difference:p} {unit} porque usted bajó de un lugar más alto.',
        many: 'Como usted bajó de un lugar más alto, a estas llantas les faltan unos {difference:p} {unit}: {wheels}.',
      },
    },
  },
  'spare-low': { one: 'La luz es por su llanta de repuesto, que tiene {value:p} de {label} {unit}.' },
  'warm-tire-hides-low': {
    one: 'Las llantas calientes marcan más. En frío, la llanta {wheel} tendría {value:p} {unit}, que son {difference:p} menos de lo que debe tener.',
    many: 'Las llantas calientes marcan más. En frío, estas tendrían {value:p} {unit}, que son {difference:p} menos de lo que deben tener.',
  },
  'over-inflated': {
    one: 'La llanta {wheel} tiene {value:p} {unit}; según la etiqueta de la puerta debe tener {label}. Tiene demasiado aire.',
    many: 'Estas llantas tienen demasiado aire: {wheels}. Una tiene {value:p} {unit} y debe tener {label}.',
  },
  'no-warning-given': {
    one: 'La llanta {wheel} está tan baja que debería haber advertencia, pero la luz está apagada. Vamos a averiguar por qué.',
    many: 'Estas llantas están tan bajas que debería haber advertencia: {wheels}. Pero la luz está apagada. Vamos a averiguar por qué.',
  },
  'warning-unexplained': {
    one: 'Todas las llantas están bien, pero la luz sigue encendida. Revisamos nuestro medidor y seguimos buscando antes de vender algo.',
  },
  'under-placard': {
    one: 'A la llanta {wheel} le faltan {difference:p} {unit}; esa diferencia no alcanza para encender la luz. Podemos ajustar la presión.',
    many: 'Estas llantas están un poco bajas: {wheels}. Eso no enciende la luz. Podemos ajustarlas.',
    all: 'Las cuatro llantas están un poco bajas. Eso no enciende la luz. Podemos ajustarlas.',
  },
  'puncture-not-repairable': {
    one: 'El agujero de la llanta {wheel} no se puede reparar de forma segura. La llanta se tiene que cambiar antes de que usted maneje.',
    many: 'Estas llantas tienen agujeros que no se pueden reparar de forma segura: {wheels}. Se tienen que cambiar antes de que usted maneje.',
  },
  'puncture-found': {
    one: 'Hay una ponchadura en la llanta {wheel}. Primero miramos por dentro; luego podemos decir si se puede reparar.',
    many: 'Estas llantas tienen ponchaduras: {wheels}. Primero miramos por dentro; luego podemos decir si se pueden reparar.',
  },
  'spare-under-label': {
    one: 'Su llanta de repuesto tiene {value:p} de {label} {unit}. Ninguna luz lo avisa. Podemos ajustar la presión.',
  },

  'set-then-reset': {
    one: 'Su auto compara sus ruedas. Ajustamos las llantas según la etiqueta y luego le indicamos que están bien.',
  },
  'reset-only': {
    one: 'Su auto vigila las llantas por lo rápido que giran. Todavía no sabe que están bien: tenemos que reiniciar su sistema.',
  },
  'wheel-speed-fault': {
    one: 'Su auto vigila las llantas por lo rápido que giran, y avisa de una falla ahí. Hay que revisar el sistema de frenos.',
  },
  'no-monitoring-fitted': {
    one: 'Su auto no vigila la presión de las llantas. La luz significa otra cosa; el manual del dueño dice cuál.',
  },
  'equal-loss-unseen': {
    one: 'Su auto compara las llantas entre sí. Las cuatro están igual de bajas, así que no puede darse cuenta.',
  },
  'system-kind-contradicted': {
    one: 'Nuestros datos dicen que sus ruedas no tienen sensores, pero uno contesta. Eso lo aclaramos primero.',
  },
  'reset-and-recheck': {
    one: 'Sus llantas están bien. Reiniciamos el sistema una vez; por favor, regrese en siete días para una revisión.',
  },

  'sensor-silent': {
    one: 'El sensor de la rueda {wheel} no funciona. Lo probamos {tries} veces; los demás contestaron.',
    many: 'Estos sensores no funcionan: {wheels}. Probamos cada uno al menos {tries} veces; los demás contestaron.',
  },
  'no-wheel-answers': {
    one: 'Ninguna rueda le contesta a nuestro lector. Antes de culpar a cuatro sensores, vamos a revisar nuestro equipo.',
  },
  'sensor-battery-low': {
    one: 'El sensor de la rueda {wheel} avisa que su batería está baja. Todavía funciona, y fallará primero en mañanas frías.',
    many: 'Estos sensores avisan que su batería está baja: {wheels}. Todavía funcionan, y fallarán primero en mañanas frías.',
  },
  'sensor-reads-wrong': {
    one: 'El sensor de la rueda {wheel} le dice {sensor:p} {unit} al auto; la llanta en realidad tiene {value:p}.',
  },
  'sensors-refer-to-sea-level': {
    one: 'Su tablero muestra unos {difference:p} {unit} menos que un medidor de aquí por la altitud. Eso es normal.',
  },
  'gauge-suspect': {
    one: 'Todos los sensores difieren de nuestro medidor por unos {difference:p} {unit}. Sospechamos del medidor y medimos otra vez con otro.',
  },
  'sensor-temperature-impossible': {
    one: 'El sensor de la rueda {wheel} da una temperatura imposible. Es probable que esté fallando.',
    many: 'Estos sensores dan temperaturas imposibles: {wheels}. Es probable que estén fallando.',
  },
  'frequency-wrong': {
    one: 'El sensor de la rueda {wheel} es la pieza equivocada para su auto. Su auto no puede oírlo.',
    many: 'Estos sensores son las piezas equivocadas para su auto: {wheels}. Su auto no puede oírlos.',
  },
  'protocol-wrong': {
    one: 'El sensor de la rueda {wheel} funciona, pero está configurado para otro auto. Hay que configurarlo para el suyo.',
    many: 'Estos sensores están configurados para otro auto: {wheels}. Hay que configurarlos para el suyo.',
  },
  'sensor-does-not-follow': {
    one: 'El sensor de la rueda {wheel} sigue marcando la misma presión aunque la llanta pierda o gane aire. Tenemos que quitar la llanta del rin para ver por qué.',
    many: 'Estos sensores siguen marcando la misma presión aunque las llantas pierdan o ganen aire: {wheels}. Tenemos que mirar dentro de las llantas.',
  },
  'stem-corroded': {
    one: 'La válvula de la rueda {wheel} está corroída. Hoy retiene el aire y puede romperse al tocarla.',
    many: 'Estas válvulas están corroídas: {wheels}. Hoy retienen el aire y pueden romperse al tocarlas.',
  },
  'set-of-four-worth-offering': {
    one: 'Uno falló; los otros tres tienen la misma edad. Cambiar uno apaga la luz hoy. Usted decide.',
    forms: {
      several: {
        one: '{count} fallaron; los demás tienen la misma edad. Cambiar esos apaga la luz hoy. Usted decide.',
      },
      'none-answers': {
        one: 'Ninguno contesta, y los cuatro son viejos. Cuando se compruebe que nuestro lector funciona, vale la pena pensar en un juego de cuatro.',
      },
    },
  },
  'sensor-asleep': {
    one: 'El sensor nuevo de la rueda {wheel} todavía no ha despertado. Se despierta al inflar la llanta desde vacía o al manejar.',
    many: 'Estos sensores nuevos todavía no han despertado: {wheels}. Se despiertan al inflar las llantas desde vacías o al manejar.',
  },
  'no-sensor-on-arrival': {
    one: 'La rueda {wheel} no tenía sensor cuando llegó.',
    many: 'Estas ruedas no tenían sensor cuando llegaron: {wheels}.',
  },
  'temporary-spare-fitted': {
    one: 'El auto trae puesta la llanta de repuesto temporal. No tiene sensor, así que la luz puede seguir encendida hasta que vuelva su propia rueda.',
  },

  'id-not-stored': {
    one: 'El sensor de la rueda {wheel} funciona, pero nunca se conectó con su auto.',
    many: 'Estos sensores funcionan, pero nunca se conectaron con su auto: {wheels}.',
  },
  'stored-id-unheard': {
    one: 'El auto todavía busca un sensor anterior en la rueda {wheel}; ese sensor ya no está aquí.',
    many: 'El auto todavía busca sensores anteriores que ya no están aquí: {wheels}.',
  },
  'other-wheel-set': { one: 'El auto busca cuatro sensores que no son los de estas ruedas.' },
  'rotated-without-relearn': {
    one: 'Las ruedas se cambiaron de lugar, pero no se le indicó al auto; nombraría la llanta equivocada.',
  },
  'id-duplicated': {
    one: 'Dos sensores mandan el mismo número, así que el auto oye uno y le falta otro.',
  },
  'wheel-from-another-vehicle': {
    one: 'La rueda {wheel} parece ser de otro auto. Antes que nada revisamos que sea la correcta.',
    many: 'Estas ruedas parecen ser de otro auto: {wheels}. Antes que nada revisamos que sean las correctas.',
  },
  'id-known-elsewhere': {
    one: 'Tenemos el sensor de la rueda {wheel} anotado en otro auto. Quizás se intercambiaron ruedas.',
    many: 'Tenemos estos sensores anotados en otro auto: {wheels}. Quizás se intercambiaron ruedas.',
  },
  'id-notation-differs': {
    one: 'El auto escribe los números de sus sensores de otra manera que nosotros. Coinciden; no hay nada mal.',
  },
  'spare-rotated-without-relearn': {
    one: 'La llanta de repuesto se puso a rodar, pero no se le indicó al auto; nombraría la llanta equivocada.',
  },

  'malfunction-unexplained': {
    one: 'Todo lo que podemos medir está bien, pero el auto avisa de una falla. No le venderemos una pieza por suposición.',
  },
  'receiver-fault': {
    one: 'La parte del auto que oye los sensores avisa de una falla. Sensores nuevos no ayudarían; el auto mismo necesita una reparación.',
  },
  'code-old-or-intermittent': {
    one: 'El auto anotó que una vez le faltó el sensor de la rueda {wheel}, que ahora contesta. Borramos la nota y lo observamos.',
    many: 'Al auto una vez le faltaron sensores que ahora contestan: {wheels}. Borramos la nota y los observamos.',
  },
  'control-module-blank': {
    one: 'El auto olvidó todos sus sensores. Funcionan; hay que conectarlos otra vez con el auto.',
  },
  'learn-mode-open': {
    one: 'El auto todavía espera que se conecten sus sensores. Terminamos eso y luego miramos otra vez.',
  },
  'telltale-dark': {
    one: 'Su luz de advertencia no se enciende al encender el auto. No puede avisarle. Así estaba cuando usted llegó.',
  },
  'collision-corner': {
    one: 'El auto recibió un golpe junto a la rueda {wheel}. Hay que revisar ahí el soporte y los cables antes de pedir un sensor.',
    many: 'El auto recibió un golpe junto a estas ruedas: {wheels}. Hay que revisar ahí los cables antes de pedir sensores.',
  },
  'not-driven-yet': {
    one: 'El auto necesita unos 20 minutos de manejo para juzgar sus llantas. Por favor, maneje, y luego miramos otra vez.',
  },

  'one-place-only': {
    one: 'Pasa solo en un lugar: es probable que algo ahí estorbe la señal de radio. Su auto no necesita ningún trabajo por eso.',
  },
  'interference-suspected': {
    one: 'Un aparato conectado o agregado al auto puede estorbar la señal de los sensores. Por favor, maneje sin ese aparato y avísenos.',
  },
  'aftermarket-wheels': {
    one: 'Estas no son las ruedas originales. Pueden sostener un sensor de otra manera o tapar su señal; vamos a revisar cómo va puesto.',
  },
  'snow-or-chains': {
    one: 'Las cadenas o la nieve pegada pueden tapar los sensores por un rato. Limpiamos las ruedas y probamos otra vez.',
  },

  comeback: {
    one: 'Hace poco trabajamos en la rueda {wheel}. Primero averiguamos si nos toca a nosotros arreglarlo.',
    many: 'Hace poco trabajamos en estas ruedas: {wheels}. Primero averiguamos si nos toca a nosotros arreglarlo.',
  },
  ...ageSentences,
  'nothing-found-today': {
    one: 'Hoy no pudimos hacer que pasara. Aquí está lo que hay que anotar cuando pase.',
  },
}
