import type { Saying } from './saying';

/** Lo que está mal en un archivo de techo y por lo que el formulario apenas pregunta. */
export const fileWrongSayings: readonly Saying[] = [
  ['is {0}, where dormer {1} stands', 'es {0}, donde está la buhardilla {1}'],
  [
    'is {0}, where wing {1} or its long valley comes in',
    'es {0}, donde llega el ala {1} o su limahoya larga',
  ],
  ['is {0}, where wing {1} stands on the same side', 'es {0}, donde está el ala {1} en el mismo lado'],
  ['is {0}: the long valley would run into wing {1}', 'es {0}: la limahoya larga chocaría con el ala {1}'],
  [
    "is {0} and has no rafter's mark between its trimmers",
    'es {0} y no tiene la marca de ningún cabio entre los dobles',
  ],
  ['is {0} and leaves it no slope of its own', 'es {0} y no le deja pendiente propia'],
  ['is {0} and puts its plates under the main roof', 'es {0} y pone sus soleras bajo el techo principal'],
  [
    'is {0} and brings its ridge over the main one, or leaves no room for its header under it',
    'es {0} y sube su cumbrera más que la principal, o no deja lugar para su cabezal debajo',
  ],
  [
    'is {0} and leaves no valley between its trimmers and its header',
    'es {0} y no deja limahoya entre los dobles y el cabezal',
  ],
  [
    'is {0} and is thinner, doubled, than the rafters that stand on it',
    'es {0} y, aun doble, es más delgado que los cabios que carga',
  ],
  ['is {0} and leaves nothing between the two headers', 'es {0} y no deja nada entre los dos cabezales'],
  [
    'is {0} and comes into the ends of the side plates',
    'es {0} y se mete en los extremos de las soleras de los lados',
  ],
  ['is {0} and comes down into the lower header', 'es {0} y baja hasta meterse en el cabezal de abajo'],
  ['makes {0} in {1}, too flat for a half circle', 'da {0} en {1}, muy plano para un medio círculo'],
  [
    'is {0} and leaves rafters too short for gussets',
    'es {0} y deja cabios demasiado cortos para las cartelas',
  ],
  ['is {0} on both sides of a bay of {1}', 'es {0} a los dos lados de un vano de {1}'],
  [
    'is {0} and does not reach the plate behind the sheathing',
    'es {0} y no llega a la solera detrás del forro',
  ],
  ['is {0} and cuts the end rafter through', 'es {0} y corta entero el cabio de extremo'],
  [
    'is {0} and runs into the lookouts of the other gable',
    'es {0} y choca con los voladizos del otro hastial',
  ],
  ['is {0}, no wider than a rafter', 'es {0}, no más ancho que un cabio'],
  ['is not figured yet over a high plate', 'todavía no se calcula sobre una solera alta'],
  ['stands beside a ledger', 'está junto con un larguero'],
  ['follows from the slope in a half circle', 'sale de la pendiente en un medio círculo'],
  [
    'means nothing on a gable dormer without side walls',
    'no significa nada en una buhardilla de dos aguas sin muros de lado',
  ],
  ['means nothing on a shed dormer', 'no significa nada en una buhardilla de un agua'],
  [
    'means nothing on a hip roof without a small gable',
    'no significa nada en un techo de cuatro aguas sin hastial pequeño',
  ],
  ['means nothing with breakOn {0}', 'no significa nada con breakOn {0}'],
  ['is {0} on a {1} roof', 'es {0} en este tipo de techo ({1})'],
];

/** Lo que se aceptaría en su lugar. */
export const fileAcceptedSayings: readonly Saying[] = [
  [
    '{0} to less than {1} at this front and slope, or no slope, for one to the ridge',
    'de {0} a menos de {1} con este frente y pendiente, o sin pendiente, hasta la cumbrera',
  ],
  ['{0} to less than {1} at this front and slope', 'de {0} a menos de {1} con este frente y pendiente'],
  [
    '{0} to {1} at this front and slope, or no slope, for one to the ridge',
    'de {0} a {1} con este frente y pendiente, o sin pendiente, hasta la cumbrera',
  ],
  ['{0} to {1} at this front and slope', 'de {0} a {1} con este frente y pendiente'],
  ['{0} to {1} at this front, width and slope', 'de {0} a {1} con este frente, ancho y pendiente'],
  ['a place at least {0} beside it, or the other side', 'un lugar a por lo menos {0} de ahí, o el otro lado'],
  ['a place beside it, or the other side', 'un lugar al lado, o el otro lado del techo'],
  ['wings that stand beside each other', 'alas que quedan una al lado de la otra'],
  [
    '0 for walls that begin over the main one, or more than {0}, at most {1}',
    '0 para muros que empiezan sobre el principal, o más de {0}, a lo más {1}',
  ],
  ['0 for walls that begin over the main one', '0 para muros que empiezan sobre el principal'],
  ['thinner headers, or a wider main roof', 'cabezales más delgados, o un techo principal más ancho'],
  [
    'at least {0}, a place over a rafter, or a front behind the main wall',
    'al menos {0}, un lugar sobre un cabio, o un frente detrás del muro principal',
  ],
  [
    'a narrower dormer, a lower slope, or a front nearer to the eave',
    'una buhardilla más angosta, una pendiente más baja, o un frente más cerca del alero',
  ],
  [
    'more than {0}, at most {1}, at this front and slope',
    'más de {0}, a lo más {1}, con este frente y pendiente',
  ],
  [
    'thinner members, a lower slope, or a front nearer to the eave',
    'piezas más delgadas, una pendiente más baja, o un frente más cerca del alero',
  ],
  ['at least {0}, less than {1}', 'al menos {0}, menos de {1}'],
  ['at most {0}, or a smaller seat', 'a lo más {0}, o un asiento más chico'],
  ['a smaller seat, or a narrower plate', 'un asiento más chico, o una solera más angosta'],
  ['at most {0}, or a wider dormer', 'a lo más {0}, o una buhardilla más ancha'],
  ['a wider dormer', 'una buhardilla más ancha'],
  ['more than {0} and at most {1} on these rafters', 'más de {0} y a lo más {1} en estos cabios'],
  [
    'none at these sizes: a shallower header, a thinner hip or a wider span',
    'nada con estas medidas: un cabezal menos alto, una limatesa más delgada o un claro más ancho',
  ],
  ['longer rafters, shallower ones, or a purlin', 'cabios más largos, menos altos, o una correa'],
  ["less than the block's {0}", 'menos que el bloque, que mide {0}'],
  ["less than half the block's {0}", 'menos de la mitad del bloque, que mide {0}'],
  ['at most {0} in a block of {1}', 'a lo más {0} en un bloque de {1}'],
  ['at most {0} in a block {1} high', 'a lo más {0} en un bloque de {1} de alto'],
  ['at most {0} with {1} rafters a side', 'a lo más {0} con {1} cabios por lado'],
  ['only with a rafter between the gables', 'solo con un cabio entre los hastiales'],
  ['only with kind {0}', 'solo con kind {0}'],
  ['only with gablet', 'solo con gablet'],
  ['only with breakOn {0}', 'solo con breakOn {0}'],
  ['only with wall, the height of their plates', 'solo con wall, la altura de sus soleras'],
  ['without it, or without halfCircle', 'sin este dato, o sin halfCircle'],
  ['{"rise", "run"}, flatter than the slope below', '{"rise", "run"}, más plana que la pendiente de abajo'],
  ['one of the two', 'uno de los dos'],
  ['left out, or with a ledger', 'sin este dato, o con un larguero'],
  ['left out: the height above the plate gives it', 'sin este dato: sale de la altura sobre la solera'],
  [
    "left out: the layout goes on from the standing roof's last rafter",
    'sin este dato: el trazo sigue desde el último cabio del techo ya hecho',
  ],
  [
    'left out: both sides of a roof that goes on from another are alike',
    'sin este dato: un techo que sigue de otro tiene iguales los dos lados',
  ],
  [
    'left out: rake rafters are not figured yet where one end goes on from another roof',
    'sin este dato: todavía no se calculan cabios de borde donde un extremo sigue de otro techo',
  ],
  [
    'left out: dormers are not figured yet in a roof that goes on from another',
    'sin este dato: todavía no se calculan buhardillas en un techo que sigue de otro',
  ],
  ['deeper rafters, or a plate of more than {0}', 'cabios más altos, o una solera de más de {0}'],
  ['a number, usually of inches', 'un número, por lo común de pulgadas'],
  ['true, or left out', 'true, o sin este dato'],
  ['at most {0} characters', 'a lo más {0} letras'],
  ['"A", "B", or both', '"A", "B", o los dos'],
  ['false, or {0}', 'false, o {0}'],
  ['more than {0}, or "lookouts": false', 'más de {0}, o "lookouts": false'],
  ['at least {0} in {1}', 'al menos {0} en {1}'],
  ['{"shape": "notch", …} or {"shape": "holes", …}', '{"shape": "notch", …} o {"shape": "holes", …}'],
];
