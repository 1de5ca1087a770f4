import type { OtherWords } from '../otherWords';

/** Lo que se llama de otra manera donde los cabios van a un larguero en un muro: sin cumbrera, sin pares, con un solo lado. */

const trade: OtherWords['trade'] = {
  side: { street: '', yard: 'muro' },
  wall: { street: 'muro bajo', A: 'muro del extremo A', B: 'muro del extremo B' },
  member: {
    ridge: 'Larguero',
    rafter: (n) => `Cabio ${n}`,
    block: (n) => `Bloque ${n}–${n + 1}`,
    board: (n) => (n === 'ridge' ? 'Tabla del larguero' : `Tabla ${n}`),
    plate: () => 'Solera',
    string: () => 'Hilo',
    tail: () => 'Línea de colas',
  },
  joint: { ridge: 'en el larguero' },
  place: {
    width: (at) => `De la solera al muro en ${at}`,
    diagonal1: 'Diagonal, solera en A a muro en B',
    diagonal2: 'Diagonal, muro en A a solera en B',
    height: (end) => `Alto del larguero sobre la solera, ${end}`,
    layout: (n) => `Del origen al cabio ${n}`,
    bay: (n) => `Vano libre ${n}–${n + 1}`,
    ridgeLength: 'Largo del larguero',
    plateHeight: (_side, at) => `Altura de la solera, ${at}`,
    ridgeStraight: 'Larguero contra el hilo, su medio al muro',
    plateStraight: () => 'Solera contra el hilo',
    ridgeLevel: (end) => `Nivel en el larguero, su marca al ${end}`,
    ridgeLevelShort: (end) => `Nivel de 2 pies en el larguero, su marca al ${end}`,
    plane: (n) => `Del hilo al cabio ${n}`,
    storyPole: (end) => `Vara de alturas en el larguero, ${end}: sobre su marca`,
    overThree: (n) => `Reglón sobre tres, cabio ${n} alto`,
    sightRidge: 'Mirar a lo largo del larguero, su medio al muro',
    sightPlate: () => 'Mirar a lo largo de la solera, su medio afuera',
  },
  method: {
    hang: { name: 'El larguero sube' },
    ridgeLength: { name: 'Largo del larguero', cut: 'cortado a medida antes' },
  },
  anchor: { wall: 'amarrado al muro ya hecho', ridge: 'amarrado al larguero' },
  fault: { ridgeLong: 'Larguero largo' },
  symptom: {
    width: 'una solera que se aleja del muro',
    entering: 'un larguero que no cabe',
  },
  feature: {
    level: 'Larguero desnivelado',
    height: 'Larguero fuera de altura',
    straight: 'Larguero no recto',
  },
};

const ui: OtherWords['ui'] = {
  talk: { figures: { run: 'Avance del cabio', ridgeTop: 'Alto del larguero sobre la solera' } },
  watch: { plain: { setPosts: 'Los puntales cargan el larguero mientras los clavos no.' } },
  site: {
    goalSays:
      'Un larguero recto y a nivel, fijo en cada pie derecho. Cada cabio en su marca y en el plano, bien clavado. Nada punteado al final.',
    corner: { yard: 'Desde atrás del muro', street: 'Desde el lado bajo' },
    fell: {
      nothingCarriesTheRidge: 'Nada cargaba el larguero.',
      alongTheRidge: 'La fila cayó a lo largo del larguero.',
    },
  },
  axes: { ridge: 'larguero', ridgeTop: 'alto del larguero' },
  view: { side: 'Costado a lo largo, desde el lado bajo' },
  act: {
    place: { posts: 'Subirlo a los puntales', hands: 'Subirlo a mano' },
    postFit: 'Póngalo bajo el larguero, a medida',
    postHeight: 'Altura de su cabeza sobre la solera',
    raise: 'Súbalo',
    lower: 'Bájelo',
  },
  debrief: {
    stands: {
      ridge: 'Larguero arriba',
      pairs: 'Cabios de los extremos arriba',
      street: 'Todos los cabios arriba',
    },
  },
};

const spoken: OtherWords['spoken'] = {
  topOver: (at) => `El canto alto del larguero está ${at}, sobre la marca.`,
  topUnder: (at) => `El canto alto del larguero está ${at}, bajo la marca.`,
  topOn: 'El canto alto del larguero está justo en la marca.',
  roof: {
    whole: 'Muros y larguero',
    bay: (n) => `Cabio ${n} y el vano que le sigue`,
    lastBay: (n) => `Cabio ${n}`,
    notUp: 'El larguero no está arriba.',
    posts: 'El larguero está arriba, en sus puntales.',
    hands: 'El larguero está arriba. Lo tiene la gente.',
    rafters: 'El larguero está arriba. Lo carga su muro.',
    pairs: (n, all) => `Hay ${n} de ${all} cabios en pie.`,
    tacked: (_side, n) => `${n} ${n === 1 ? 'cabio punteado' : 'cabios punteados'}.`,
    heldBy: { rafters: 'fijo a su muro' },
  },
  help: {
    keys: 'Las flechas van de pieza en pieza: a los lados por el larguero, arriba y abajo en un vano. Intro la elige. Escape vuelve a la lista.',
  },
};

const rules: OtherWords['rules'] = {
  O1: {
    name: 'Arriostre los muros antes de subir el larguero',
    why: 'Un muro sin riostra se mueve mientras usted trabaja. Luego toda altura que midió está mal.',
  },
  O4: { name: 'Resuelva el largo del larguero antes de subirlo' },
  O5: {
    name: 'Puntee, compruebe la altura y luego clave los extremos',
    why: 'Un larguero punteado se mueve con dos clavos, y sus cabios con él. Uno clavado cuesta clavos sacados y puntas rajadas.',
  },
  C2: {
    name: 'Compruebe la altura del larguero',
    why: 'Si los cabios están bien cortados, el larguero está bien cuando asientan. Véalo mientras solo está punteado.',
  },
  C3: { name: 'Nivele el larguero y dé vuelta al nivel' },
  T2: { name: 'Cada unión con sus clavos, riostras de muro puestas' },
  S2: {
    name: 'Un puntal sale solo cuando el larguero está sujeto',
    why: 'El larguero clavado en sus pies derechos y nadie debajo.',
  },
  S4: { why: 'El clavo pasa el larguero. Sepa dónde está la mano de su compañero.' },
};

export const ledger: OtherWords = {
  trade,
  ui,
  spoken,
  rules,
  tasks: {
    settleRidge: 'Resolver el largo del larguero',
    layOut: 'Marcar solera y larguero',
    landRidge: 'Subir el larguero',
    nailEnds: 'Clavar los cabios de los extremos',
    stack: 'Poner los cabios',
    heels: 'Leer el hilo, clavar los cabios',
  },
  heard: { ridge: 'se apoya el larguero' },
  views: {
    loads: {
      rafter: (name, top, foot) => `${name}: ${top} en el larguero, ${foot} en el muro.`,
    },
    strip: {
      none: 'El larguero no está arriba aún.',
      kind: { height: 'Alto del larguero', 'gap.street': 'Hilo' },
    },
  },
  dangers: {
    underTheLoad: 'Alto. Hay alguien debajo del larguero.',
    propWithSomeoneUnder: 'Alto. Ese puntal carga el larguero y hay alguien debajo.',
  },
  refusals: {
    noRidge: 'No hay larguero en qué apoyarlo.',
    raftersOnIt: 'Hay cabios apoyados en él.',
    ridgeNailed: 'El larguero está clavado. No se mueve.',
    noFloor: 'Un puntal necesita piso debajo.',
    ridgeInTheWay: 'El larguero está arriba. Corte el puntal a su medida.',
    wrongHeight: 'A esa altura el larguero no se apoya en él.',
  },
  cautions: {
    anchor: 'Nunca se amarre al larguero que se monta, a la carga ni a un cabio punteado.',
  },
};
